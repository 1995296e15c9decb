package boltlore.trades.cutting;

import java.math.BigDecimal;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/**
 * One bar and what is cut from it.
 *
 * @param number through the whole plan, from 1
 * @param remnant that it is, or null where it is bought
 * @param cost of a bought bar; 0 for a remnant
 * @param pieces in the order that they are cut
 * @param restMm what is left after the last cut
 * @param keptAs name of the rest as a new remnant, or empty where it is scrap
 * @param oneHeatWith numbers of other bars that must come from the same heat
 */
public record SawnBar(
        int number,
        @Nullable Remnant remnant,
        BigDecimal lengthMm,
        BigDecimal cost,
        List<LaidPiece> pieces,
        BigDecimal restMm,
        String keptAs,
        SortedSet<Integer> oneHeatWith) {

    public SawnBar {
        pieces = List.copyOf(pieces);
    }

    public boolean isBought() {
        return remnant == null;
    }

    /** Heat number where it is known before the bar is taken, else empty. */
    public String heat() {
        return remnant == null ? "" : remnant.heat();
    }

    public boolean isKept() {
        return !keptAs.isEmpty();
    }

    public BigDecimal piecesMm() {
        return pieces.stream().map(piece -> piece.cut().lengthMm()).reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    SawnBar withOneHeat(SortedSet<Integer> bars) {
        SortedSet<Integer> others = new TreeSet<>(bars);
        others.remove(number);
        return new SawnBar(number, remnant, lengthMm, cost, pieces, restMm, keptAs, others);
    }
}
