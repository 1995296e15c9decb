package boltlore.sheets.coating;

import boltlore.catalogue.Coats;
import boltlore.coating.BatchRow;
import boltlore.coating.FilmGrowth;
import boltlore.coating.OvenBatch;
import java.util.ArrayList;
import java.util.List;

/** What is worth saying about the masks and threads of one batch. */
final class BatchWords {

    private BatchWords() {}

    static List<String> notes(OvenBatch batch) {
        List<String> notes = new ArrayList<>();
        int coats = batch.finish().coats().size();
        int places = PartsTable.masks(batch.rows());
        if (coats > 1 && places > 0) {
            notes.add(
                    "Masks are fitted anew for each coat: " + places + " places, " + places * coats
                            + " fittings. Take them off when the coat below is cured and cool, and look for powder under them.");
        }
        if (batch.rows().stream().anyMatch(BatchWords::chased)) {
            notes.add(chase(batch));
        }
        return notes;
    }

    private static boolean chased(BatchRow row) {
        return row.coat().features().stream().anyMatch(CoatWords::chased);
    }

    private static String chase(OvenBatch batch) {
        int um = batch.finish().coats().stream().mapToInt(Coats::filmTargetUm).sum();
        return um + " µm of film take a thread's pitch diameter "
                + CoatWords.plain(FilmGrowth.threadMm(um)) + " mm out of its size: chase the threads that the"
                + " remark names, after the last coat, and try them with a gauge.";
    }
}
