package boltlore.choosing;

import boltlore.bill.Costs;
import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Condition;
import boltlore.catalogue.Delivery;
import boltlore.catalogue.Family;
import boltlore.catalogue.Finish;
import boltlore.catalogue.Part;
import boltlore.catalogue.PriceBook;
import boltlore.logic.All;
import boltlore.logic.Any;
import boltlore.logic.Deadline;
import boltlore.logic.KitConditions;
import boltlore.logic.PartConditions;
import boltlore.logic.Term;
import boltlore.trades.coating.CoatingCost;
import boltlore.trades.costing.MinorUnit;
import boltlore.trades.costing.cost.ClearanceShares;
import boltlore.trades.costing.cost.KitTask;
import boltlore.trades.costing.cost.PartCosting;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;

/**
 * What a kit costs and weighs, as sums over conditions: what its bill adds up, for all orders at once. Cost is the full
 * cost, exact to the minor unit: each row of a bill is one term (or the steps of one joint, which are differences of its
 * rounded sums), worked out by the same code. Prices never fall where the full cost rises, so the orders of least and of
 * greatest full cost are those of the lowest and the highest price.
 */
final class KitSums {

    private final Catalogue catalogue;
    private final PartConditions parts;
    private final PaidTerms paid;
    private final KitConditions kit;
    private final Family family;
    private final FinishCases finishes;
    private final MinorUnit unit;
    private final PriceBands bands;

    KitSums(KitConditions kit, PartConditions parts, Family family, Deadline deadline) {
        this.kit = kit;
        this.family = family;
        this.catalogue = parts.catalogue();
        this.parts = parts;
        this.paid = new PaidTerms(parts);
        this.finishes = new FinishCases(family);
        this.unit = new MinorUnit(catalogue.workshop().currency());
        this.bands = new PriceBands(deadline);
    }

    /**
     * Full cost in the workshop's currency, without extras; direct cost where the workshop has not written down how it
     * prices.
     */
    List<Term> cost() {
        PriceBook prices = catalogue.prices();
        List<Term> sum = new ArrayList<>();
        PartCosting costing = prices == null ? null : new PartCosting(catalogue, prices);
        for (Part part : reachable()) {
            List<Term> quantities = paid.of(part.number());
            bands.of(part, quantities).forEach(band -> {
                UnaryOperator<BigDecimal> cost = quantity -> costing == null
                        ? direct(band.part(), quantity)
                        : costing.of(band.part(), quantity).elements().total();
                money(quantities, cost, band.when(), sum);
            });
            finishes.of(part).forEach(each -> {
                BigDecimal one = coating(part, each.finish());
                money(quantities, quantity -> unit.round(one.multiply(quantity)), each.when(), sum);
            });
        }
        if (prices != null) {
            KitTask.of(family, catalogue, prices)
                    .forEach(task -> sum.add(new Term(task.elements().total(), when(task))));
            prices.landing().suppliers().values().forEach(delivery -> clearance(delivery, sum));
        }
        return sum;
    }

    private Condition when(KitTask task) {
        return Any.of(task.presence().stream()
                .map(way -> All.of(
                        kit.unfolded(way.when()),
                        way.some().isEmpty()
                                ? Condition.ALWAYS
                                : Any.of(way.some().stream()
                                        .flatMap(position -> kit.position(position).lines().stream())
                                        .filter(line ->
                                                !catalogue.part(line.part()).reused())
                                        .map(line -> kit.in(line.name()))
                                        .toList())))
                .toList());
    }

    private BigDecimal direct(Part part, BigDecimal quantity) {
        return unit.round(Costs.toIssue(quantity, part.scrapPercent()).multiply(part.cost()));
    }

    private BigDecimal coating(Part part, String finish) {
        Finish known = catalogue.finishes().get(finish);
        return known == null ? BigDecimal.ZERO : CoatingCost.compute(part, known, catalogue);
    }

    /** Once for each kit that holds goods of that supplier. */
    private void clearance(Delivery delivery, List<Term> sum) {
        BigDecimal once = ClearanceShares.ofOneKit(delivery, unit);
        if (once.signum() != 0) {
            Condition some = Any.of(reachable().stream()
                    .filter(part -> PartCosting.supplier(part).equals(delivery.supplier()))
                    .map(part -> paid.paid(part.number()))
                    .toList());
            sum.add(new Term(once, some));
        }
    }

    /** Mass in kg, without the film of powder. */
    List<Term> massKg() {
        List<Term> sum = new ArrayList<>();
        for (Part part : reachable()) {
            BigDecimal massKg = part.massKg();
            if (massKg != null && massKg.signum() != 0 && !part.isAssembly()) {
                parts.terms(part.number()).forEach(term -> sum.add(term.times(massKg, Condition.ALWAYS)));
            }
        }
        return sum;
    }

    private List<Part> reachable() {
        return parts.reachable().stream().map(catalogue::part).toList();
    }

    private static void money(List<Term> quantities, UnaryOperator<BigDecimal> cost, Condition when, List<Term> sum) {
        Map<BigDecimal, BigDecimal> known = new HashMap<>();
        for (Term term : quantities) {
            BigDecimal all = term.above().add(term.quantity().abs());
            BigDecimal amount = known.computeIfAbsent(all, cost);
            if (term.above().signum() != 0) {
                amount = amount.subtract(known.computeIfAbsent(term.above(), cost));
            }
            if (amount.signum() != 0) {
                sum.add(new Term(term.quantity().signum() < 0 ? amount.negate() : amount, All.of(term.when(), when)));
            }
        }
    }
}
