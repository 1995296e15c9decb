package boltlore.proof;

import boltlore.catalogue.Condition;
import boltlore.catalogue.Line;
import boltlore.choices.Choices;
import boltlore.logic.All;
import boltlore.logic.Bringing;
import boltlore.logic.Term;
import boltlore.logic.Truth;
import boltlore.measure.LineName;
import boltlore.measure.PartNumber;
import boltlore.measure.PositionName;
import boltlore.proof.kinds.Kinds;
import boltlore.resolution.Finding;
import boltlore.resolution.FindingKind;
import boltlore.resolution.Reason;
import boltlore.resolution.Requirer;
import boltlore.resolution.Way;
import java.math.BigDecimal;
import java.util.List;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;

/** What the formulas say of one order: the same things that the rules conclude, by other code. */
final class SaidOfKits {

    private static final Condition UNDECIDED = new Condition.Filled(new PositionName("undecided"));

    private final KitView kit;
    private final boolean unusedLeftOut;
    private final List<Line> brackets;
    private final List<KnownFinding> possible;

    private record KnownFinding(Finding finding, Condition when) {}

    SaidOfKits(KitView kit, boolean unusedLeftOut) {
        this.kit = kit;
        this.unusedLeftOut = unusedLeftOut;
        this.brackets = kit.family().lines().filter(Line::isBracket).toList();
        this.possible = Stream.concat(
                        Kinds.ofFindings().stream()
                                .flatMap(kind -> kind.findings(kit).stream()
                                        .map(finding -> new KnownFinding(
                                                new Finding(kind.finding(), finding.subject(), finding.detail()),
                                                finding.when().orElse(UNDECIDED)))),
                        brackets.stream().map(this::unused))
                .toList();
    }

    private KnownFinding unused(Line bracket) {
        FindingKind kind = unusedLeftOut ? FindingKind.LEFT_OUT : FindingKind.UNUSED;
        return new KnownFinding(
                new Finding(kind, bracket.name().text()),
                All.of(
                        kit.kit().called(bracket.name()),
                        new Condition.Not(kit.kit().useful(bracket.name()))));
    }

    /** Whether every finding could be put into a formula. */
    boolean isWhole() {
        return possible.stream().noneMatch(finding -> finding.when().equals(UNDECIDED));
    }

    /** What can be said of this order. */
    Said of(Choices choices) {
        Truth truth = new Truth(choices);
        SortedSet<LineName> lines = new TreeSet<>();
        kit.family()
                .lines()
                .map(Line::name)
                .filter(line -> truth.of(kit.kit().in(line)))
                .forEach(lines::add);
        SortedMap<PartNumber, BigDecimal> quantities = new TreeMap<>();
        SortedSet<Reason> reasons = new TreeSet<>();
        for (PartNumber part : kit.bringings().parts()) {
            BigDecimal sum = kit.parts().terms(part).stream()
                    .filter(term -> truth.of(term.when()))
                    .map(Term::quantity)
                    .reduce(BigDecimal.ZERO, BigDecimal::add);
            if (truth.of(kit.parts().present(part))) {
                quantities.put(part, sum.stripTrailingZeros());
            }
            kit.bringings().of(part).stream()
                    .filter(way -> truth.of(way.when()))
                    .forEach(way -> reasons.add(reason(way)));
        }
        SortedSet<Finding> findings = new TreeSet<>();
        possible.stream()
                .filter(finding -> truth.of(finding.when()))
                .forEach(finding -> findings.add(finding.finding()));
        return new Said(lines, quantities, reasons, findings);
    }

    private static Reason reason(Bringing way) {
        LineName line = way.line();
        PartNumber asker = way.asker();
        Requirer of = line != null ? new Requirer.OfLine(line) : new Requirer.OfPart(asker);
        return new Reason(of, Way.valueOf(way.how().name()), way.part());
    }
}
