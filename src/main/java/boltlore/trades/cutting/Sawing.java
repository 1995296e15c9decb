package boltlore.trades.cutting;

import boltlore.catalogue.BarStock;
import boltlore.catalogue.Cut;
import boltlore.trades.cutting.packing.Ends;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.stream.Stream;

/**
 * What sawing makes of lengths, in whole units of 1/2000 mm, so that the half of a thousandth is exact.
 *
 * <p>Slanted pieces whose material turns lie in a row, each against the next with ends of one slant, so that one cut parts
 * them and their slants overlap. Such a piece takes up its length on the middle line and half a kerf at each end; what an
 * end takes up more when it lies against no other of its slant is its exposure. Sets with ends of several slants, and
 * materials that do not turn, are laid over all, one behind the other.
 */
final class Sawing {

    private static final int UNITS_IN_MM = 2000;

    private final BarStock stock;
    private final List<BigDecimal> slants;

    /** @param sets all that are sawn from the stock together */
    Sawing(BarStock stock, List<PieceSet> sets) {
        this.stock = stock;
        this.slants = sets.stream()
                .filter(set -> stock.turns())
                .flatMap(Sawing::slantsOf)
                .sorted()
                .distinct()
                .toList();
    }

    private static Stream<BigDecimal> slantsOf(PieceSet set) {
        return set.cuts().stream()
                .flatMap(cut -> cut.endAngles().stream())
                .filter(angle -> angle.signum() != 0)
                .map(angle -> angle.abs().stripTrailingZeros())
                .distinct();
    }

    static long up(BigDecimal mm) {
        return units(mm, RoundingMode.CEILING);
    }

    static long down(BigDecimal mm) {
        return units(mm, RoundingMode.FLOOR);
    }

    private static long units(BigDecimal mm, RoundingMode rounding) {
        return mm.multiply(BigDecimal.valueOf(UNITS_IN_MM))
                .setScale(0, rounding)
                .longValueExact();
    }

    static BigDecimal mm(long units) {
        return BigDecimal.valueOf(units).divide(BigDecimal.valueOf(UNITS_IN_MM));
    }

    /** By how much one corner of an end lies behind the other. */
    long slant(BigDecimal degrees) {
        return up(stock.acrossMm().multiply(BigDecimal.valueOf(StrictMath.tan(radians(degrees)))));
    }

    /** What a cut of that slant takes away along the bar. */
    long kerf(BigDecimal degrees) {
        return up(
                stock.saw().kerfMm().divide(BigDecimal.valueOf(StrictMath.cos(radians(degrees))), 9, RoundingMode.UP));
    }

    private static double radians(BigDecimal degrees) {
        return StrictMath.toRadians(degrees.abs().doubleValue());
    }

    long kerf() {
        return kerf(BigDecimal.ZERO);
    }

    /** The trimmed bar; where nothing of it is held, with the kerf that a last piece that ends with the bar does not need. */
    long room(BigDecimal lengthMm) {
        return down(sawableMm(lengthMm)) + (stock.saw().heldTailMm().signum() > 0 ? 0 : kerf());
    }

    private BigDecimal sawableMm(BigDecimal lengthMm) {
        return lengthMm.subtract(stock.saw().headTrimMm()).subtract(stock.saw().heldTailMm());
    }

    /** What the packing must leave of a bar for the rest to be kept, beside what is held of it. */
    long keepFrom() {
        return Math.max(0, up(stock.keepFromMm().subtract(stock.saw().heldTailMm())));
    }

    /** The kerf of the cut after the last piece, as far as the room does not count it. */
    long lastCut() {
        return stock.saw().heldTailMm().signum() > 0 ? 0 : kerf();
    }

    /** Whether the pieces of the set lie against others with their slanted ends. */
    boolean nests(PieceSet set) {
        return stock.turns() && slantsOf(set).count() == 1;
    }

    /** The exposure of each slant. */
    List<Long> exposure() {
        return slants.stream()
                .map(slant -> (slant(slant) + kerf(slant) + kerf() + 1) / 2)
                .toList();
    }

    Ends ends(PieceSet set) {
        if (!nests(set)) {
            return Ends.SQUARE;
        }
        int slant = slants.indexOf(slantsOf(set).findFirst().orElseThrow());
        return new Ends(slant, pieces(set, 1), pieces(set, 2));
    }

    private static int pieces(PieceSet set, int slantedEnds) {
        return set.cuts().stream()
                .filter(cut -> slantedEnds
                        == cut.endAngles().stream()
                                .filter(angle -> angle.signum() != 0)
                                .count())
                .mapToInt(Cut::count)
                .sum();
    }

    long length(PieceSet set) {
        return set.cuts().stream()
                .mapToLong(cut -> cut.count() * length(cut, nests(set)))
                .sum();
    }

    private long length(Cut cut, boolean nests) {
        long halves = 2 * up(cut.lengthMm());
        for (BigDecimal angle : cut.endAngles()) {
            boolean square = angle.signum() == 0;
            halves += square || nests ? kerf(angle) : 2 * kerf(angle) + kerf();
            halves -= nests ? slant(angle) : 0;
        }
        return (halves + 1) / 2;
    }
}
