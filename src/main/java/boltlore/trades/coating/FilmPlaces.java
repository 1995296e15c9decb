package boltlore.trades.coating;

import boltlore.catalogue.Finish;
import boltlore.findings.Finding;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Where pieces that were read stand in the plan of today. A reading goes by its piece and its film, not by a number of
 * the plan that it was written for; what the orders now ask for otherwise, or not at all, is told and not judged.
 */
final class FilmPlaces {

    /** @param batch of an own oven, or null where the piece goes elsewhere */
    private record Place(Finish finish, @Nullable OvenBatch batch) {

        boolean isOf(FilmReading reading) {
            return batch != null
                    && CoatCodes.limits(finish).equals(reading.sheet().limits());
        }
    }

    private final Map<String, Place> places = new HashMap<>();

    FilmPlaces(CoatPlan plan) {
        plan.sendOuts().forEach(out -> add(out.rows(), null));
        plan.batches().forEach(batch -> add(batch.rows(), batch));
    }

    private void add(List<BatchRow> rows, @Nullable OvenBatch batch) {
        for (BatchRow row : rows) {
            for (PieceMarks marks : row.marks()) {
                marks.each()
                        .forEach(
                                piece -> places.put(row.part().number() + " " + piece, new Place(row.finish(), batch)));
            }
        }
    }

    /** Those of that batch. */
    List<FilmReading> of(OvenBatch batch, List<FilmReading> readings) {
        return readings.stream()
                .filter(reading -> {
                    Place place = places.get(reading.which());
                    return place != null
                            && place.isOf(reading)
                            && place.batch() != null
                            && place.batch().number() == batch.number();
                })
                .toList();
    }

    /** Readings that are of no batch: of another coat than is asked for now, or of pieces that nobody asks for now. */
    Stream<Finding> apart(List<FilmReading> readings) {
        List<FilmReading> apart = readings.stream()
                .filter(FilmReading::isFilled)
                .filter(reading -> {
                    Place place = places.get(reading.which());
                    return place == null || !place.isOf(reading);
                })
                .toList();
        Map<String, List<FilmReading>> groups =
                apart.stream().collect(Collectors.groupingBy(this::group, TreeMap::new, Collectors.toList()));
        return groups.values().stream().map(this::found);
    }

    private String group(FilmReading reading) {
        Place place = places.get(reading.which());
        String now = place == null ? "" : place.finish().name();
        return reading.order() + '\n' + reading.sheet().finish() + '\n' + now;
    }

    private Finding found(List<FilmReading> alike) {
        FilmReading first = alike.get(0);
        Place place = places.get(first.which());
        FilmFinding kind = place == null
                ? FilmFinding.PIECES_NOT_ASKED
                : place.finish().says().english().equals(first.sheet().finish())
                        ? FilmFinding.LIMITS_CHANGED_SINCE
                        : FilmFinding.OTHER_COAT_ASKED;
        List<String> pieces = alike.stream().map(FilmReading::which).distinct().toList();
        return Finding.of(
                kind,
                first.order(),
                "order",
                first.order(),
                "count",
                pieces.size(),
                "pieces",
                String.join(", ", pieces),
                "read",
                first.sheet().finish(),
                "asked",
                place == null ? "" : place.finish().says());
    }
}
