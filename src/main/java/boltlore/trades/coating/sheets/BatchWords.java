package boltlore.trades.coating.sheets;

import boltlore.catalogue.Coats;
import boltlore.catalogue.Feature;
import boltlore.measure.Digits;
import boltlore.trades.coating.BatchRow;
import boltlore.trades.coating.FilmDemand;
import boltlore.trades.coating.FilmGrowth;
import boltlore.trades.coating.OvenBatch;
import java.util.ArrayList;
import java.util.List;

/** What is worth saying about the masks and threads of one batch. */
final class BatchWords {

    private static final String FACES = "Bearing faces stay bare: more than " + FilmDemand.MOST_UNDER_PRELOAD_UM
            + " µm under the head or washer of a preloaded joint come off before it is fitted.";

    private BatchWords() {}

    static List<String> notes(OvenBatch batch) {
        List<String> notes = new ArrayList<>();
        if (batch.finish().coats().size() > 1 && PartsTable.masks(batch.rows()) > 0) {
            notes.add(anew(batch));
        }
        if (batch.rows().stream().anyMatch(BatchWords::faced)) {
            notes.add(FACES);
        }
        if (batch.rows().stream().anyMatch(BatchWords::chased)) {
            notes.add(chase(batch));
        }
        return notes;
    }

    private static String anew(OvenBatch batch) {
        int places = PartsTable.masks(batch.rows());
        return "Masks are fitted anew for each coat: " + places + " places, "
                + places * batch.finish().coats().size()
                + " fittings. Take them off when the coat below is cured and cool, and look for powder under them.";
    }

    private static boolean chased(BatchRow row) {
        return row.coat().features().stream().anyMatch(CoatWords::chased);
    }

    private static boolean faced(BatchRow row) {
        return row.coat().features().stream().anyMatch(feature -> feature.kind() == Feature.Kind.FACE);
    }

    private static String chase(OvenBatch batch) {
        int um = batch.finish().coats().stream().mapToInt(Coats::filmTargetUm).sum();
        return um + " µm of film take a thread's pitch diameter "
                + Digits.plain(FilmGrowth.threadMm(um)) + " mm out of its size: chase the threads that the"
                + " remark names, after the last coat, and try them with a gauge.";
    }
}
