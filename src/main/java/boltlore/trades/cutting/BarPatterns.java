package boltlore.trades.cutting;

import boltlore.trades.cutting.LaidPiece.LaidEnd;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Bars that are cut alike, so that each way of cutting is drawn once. */
final class BarPatterns {

    private record Piece(BigDecimal fromMm, BigDecimal lengthMm, LaidEnd left, LaidEnd right) {

        static Piece of(LaidPiece piece) {
            return new Piece(piece.fromMm(), piece.cut().lengthMm(), piece.left(), piece.right());
        }
    }

    private record Alike(BigDecimal lengthMm, boolean bought, boolean kept, List<Piece> pieces) {}

    private BarPatterns() {}

    /** In the order of their first bars. */
    static List<List<SawnBar>> group(List<SawnBar> bars) {
        Map<Alike, List<SawnBar>> patterns = new LinkedHashMap<>();
        for (SawnBar bar : bars) {
            List<Piece> pieces = bar.pieces().stream().map(Piece::of).toList();
            patterns.computeIfAbsent(
                            new Alike(bar.lengthMm(), bar.isBought(), bar.isKept(), pieces), any -> new ArrayList<>())
                    .add(bar);
        }
        return List.copyOf(patterns.values());
    }
}
