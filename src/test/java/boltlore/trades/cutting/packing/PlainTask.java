package boltlore.trades.cutting.packing;

import boltlore.checkvalues.CheckRow;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Comparator;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

/** Tasks without slanted ends, written down as lengths. */
final class PlainTask {

    private PlainTask() {}

    /** Pieces of those lengths out of those bars; rests of at least 100 are kept. */
    static Task of(List<Long> pieces, Stock... stocks) {
        SortedMap<Long, Integer> counts = new TreeMap<>(Comparator.reverseOrder());
        pieces.forEach(piece -> counts.merge(piece, 1, Integer::sum));
        List<PieceType> kinds = counts.entrySet().stream()
                .map(entry -> new PieceType(entry.getKey(), Ends.SQUARE, entry.getValue()))
                .toList();
        return new Task(kinds, List.of(stocks), List.of(), 0, 100);
    }

    /** The instance that a row of check values names, each bar at a cost of 1. */
    static Task of(CheckRow row) {
        String file = row.text("pieces").replace("file ", "/");
        List<Long> numbers =
                text(file).lines().map(line -> Long.valueOf(line.strip())).toList();
        return of(numbers.subList(2, numbers.size()), Stock.toBuy(numbers.get(1), 1));
    }

    private static String text(String file) {
        try (InputStream in = PlainTask.class.getResourceAsStream(file)) {
            if (in == null) {
                throw new IllegalArgumentException("No file " + file);
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
