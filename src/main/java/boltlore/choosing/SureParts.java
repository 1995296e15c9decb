package boltlore.choosing;

import boltlore.catalogue.Condition;
import boltlore.choices.Choices;
import boltlore.logic.Count;
import boltlore.logic.LeastSum;
import boltlore.logic.PartConditions;
import boltlore.logic.Term;
import boltlore.logic.ValidOrders;
import boltlore.measure.PartNumber;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * Parts that every valid completion of a partial choice brings, with their least quantity.
 *
 * @param completions how many valid completions there are
 */
public record SureParts(SortedMap<PartNumber, BigDecimal> least, Count completions) {

    static SureParts of(PartConditions parts, ValidOrders orders, Choices partial, Count completions) {
        List<Condition> given = Wanted.all(Chooser.list(partial));
        SortedMap<PartNumber, BigDecimal> least = new TreeMap<>();
        if (orders.some(given)) {
            parts.reachable().stream()
                    .filter(part -> every(orders, given, parts.present(part)))
                    .forEach(part -> least.put(part, least(parts.terms(part), orders, given)));
        }
        return new SureParts(least, completions);
    }

    private static boolean every(ValidOrders orders, List<Condition> given, Condition present) {
        List<Condition> missing = new ArrayList<>(given);
        missing.add(new Condition.Not(present));
        return !orders.some(missing);
    }

    private static BigDecimal least(List<Term> terms, ValidOrders orders, List<Condition> given) {
        return new LeastSum(orders, terms)
                .among(given, best -> best.sum().stripTrailingZeros())
                .orElse(BigDecimal.ZERO);
    }
}
