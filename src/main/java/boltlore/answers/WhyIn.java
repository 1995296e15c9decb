package boltlore.answers;

import boltlore.catalogue.Contained;
import boltlore.catalogue.Line;
import boltlore.catalogue.Need;
import boltlore.catalogue.Position;
import boltlore.explanation.ConditionWords;
import boltlore.measure.PartNumber;
import boltlore.resolution.FamilyPlan;
import boltlore.resolution.Kit;
import boltlore.resolution.Reason;
import boltlore.resolution.Requirer;
import boltlore.resolution.Way;
import boltlore.resolution.rules.RuleSentences;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Why a part is in a kit: every reason that still holds at the end, back to the lines and their conditions. */
public final class WhyIn {

    private final FamilyPlan plan;
    private final Kit kit;
    private final ConditionWords conditions;
    private final Set<PartNumber> told = new HashSet<>();

    private WhyIn(FamilyPlan plan, Kit kit) {
        this.plan = plan;
        this.kit = kit;
        this.conditions = new ConditionWords(plan.family());
    }

    public static List<Because> explain(FamilyPlan plan, Kit kit, PartNumber part) {
        return new WhyIn(plan, kit).reasons(part);
    }

    private List<Because> reasons(PartNumber part) {
        if (!told.add(part)) {
            return List.of(Because.of("told above"));
        }
        return kit.reasons().stream()
                .filter(reason -> reason.part().equals(part))
                .map(this::because)
                .toList();
    }

    private Because because(Reason reason) {
        String sentence = RuleSentences.say(reason.way()) + ": " + detail(reason);
        if (reason.asker() instanceof Requirer.OfPart of) {
            return new Because(sentence, reasons(of.part()));
        }
        Line line = plan.line(((Requirer.OfLine) reason.asker()).line());
        return new Because(
                sentence,
                List.of(Because.of("Line " + line.name() + " is selected "
                        + (line.when().isAlways() ? "in " : "by: ") + conditions.of(line.when()))));
    }

    private String detail(Reason reason) {
        if (reason.asker() instanceof Requirer.OfLine of) {
            Line line = plan.line(of.line());
            Position position = plan.positionOf(of.line());
            String at = position.says().english();
            return reason.way() == Way.LINE
                    ? at + ", " + line.quantity().toPlainString()
                    : at + " " + needs(line.needs(), reason.part());
        }
        PartNumber asker = ((Requirer.OfPart) reason.asker()).part();
        String named = asker + " " + plan.part(asker).name().english();
        return reason.way() == Way.CONTAINS
                ? named + ", " + contained(asker, reason.part()) + " in each"
                : named + " " + needs(plan.needsOf(asker), reason.part());
    }

    private String contained(PartNumber assembly, PartNumber child) {
        return plan.part(assembly).contains().stream()
                .filter(each -> each.part().equals(child))
                .map(Contained::quantity)
                .reduce(java.math.BigDecimal::add)
                .map(java.math.BigDecimal::toPlainString)
                .orElse("");
    }

    private static String needs(List<Need> needs, PartNumber part) {
        return needs.stream()
                .filter(need -> need.part().equals(part))
                .map(NeedWords::say)
                .reduce((one, other) -> one + "; " + other)
                .orElse("");
    }
}
