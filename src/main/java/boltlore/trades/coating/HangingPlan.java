package boltlore.trades.coating;

import boltlore.catalogue.EnvelopeMm;
import boltlore.catalogue.Oven;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;

/**
 * How a load may hang: from the door inwards, first the pieces that take most rails, then the longest.
 *
 * @param noRoom pieces that found no room beside or below the others: the load's volume allows them, this plan does not
 * @param unsized rows whose pieces' size is not known
 */
public record HangingPlan(
        OvenLoad load, Oven oven, List<Place> places, List<HungPiece> noRoom, List<BatchRow> unsized) {

    /** Empty where the oven's rails are not told. */
    public static Optional<HangingPlan> of(OvenLoad load, Oven oven) {
        return oven.rails() == 0 ? Optional.empty() : Optional.of(hung(load, oven));
    }

    private static HangingPlan hung(OvenLoad load, Oven oven) {
        List<HungPiece> pieces = new ArrayList<>();
        List<BatchRow> unsized = new ArrayList<>();
        for (int i = 0; i < load.rows().size(); i++) {
            BatchRow row = load.rows().get(i);
            Optional<Hung> size = size(row, oven);
            HungPiece piece = size.map(known -> piece(load, row, known)).orElse(null);
            for (int each = 0; piece != null && each < row.pieces(); each++) {
                pieces.add(piece);
            }
            if (piece == null) {
                unsized.add(row);
            }
        }
        Rails rails = new Rails(oven);
        List<HungPiece> noRoom = pieces.stream()
                .sorted(largestFirst(rails))
                .filter(piece -> !rails.hang(piece))
                .toList();
        return new HangingPlan(load, oven, rails.places(), noRoom, List.copyOf(unsized));
    }

    private static HungPiece piece(OvenLoad load, BatchRow row, Hung size) {
        return new HungPiece(load.rows().indexOf(row) + 1, row, size);
    }

    private static Optional<Hung> size(BatchRow row, Oven oven) {
        EnvelopeMm envelope = row.coat().envelope();
        return envelope == null ? Optional.empty() : Hung.of(envelope, oven.inside());
    }

    private static Comparator<HungPiece> largestFirst(Rails rails) {
        return Comparator.<HungPiece>comparingInt(piece -> -rails.taken(piece.size()))
                .thenComparing(piece -> -piece.size().alongMm())
                .thenComparing(piece -> -piece.size().downMm())
                .thenComparing(HungPiece::number);
    }

    /** What hangs on each rail that holds anything, by its number; a piece over several rails is told of the first. */
    public TreeMap<Integer, List<Place>> byRail() {
        TreeMap<Integer, List<Place>> byRail = new TreeMap<>();
        places.forEach(place ->
                byRail.computeIfAbsent(place.rail(), rail -> new ArrayList<>()).add(place));
        return byRail;
    }
}
