package boltlore.proof.kinds;

import boltlore.catalogue.Companion;
import boltlore.catalogue.Condition;
import boltlore.catalogue.Expectation;
import boltlore.catalogue.Line;
import boltlore.catalogue.Position;
import boltlore.logic.All;
import boltlore.logic.Term;
import boltlore.measure.Digits;
import boltlore.measure.LineName;
import boltlore.proof.FindingStatements;
import boltlore.proof.KitView;
import boltlore.proof.PossibleFinding;
import boltlore.resolution.FindingKind;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/** Something that a line or part expects beside it, and that is not in the kit, or too few of it. */
final class CompanionMissing implements FindingStatements {

    @Override
    public FindingKind finding() {
        return FindingKind.COMPANION_MISSING;
    }

    @Override
    public boolean dependsOnLeftOut() {
        return true;
    }

    @Override
    public String holds() {
        return "Whatever a line or part expects beside it is in the kit.";
    }

    @Override
    public String mend() {
        return "Widen the condition of the line that adds the associated part, make it a need, or narrow the expectation.";
    }

    @Override
    public List<PossibleFinding> findings(KitView kit) {
        List<PossibleFinding> all = new ArrayList<>();
        for (Line line : kit.family().lines().toList()) {
            for (Expectation expectation : line.expects()) {
                all.add(missing(kit, line.name().text(), kit.kit().in(line.name()), expectation, List.of(line.name())));
            }
        }
        for (Companion companion : kit.family().companions()) {
            for (Expectation expectation : companion.expects()) {
                all.add(missing(
                        kit,
                        companion.part().text(),
                        kit.parts().present(companion.part()),
                        expectation,
                        DeadPart.lines(kit, companion.part())));
            }
        }
        return SameFinding.merged(all);
    }

    private static PossibleFinding missing(
            KitView kit, String asker, Condition present, Expectation expectation, List<LineName> lines) {
        Condition asks = All.of(present, kit.kit().unfolded(expectation.when()));
        String target = expectation.target().name();
        return new PossibleFinding(
                target,
                asker,
                kit.sums()
                        .atLeast(terms(kit, expectation.target()), expectation.atLeast())
                        .map(enough -> All.of(asks, new Condition.Not(enough))),
                lines,
                "A valid order has " + asker + " with fewer than "
                        + Digits.plain(expectation.atLeast()) + " of " + target
                        + ", which it expects: " + expectation.because());
    }

    private static List<Term> terms(KitView kit, Expectation.Target target) {
        if (target instanceof Expectation.OfPart of) {
            return kit.parts().terms(of.part());
        }
        Position position = kit.kit().position(((Expectation.OfPosition) target).position());
        return position.lines().stream()
                .map(line -> new Term(BigDecimal.ONE, kit.kit().in(line.name())))
                .toList();
    }
}
