package boltlore.choosing;

import boltlore.catalogue.Condition;
import boltlore.catalogue.Part;
import boltlore.catalogue.Source;
import boltlore.logic.Any;
import boltlore.logic.PartConditions;
import boltlore.logic.Term;
import boltlore.measure.PartNumber;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** How many of a part are paid for as such: all but those that come inside something that is bought. */
final class PaidTerms {

    private static final BigDecimal MINUS_ONE = BigDecimal.ONE.negate();

    private record Inside(Part assembly, BigDecimal quantity) {}

    private final PartConditions parts;
    private final Map<PartNumber, List<Inside>> insideOf = new HashMap<>();
    private final Map<PartNumber, List<Term>> insideBought = new HashMap<>();

    PaidTerms(PartConditions parts) {
        this.parts = parts;
        for (Part assembly : parts.catalogue().parts().values()) {
            assembly.contains()
                    .forEach(child -> insideOf.computeIfAbsent(child.part(), part -> new ArrayList<>())
                            .add(new Inside(assembly, child.quantity())));
        }
    }

    List<Term> of(PartNumber part) {
        List<Term> paid = new ArrayList<>(parts.terms(part));
        for (Term term : insideBought(part)) {
            paid.add(term.times(MINUS_ONE, Condition.ALWAYS));
        }
        return paid;
    }

    private List<Term> insideBought(PartNumber part) {
        List<Term> known = insideBought.get(part);
        if (known == null) {
            known = new ArrayList<>();
            for (Inside inside : insideOf.getOrDefault(part, List.of())) {
                for (Term term : unpaid(inside.assembly())) {
                    known.add(term.times(inside.quantity(), Condition.ALWAYS));
                }
            }
            insideBought.put(part, known);
        }
        return known;
    }

    private List<Term> unpaid(Part assembly) {
        return assembly.source() == Source.BUY ? parts.terms(assembly.number()) : insideBought(assembly.number());
    }

    /** When some of the part is paid for as such. */
    Condition paid(PartNumber part) {
        List<Condition> ways = new ArrayList<>(List.of(parts.brought(part)));
        for (Inside inside : insideOf.getOrDefault(part, List.of())) {
            if (inside.assembly().source() == Source.MAKE) {
                ways.add(paid(inside.assembly().number()));
            }
        }
        return Any.of(ways);
    }
}
