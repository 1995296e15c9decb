package boltlore.catalogue;

import java.math.BigDecimal;
import java.math.MathContext;

/**
 * What labour the cost of a made part in the part master holds beside its material, so that it is not counted twice.
 *
 * @param labourPerHour with which it was worked out; 0 where the cost holds material only
 * @param lot over which set-ups were shared then
 */
public record MadeCost(BigDecimal labourPerHour, int lot) {

    public static final MadeCost MATERIAL_ONLY = new MadeCost(BigDecimal.ZERO, 1);

    private static final BigDecimal MINUTES_IN_AN_HOUR = BigDecimal.valueOf(60);

    /** Labour in the cost of one of a made part. */
    public BigDecimal labour(Part part) {
        BigDecimal minutes =
                part.making().operations().stream().map(this::minutes).reduce(BigDecimal.ZERO, BigDecimal::add);
        return minutes.multiply(labourPerHour).divide(MINUTES_IN_AN_HOUR, MathContext.DECIMAL128);
    }

    private BigDecimal minutes(Operation operation) {
        return operation.runMin().add(operation.setUpMin().divide(BigDecimal.valueOf(lot), MathContext.DECIMAL128));
    }

    /** What is left of the cost of one when its labour is taken out; below 0 where the two do not belong together. */
    public BigDecimal material(Part part) {
        return part.cost().subtract(labour(part));
    }
}
