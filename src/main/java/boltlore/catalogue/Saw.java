package boltlore.catalogue;

import java.math.BigDecimal;

/**
 * A saw of the workshop.
 *
 * @param kerfMm what one square cut takes away
 * @param headTrimMm what is cut off the head of every bar first, that cut's kerf included
 * @param heldTailMm what the vice must hold of a bar's other end, and no cut reaches; 0 where it holds the piece itself
 * @param steepestDegrees greatest slant of a cut, 0 where it cuts square only
 */
public record Saw(
        String name,
        String says,
        BigDecimal kerfMm,
        BigDecimal headTrimMm,
        BigDecimal heldTailMm,
        BigDecimal steepestDegrees) {}
