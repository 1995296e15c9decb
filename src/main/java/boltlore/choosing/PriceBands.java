package boltlore.choosing;

import boltlore.catalogue.Buying;
import boltlore.catalogue.Condition;
import boltlore.catalogue.Offer;
import boltlore.catalogue.Part;
import boltlore.logic.All;
import boltlore.logic.Any;
import boltlore.logic.Deadline;
import boltlore.logic.Term;
import boltlore.logic.ThresholdConditions;
import boltlore.measure.Percent;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;

/** In which orders a bought part has which of its prices by quantity: the same prices as on a costed bill, as conditions. */
final class PriceBands {

    /** The part at one of its prices, and the orders that buy enough for it and not enough for the next. */
    record Band(Part part, Condition when) {}

    private final ThresholdConditions thresholds;

    PriceBands(Deadline deadline) {
        this.thresholds = new ThresholdConditions(deadline);
    }

    /** @throws Deadline.Passed where the orders that reach a break cannot be told apart in bounded memory */
    List<Band> of(Part part, List<Term> quantities) {
        Buying buying = part.buying();
        if (buying == null || buying.breaks().isEmpty()) {
            return List.of(new Band(part, Condition.ALWAYS));
        }
        List<Band> bands = new ArrayList<>();
        Condition reached = Condition.ALWAYS;
        List<Offer.PriceBreak> breaks = buying.breaks();
        for (int i = 0; i < breaks.size(); i++) {
            Condition next = i + 1 < breaks.size()
                    ? reached(part, buying, breaks.get(i + 1).from(), quantities)
                    : Any.NEVER;
            Part priced = part.costing(breaks.get(i).homeCost());
            bands.add(new Band(priced, All.of(reached, not(next))));
            reached = next;
        }
        return bands;
    }

    /**
     * When a kit orders at least that many: whole packs up to the break's are too few when they cover what is needed, so
     * needed / (1 − scrap) must be more than one pack less.
     */
    private Condition reached(Part part, Buying buying, BigDecimal from, List<Term> quantities) {
        BigDecimal pack = buying.packOf() == null ? BigDecimal.ONE : buying.packOf();
        BigDecimal packs = from.divide(pack, 0, RoundingMode.UP);
        if (buying.toOrder(BigDecimal.ZERO).compareTo(from) >= 0) {
            return Condition.ALWAYS;
        }
        BigDecimal below = packs.subtract(BigDecimal.ONE).multiply(pack).multiply(Percent.rest(part.scrapPercent()));
        List<Term> negated = quantities.stream()
                .map(term -> new Term(term.quantity().negate(), term.when()))
                .toList();
        return not(thresholds
                .atLeast(negated, below.negate())
                .orElseThrow(() -> new Deadline.Passed("the price breaks of " + part.number()
                        + " split the orders into more cases than are held at once")));
    }

    private static Condition not(Condition condition) {
        if (condition.isAlways()) {
            return Any.NEVER;
        }
        return condition.equals(Any.NEVER) ? Condition.ALWAYS : new Condition.Not(condition);
    }
}
