package boltlore.coating;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Hangs pieces into as few loads as best-fit decreasing finds: the piece that needs most of any limit first, each into
 * the load that it leaves fullest. Same pieces, same loads.
 */
public final class OvenLoads {

    private record Piece(int row, PieceMarks mark, LoadSize size, double fullness) {}

    private static final class Hanging {
        private final List<Piece> pieces = new ArrayList<>();
        private LoadSize size = LoadSize.NONE;

        private void add(Piece piece) {
            pieces.add(piece);
            size = size.plus(piece.size());
        }
    }

    private final List<BatchRow> rows;
    private final LoadSize limits;
    private final List<Hanging> hangings = new ArrayList<>();

    private OvenLoads(List<BatchRow> rows, LoadSize limits) {
        this.rows = rows;
        this.limits = limits;
    }

    /** Loads with the earliest need first. Every piece must fit into the limits alone. */
    static List<OvenLoad> of(List<BatchRow> rows, LoadSize limits) {
        OvenLoads loads = new OvenLoads(rows, limits);
        loads.pieces().forEach(loads::hang);
        return loads.hangings.stream()
                .map(loads::load)
                .sorted(Comparator.comparing(OvenLoad::needBy, BatchRow.EARLIEST))
                .toList();
    }

    /**
     * Fewer loads than this cannot do: no limit may be passed on the whole, and no two pieces share a load that each
     * need more than half of the same limit.
     */
    static int atLeast(List<BatchRow> rows, LoadSize limits) {
        LoadSize all = LoadSize.NONE;
        int[] overHalf = new int[4];
        for (BatchRow row : rows) {
            LoadSize one = LoadSize.of(row);
            all = all.plus(one.times(row.pieces()));
            countOverHalf(one, row.pieces(), limits, overHalf);
        }
        int bySum = all.fullness(limits).setScale(0, RoundingMode.CEILING).intValueExact();
        return Math.max(bySum, IntStream.of(overHalf).max().orElse(0));
    }

    private static void countOverHalf(LoadSize one, int pieces, LoadSize limits, int[] counts) {
        List<BigDecimal> twice = one.times(2).shares(limits);
        for (int i = 0; i < counts.length; i++) {
            counts[i] += twice.get(i).compareTo(BigDecimal.ONE) > 0 ? pieces : 0;
        }
    }

    private List<Piece> pieces() {
        return IntStream.range(0, rows.size())
                .boxed()
                .flatMap(this::pieces)
                .sorted(Comparator.comparingDouble(Piece::fullness).reversed())
                .toList();
    }

    private Stream<Piece> pieces(int row) {
        LoadSize size = LoadSize.of(rows.get(row));
        double fullness = size.nearFullness(limits);
        return rows.get(row).marks().stream()
                .flatMap(PieceMarks::each)
                .map(mark -> new Piece(row, mark, size, fullness));
    }

    private void hang(Piece piece) {
        best(piece).orElseGet(this::another).add(piece);
    }

    private Optional<Hanging> best(Piece piece) {
        Hanging best = null;
        double fullest = -1;
        for (Hanging hanging : hangings) {
            LoadSize with = hanging.size.plus(piece.size());
            if (with.within(limits) && with.nearFullness(limits) > fullest) {
                best = hanging;
                fullest = with.nearFullness(limits);
            }
        }
        return Optional.ofNullable(best);
    }

    private Hanging another() {
        Hanging hanging = new Hanging();
        hangings.add(hanging);
        return hanging;
    }

    private OvenLoad load(Hanging hanging) {
        Map<Integer, List<PieceMarks>> byRow = new TreeMap<>();
        hanging.pieces.forEach(piece ->
                byRow.computeIfAbsent(piece.row(), row -> new ArrayList<>()).add(piece.mark()));
        List<BatchRow> loaded = byRow.entrySet().stream()
                .map(entry -> part(rows.get(entry.getKey()), entry.getValue()))
                .toList();
        return new OvenLoad(loaded, hanging.size);
    }

    private static BatchRow part(BatchRow row, List<PieceMarks> marks) {
        return new BatchRow(
                row.part(), row.coat(), row.finish(), row.massKg(), row.standing(), PieceMarks.joined(marks));
    }
}
