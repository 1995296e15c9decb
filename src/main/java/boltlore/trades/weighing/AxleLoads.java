package boltlore.trades.weighing;

import java.math.BigDecimal;
import java.math.MathContext;

/** What the front and the rear axle carry in kg; below 0 where something is taken off or hangs beyond the other axle. */
public record AxleLoads(BigDecimal frontKg, BigDecimal rearKg) {

    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);

    public static final AxleLoads NONE = new AxleLoads(BigDecimal.ZERO, BigDecimal.ZERO);

    public BigDecimal totalKg() {
        return frontKg.add(rearKg);
    }

    public BigDecimal on(Limited limited) {
        return switch (limited) {
            case FRONT -> frontKg;
            case REAR -> rearKg;
            case WHOLE -> totalKg();
        };
    }

    public AxleLoads plus(AxleLoads other) {
        return new AxleLoads(frontKg.add(other.frontKg), rearKg.add(other.rearKg));
    }

    /** Share of the total on the front axle; 0 where there is no total. */
    public BigDecimal frontPercent() {
        BigDecimal total = totalKg();
        return total.signum() == 0 ? BigDecimal.ZERO : frontKg.multiply(HUNDRED).divide(total, MathContext.DECIMAL128);
    }
}
