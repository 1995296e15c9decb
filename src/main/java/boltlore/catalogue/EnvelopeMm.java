package boltlore.catalogue;

import java.math.BigDecimal;
import java.util.Arrays;

/** Outer size in mm. */
public record EnvelopeMm(int length, int width, int height) {

    /** 1 l = 10⁶ mm³. */
    private static final int MM3_IN_LITRE_DIGITS = 6;

    /** Volume in litres (dm³), exact. */
    public BigDecimal litres() {
        BigDecimal litres = BigDecimal.valueOf(length)
                .multiply(BigDecimal.valueOf(width))
                .multiply(BigDecimal.valueOf(height))
                .movePointLeft(MM3_IN_LITRE_DIGITS)
                .stripTrailingZeros();
        return litres.scale() < 0 ? litres.setScale(0) : litres;
    }

    /** Whether a box of this size goes into one of that, edges along edges, turned any way. */
    public boolean goesInto(EnvelopeMm room) {
        int[] of = sides();
        int[] inside = room.sides();
        return of[0] <= inside[0] && of[1] <= inside[1] && of[2] <= inside[2];
    }

    private int[] sides() {
        int[] sides = {length, width, height};
        Arrays.sort(sides);
        return sides;
    }
}
