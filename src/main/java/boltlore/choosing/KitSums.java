package boltlore.choosing;

import boltlore.bill.Costs;
import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Condition;
import boltlore.catalogue.Family;
import boltlore.catalogue.Finish;
import boltlore.catalogue.Part;
import boltlore.logic.All;
import boltlore.logic.PartConditions;
import boltlore.logic.Term;
import boltlore.trades.coating.CoatingCost;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/** What a kit costs and weighs, as sums over conditions: what its bill adds up, for all orders at once. */
final class KitSums {

    private final Catalogue catalogue;
    private final PartConditions parts;
    private final PaidTerms paid;
    private final FinishCases finishes;

    KitSums(PartConditions parts, Family family) {
        this.catalogue = parts.catalogue();
        this.parts = parts;
        this.paid = new PaidTerms(parts);
        this.finishes = new FinishCases(family);
    }

    /** Cost with scrap and coating, unrounded, in the workshop's currency; before mark-up and without extras. */
    List<Term> cost() {
        List<Term> sum = new ArrayList<>();
        for (Part part : reachable()) {
            List<Term> quantity = paid.of(part.number());
            BigDecimal own = Costs.toIssue(BigDecimal.ONE, part.scrapPercent()).multiply(part.cost());
            times(quantity, own, Condition.ALWAYS, sum);
            finishes.of(part).forEach(each -> times(quantity, coating(part, each.finish()), each.when(), sum));
        }
        return sum;
    }

    private BigDecimal coating(Part part, String finish) {
        Finish known = catalogue.finishes().get(finish);
        return known == null
                ? BigDecimal.ZERO
                : CoatingCost.of(part, known, catalogue.workshop().coating());
    }

    /** Mass in kg, without the film of powder. */
    List<Term> massKg() {
        List<Term> sum = new ArrayList<>();
        for (Part part : reachable()) {
            BigDecimal massKg = part.massKg();
            if (massKg != null && !part.isAssembly()) {
                times(parts.terms(part.number()), massKg, Condition.ALWAYS, sum);
            }
        }
        return sum;
    }

    private List<Part> reachable() {
        return parts.reachable().stream().map(catalogue::part).toList();
    }

    private static void times(List<Term> quantity, BigDecimal each, Condition when, List<Term> sum) {
        if (each.signum() != 0) {
            quantity.forEach(term -> sum.add(new Term(term.quantity().multiply(each), All.of(term.when(), when))));
        }
    }
}
