package boltlore.trades.costing.cost;

import boltlore.catalogue.Operation;
import boltlore.catalogue.OperationRate;
import boltlore.trades.costing.MinorUnit;
import java.math.BigDecimal;
import java.math.MathContext;

/**
 * One operation on a number of pieces, at its rate. Job costing: labour is hours times rate, and a set-up is borne by the
 * lot that it is made for, so that each piece bears set-up / lot (cost-accounting textbooks; from memory).
 *
 * @param setUpMin the pieces' share of the lots' set-ups in minutes
 * @param runMin minutes of running
 * @param setUp money, rounded to the minor unit
 * @param run money, rounded to the minor unit
 */
public record Work(OperationRate rate, BigDecimal setUpMin, BigDecimal runMin, BigDecimal setUp, BigDecimal run) {

    private static final BigDecimal MINUTES_IN_AN_HOUR = BigDecimal.valueOf(60);

    static Work of(Operation operation, OperationRate rate, BigDecimal pieces, int lot, MinorUnit unit) {
        BigDecimal setUpMin =
                operation.setUpMin().multiply(pieces).divide(BigDecimal.valueOf(lot), MathContext.DECIMAL128);
        BigDecimal runMin = operation.runMin().multiply(pieces);
        return new Work(rate, setUpMin, runMin, unit.round(cost(setUpMin, rate)), unit.round(cost(runMin, rate)));
    }

    private static BigDecimal cost(BigDecimal minutes, OperationRate rate) {
        return minutes.multiply(rate.perHour()).divide(MINUTES_IN_AN_HOUR, MathContext.DECIMAL128);
    }

    public BigDecimal cost() {
        return setUp.add(run);
    }

    /** The same operation on these and other pieces. */
    Work plus(Work other) {
        return new Work(
                rate,
                setUpMin.add(other.setUpMin),
                runMin.add(other.runMin),
                setUp.add(other.setUp),
                run.add(other.run));
    }

    Elements elements() {
        return rate.outside()
                ? Elements.NONE.with(Element.OUTSIDE_WORK, cost())
                : Elements.NONE.with(Element.SET_UP, setUp).with(Element.LABOUR, run);
    }
}
