package boltlore.choosing;

import boltlore.catalogue.Contained;
import boltlore.catalogue.Part;
import boltlore.catalogue.Source;
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

    private final PartConditions parts;
    private final Map<PartNumber, List<Part>> assembliesOf = new HashMap<>();
    private final Map<PartNumber, List<Term>> insideBought = new HashMap<>();

    PaidTerms(PartConditions parts) {
        this.parts = parts;
        for (Part assembly : parts.catalogue().parts().values()) {
            assembly.contains().stream()
                    .map(Contained::part)
                    .distinct()
                    .forEach(child -> assembliesOf
                            .computeIfAbsent(child, part -> new ArrayList<>())
                            .add(assembly));
        }
    }

    List<Term> of(PartNumber part) {
        List<Term> paid = new ArrayList<>(parts.terms(part));
        for (Term term : insideBought(part)) {
            paid.add(new Term(term.quantity().negate(), term.when()));
        }
        return paid;
    }

    private List<Term> insideBought(PartNumber part) {
        List<Term> known = insideBought.get(part);
        if (known == null) {
            known = new ArrayList<>();
            for (Part assembly : assembliesOf.getOrDefault(part, List.of())) {
                known.addAll(times(unpaid(assembly), inEach(assembly, part)));
            }
            insideBought.put(part, known);
        }
        return known;
    }

    private List<Term> unpaid(Part assembly) {
        return assembly.source() == Source.BUY ? parts.terms(assembly.number()) : insideBought(assembly.number());
    }

    private static List<Term> times(List<Term> terms, BigDecimal each) {
        return terms.stream()
                .map(term -> new Term(term.quantity().multiply(each), term.when()))
                .toList();
    }

    private static BigDecimal inEach(Part assembly, PartNumber part) {
        return assembly.contains().stream()
                .filter(child -> child.part().equals(part))
                .map(Contained::quantity)
                .reduce(BigDecimal.ZERO, BigDecimal::add);
    }
}
