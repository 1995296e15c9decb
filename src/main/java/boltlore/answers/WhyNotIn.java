package boltlore.answers;

import boltlore.catalogue.Condition;
import boltlore.catalogue.Line;
import boltlore.catalogue.Need;
import boltlore.choices.Choices;
import boltlore.choices.Conditions;
import boltlore.explanation.ConditionWords;
import boltlore.measure.PartNumber;
import boltlore.resolution.FamilyPlan;
import boltlore.resolution.Kit;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** What would add a part to a kit that it is not in: each line, assembly and companion, with what it depends on. */
public final class WhyNotIn {

    private final FamilyPlan plan;
    private final Kit kit;
    private final Choices choices;
    private final ConditionWords conditions;
    private final Set<PartNumber> told = new HashSet<>();

    private WhyNotIn(FamilyPlan plan, Kit kit, Choices choices) {
        this.plan = plan;
        this.kit = kit;
        this.choices = choices;
        this.conditions = new ConditionWords(plan.family());
    }

    /** Empty where nothing in the family could ever add the part. */
    public static List<Because> explain(FamilyPlan plan, Kit kit, Choices choices, PartNumber part) {
        return new WhyNotIn(plan, kit, choices).ways(part);
    }

    private List<Because> ways(PartNumber part) {
        if (!told.add(part)) {
            return List.of(Because.of("told above"));
        }
        List<Because> ways = new ArrayList<>();
        plan.family().lines().forEach(line -> line(line, part, ways));
        for (PartNumber asker : plan.askersFirst()) {
            asker(asker, part, ways);
        }
        return ways;
    }

    private String asked(Need need) {
        return NeedWords.say(need) + (need.when().isAlways() ? "" : ", when " + conditions.of(need.when()));
    }

    private void line(Line line, PartNumber part, List<Because> ways) {
        String named = "Line " + line.name() + " at "
                + plan.positionOf(line.name()).says().english();
        if (line.part().equals(part)) {
            ways.add(Because.of(named + " would add it; " + dependsOn(line)));
        }
        for (Need need : line.needs()) {
            if (need.part().equals(part)) {
                ways.add(Because.of(named + " " + asked(need) + "; " + dependsOn(line)));
            }
        }
    }

    private String dependsOn(Line line) {
        if (kit.leftOut().contains(line.name())) {
            return "this order leaves the line out";
        }
        return kit.lines().contains(line.name())
                ? "the line is in this kit"
                : "needed only with: " + conditions.of(line.when());
    }

    private boolean contains(PartNumber assembly, PartNumber part) {
        return plan.part(assembly).contains().stream()
                .anyMatch(child -> child.part().equals(part));
    }

    private void asker(PartNumber asker, PartNumber part, List<Because> ways) {
        String named = asker + " " + plan.part(asker).name().english();
        if (contains(asker, part)) {
            ways.add(new Because(named + " contains it and is not in this kit", ways(asker)));
        }
        for (Need need : plan.needsOf(asker)) {
            if (need.part().equals(part)) {
                ways.add(needOf(asker, named, need));
            }
        }
    }

    private Because needOf(PartNumber asker, String named, Need need) {
        if (kit.contains(asker)) {
            return Because.of(named + " is in this kit and " + NeedWords.say(need) + "; needed only with: "
                    + conditions.of(need.when()));
        }
        boolean open = Conditions.holds(need.when(), choices, kit.filled()::contains);
        Condition when = need.when();
        String also = open ? "" : ", when " + conditions.of(when);
        return new Because(named + " " + NeedWords.say(need) + also + " and is not in this kit", ways(asker));
    }
}
