package boltlore.proof.kinds;

import boltlore.catalogue.Condition;
import boltlore.catalogue.Line;
import boltlore.catalogue.Position;
import boltlore.logic.All;
import boltlore.logic.Any;
import boltlore.measure.LineName;
import boltlore.proof.FindingStatements;
import boltlore.proof.KitView;
import boltlore.proof.PossibleFinding;
import boltlore.resolution.FindingKind;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** A position that is filled while none of the brackets that hold it is in the kit. */
final class BracketMissing implements FindingStatements {

    @Override
    public FindingKind finding() {
        return FindingKind.BRACKET_MISSING;
    }

    @Override
    public boolean dependsOnLeftOut() {
        return true;
    }

    @Override
    public String holds() {
        return "Whatever is fitted has its bracket.";
    }

    @Override
    public String mend() {
        return "Widen the condition of one of the brackets to these orders, or add a bracket line for them.";
    }

    @Override
    public List<PossibleFinding> findings(KitView kit) {
        List<PossibleFinding> all = new ArrayList<>();
        for (Position position : kit.family().positions()) {
            for (List<LineName> brackets : position.heldBy()) {
                all.add(missing(kit, position, brackets));
            }
        }
        return all;
    }

    private static PossibleFinding missing(KitView kit, Position position, List<LineName> brackets) {
        Condition some = Any.of(brackets.stream().map(kit.kit()::in).toList());
        String names = brackets.stream().map(LineName::text).sorted().collect(Collectors.joining(", "));
        List<LineName> lines = Stream.concat(position.lines().stream().map(Line::name), brackets.stream())
                .toList();
        return PossibleFinding.of(
                position.name().text(),
                names,
                All.of(kit.kit().filled(position.name()), new Condition.Not(some)),
                lines,
                "A valid order has a part at position " + position.name()
                        + " and has none of the brackets that hold it: " + names + ".");
    }
}
