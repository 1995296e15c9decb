package boltlore.proof.kinds;

import boltlore.catalogue.Condition;
import boltlore.catalogue.Port;
import boltlore.logic.All;
import boltlore.logic.Any;
import boltlore.logic.Term;
import boltlore.measure.PartNumber;
import boltlore.proof.FindingStatements;
import boltlore.proof.KitView;
import boltlore.proof.PossibleFinding;
import boltlore.resolution.FindingKind;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** A high-voltage connector that is neither mated nor closed by its blank. */
final class InterlockOpen implements FindingStatements {

    /** A connector of a part, and when it has no mate; empty where that outgrew its bound. */
    private record Fitted(PartNumber part, Port port, Optional<Condition> open) {}

    @Override
    public FindingKind finding() {
        return FindingKind.INTERLOCK_OPEN;
    }

    @Override
    public boolean dependsOnLeftOut() {
        return true;
    }

    @Override
    public String holds() {
        return "Every high-voltage connector is mated or closed by its blank.";
    }

    @Override
    public String mend() {
        return "Add the mating part or the blank for these orders, in the quantity that all open connectors need.";
    }

    @Override
    public List<PossibleFinding> findings(KitView kit) {
        Map<PartNumber, List<Term>> asked = asked(kit);
        List<Fitted> all = new ArrayList<>();
        for (PartNumber part : kit.bringings().parts()) {
            for (Port port : kit.catalogue().part(part).ports()) {
                all.add(new Fitted(part, port, open(kit, part, port, asked)));
            }
        }
        return all.stream().map(fitted -> finding(kit, fitted, all)).toList();
    }

    /** How many of each mate all connectors together ask for. */
    private static Map<PartNumber, List<Term>> asked(KitView kit) {
        Map<PartNumber, List<Term>> asked = new TreeMap<>();
        for (PartNumber part : kit.bringings().parts()) {
            for (Port port : kit.catalogue().part(part).ports()) {
                port.mates()
                        .forEach(mate -> asked.computeIfAbsent(mate, number -> new ArrayList<>())
                                .addAll(kit.parts().terms(part)));
            }
        }
        return asked;
    }

    private static Optional<Condition> open(
            KitView kit, PartNumber part, Port port, Map<PartNumber, List<Term>> asked) {
        List<Condition> mated = new ArrayList<>();
        for (PartNumber mate : port.mates()) {
            Optional<Condition> enough = kit.sums().reaches(kit.parts().terms(mate), asked.getOrDefault(mate, List.of()));
            if (enough.isEmpty()) {
                return Optional.empty();
            }
            mated.add(enough.get());
        }
        return Optional.of(All.of(kit.parts().present(part), new Condition.Not(Any.of(mated))));
    }

    private static PossibleFinding finding(KitView kit, Fitted fitted, List<Fitted> all) {
        PartNumber blank = fitted.port().blank();
        String closer = blank == null ? "" : blank.text();
        return new PossibleFinding(
                fitted.part() + "/" + fitted.port().name(),
                closer,
                fitted.open().flatMap(open -> blank == null ? Optional.of(open) : unclosed(kit, open, blank, all)),
                DeadPart.lines(kit, fitted.part()),
                "A valid order has an open connector " + fitted.port().name() + " on " + fitted.part()
                        + (blank == null ? ", which has no blank." : " and too few blanks " + blank + " to close it."));
    }

    private static Optional<Condition> unclosed(KitView kit, Condition open, PartNumber blank, List<Fitted> all) {
        List<Term> needed = new ArrayList<>();
        for (Fitted other : all) {
            if (blank.equals(other.port().blank())) {
                if (other.open().isEmpty()) {
                    return Optional.empty();
                }
                Condition alsoOpen = other.open().get();
                kit.parts()
                        .terms(other.part())
                        .forEach(term -> needed.add(new Term(term.quantity(), All.of(term.when(), alsoOpen))));
            }
        }
        return kit.sums().reaches(kit.parts().terms(blank), needed).map(closed -> All.of(open, new Condition.Not(closed)));
    }
}
