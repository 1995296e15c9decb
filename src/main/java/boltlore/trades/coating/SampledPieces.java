package boltlore.trades.coating;

import java.util.ArrayList;
import java.util.List;

/** Spreads the pieces to be read over the rows of a batch. */
final class SampledPieces {

    private SampledPieces() {}

    /** How many of each row: at least one, never more than there are, in turn until the sample is full. */
    static List<Integer> draw(List<Integer> piecesOfRows, int sample) {
        int all = piecesOfRows.stream().mapToInt(Integer::intValue).sum();
        int rounds = 1;
        while (upTo(rounds, piecesOfRows) < Math.min(sample, all)) {
            rounds++;
        }
        int tooMany = rounds == 1 ? 0 : upTo(rounds, piecesOfRows) - Math.min(sample, all);
        return taken(piecesOfRows, rounds, tooMany);
    }

    /** Pieces in so many rounds, each round one of every row that has one left. */
    private static int upTo(int rounds, List<Integer> piecesOfRows) {
        return piecesOfRows.stream()
                .mapToInt(pieces -> Math.min(pieces, rounds))
                .sum();
    }

    /** The last rows that reach the last round go without it, as many as would be too many. */
    private static List<Integer> taken(List<Integer> piecesOfRows, int rounds, int tooMany) {
        List<Integer> taken = new ArrayList<>();
        int left = tooMany;
        for (int i = piecesOfRows.size() - 1; i >= 0; i--) {
            boolean without = left > 0 && piecesOfRows.get(i) >= rounds;
            left -= without ? 1 : 0;
            taken.add(0, Math.min(piecesOfRows.get(i), without ? rounds - 1 : rounds));
        }
        return taken;
    }
}
