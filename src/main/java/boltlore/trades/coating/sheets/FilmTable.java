package boltlore.trades.coating.sheets;

import boltlore.report.Column;
import boltlore.report.Table;
import boltlore.report.TableBuilder;
import boltlore.trades.coating.BatchRow;
import boltlore.trades.coating.FilmDemand;
import boltlore.trades.coating.OvenBatch;
import boltlore.trades.coating.ReadingSample;
import java.util.List;

/** Boxes for five film readings on enough pieces of a batch, at least one of each part. */
final class FilmTable {

    private static final Column[] COLUMNS = {
        Column.text("batch", "Batch"),
        Column.text("part", "Part"),
        Column.text("name", "Name").atMost(24),
        Column.blank("piece", "Which piece"),
        Column.blank("reading-1", "Reading 1").in("µm"),
        Column.blank("reading-2", "Reading 2").in("µm"),
        Column.blank("reading-3", "Reading 3").in("µm"),
        Column.blank("reading-4", "Reading 4").in("µm"),
        Column.blank("reading-5", "Reading 5").in("µm"),
        Column.blank("mean", "Mean").in("µm"),
        Column.blank("least", "Lowest").in("µm"),
        Column.tick("good", "Good"),
        Column.tick("look", "Looks right")
    };

    private static final String GAUGE =
            " Magnetic gauge on steel (ISO 2178), eddy current on aluminium (ISO 2360), zeroed on the bare metal; on"
                    + " galvanised steel take off the zinc.";

    private FilmTable() {}

    static TableBuilder of(OvenBatch batch) {
        TableBuilder table = Table.named("film").columns(COLUMNS);
        List<Integer> counts = counts(batch);
        for (int i = 0; i < counts.size(); i++) {
            BatchRow row = batch.rows().get(i);
            for (int piece = 0; piece < counts.get(i); piece++) {
                PieceCells.named(table.row(), row).put("batch", String.valueOf(batch.number()));
            }
        }
        return table;
    }

    private static List<Integer> counts(OvenBatch batch) {
        List<Integer> pieces = batch.rows().stream().map(BatchRow::pieces).toList();
        return SampledPieces.of(pieces, ReadingSample.of(batch.pieces()).pieces());
    }

    /** When the film is good, in words with its figures. */
    static String acceptance(OvenBatch batch) {
        String all = batch.finish().coats().size() > 1 ? "All coats together. " : "";
        return all + "Read each piece below at five places after cooling. "
                + FilmRule.piece(FilmDemand.of(batch.finish())) + " "
                + FilmRule.batch(ReadingSample.of(batch.pieces()), batch.pieces()) + GAUGE;
    }
}
