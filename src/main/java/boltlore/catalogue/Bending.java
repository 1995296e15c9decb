package boltlore.catalogue;

import java.math.BigDecimal;
import java.math.MathContext;

/**
 * How a sheet bends on the workshop's own tools.
 *
 * @param insideRadiusMm of every bend
 * @param kFactor share of the thickness, from the inside, at which the sheet neither stretches nor shrinks: 0 to 0.5
 */
public record Bending(BigDecimal insideRadiusMm, BigDecimal kFactor) {

    private static final MathContext EXACT = MathContext.DECIMAL64;
    private static final BigDecimal RADIANS = BigDecimal.valueOf(StrictMath.PI / 180);

    /**
     * Length in mm of the sheet inside one bend: π/180 × angle × (inside radius + K × thickness). Source: the bend allowance
     * of sheet-metal textbooks.
     *
     * @param degrees by which the sheet is bent out of the flat
     */
    public BigDecimal allowanceMm(BigDecimal degrees, BigDecimal thicknessMm) {
        BigDecimal radius = insideRadiusMm.add(kFactor.multiply(thicknessMm));
        return RADIANS.multiply(degrees, EXACT).multiply(radius, EXACT);
    }

    /**
     * From where the bend begins to where the outer faces would meet, in mm: (inside radius + thickness) × tan(angle / 2).
     * Source: the outside set-back of sheet-metal textbooks.
     */
    public BigDecimal setBackMm(BigDecimal degrees, BigDecimal thicknessMm) {
        double half = StrictMath.tan(StrictMath.toRadians(degrees.doubleValue() / 2));
        return insideRadiusMm.add(thicknessMm).multiply(BigDecimal.valueOf(half), EXACT);
    }
}
