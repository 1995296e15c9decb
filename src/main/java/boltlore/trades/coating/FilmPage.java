package boltlore.trades.coating;

import boltlore.catalogue.Workshop;
import boltlore.measure.Digits;
import boltlore.report.CautionNotes;
import boltlore.report.Column;
import boltlore.report.Page;
import boltlore.report.PageBuilder;
import boltlore.report.Particulars;
import boltlore.report.TableBuilder;
import boltlore.report.TableSpec;
import java.util.List;

/** What is read of one batch after its last coat: earth points, and film at five places on enough pieces. */
final class FilmPage {

    static final String SOURCES =
            "Film is read on steel to ISO 2178, on aluminium to ISO 2360. Mean, lowest reading and how many are read"
                    + " and may be below the limit are the workshop's own values, check before use.";

    private static final String GAUGE =
            " Magnetic gauge on steel (ISO 2178), eddy current on aluminium (ISO 2360), zeroed on the bare metal; on"
                    + " galvanised steel take off the zinc.";

    /** A piece to be read. */
    private record Piece(OvenBatch batch, BatchRow row) {}

    /** What is filled in here is read back by these headings. */
    private static final TableSpec<Piece> FILM = film();

    private FilmPage() {}

    private static TableSpec<Piece> film() {
        TableSpec<Piece> film = TableSpec.<Piece>named("film")
                .text("batch", "Batch", piece -> String.valueOf(piece.batch().number()));
        CoatWords.named(film, 24, Piece::row).box(Column.blank("piece", "Which piece"));
        for (int reading = 1; reading <= FilmAcceptance.READINGS; reading++) {
            film.box(Column.blank("reading-" + reading, "Reading " + reading).in("µm"));
        }
        return film.box(Column.blank("mean", "Mean").in("µm"))
                .box(Column.blank("least", "Lowest").in("µm"))
                .box(Column.tick("good", "Accepted"))
                .box(Column.tick("look", "Visual OK"));
    }

    static PageBuilder compose(OvenBatch batch, Workshop workshop, String footer) {
        String number = "Batch " + batch.number();
        PageBuilder page = Page.named(number + " film")
                .landscape()
                .footer(footer)
                .title(number + ", film: " + batch.finish().says().english())
                .add(Particulars.named("instruments")
                        .leave("gauge", "Film gauge number")
                        .leave("calibrated", "Gauge calibrated until")
                        .leave("meter", "Resistance meter"));
        CautionNotes.always(page, "coating-batch", workshop, "en");
        EarthTable.on(page, batch.rows(), "batch", batch.number());
        page.heading("Film readings").note(acceptance(batch)).add(readings(batch));
        return page.signatures("Inspected and released to stores by");
    }

    private static TableBuilder readings(OvenBatch batch) {
        List<Integer> pieces = batch.rows().stream().map(BatchRow::pieces).toList();
        List<Integer> counts =
                SampledPieces.draw(pieces, ReadingSample.of(batch.pieces()).pieces());
        TableBuilder table = FILM.empty();
        for (int i = 0; i < counts.size(); i++) {
            for (int piece = 0; piece < counts.get(i); piece++) {
                FILM.add(table, "", new Piece(batch, batch.rows().get(i)));
            }
        }
        return table;
    }

    private static String acceptance(OvenBatch batch) {
        String all = batch.finish().coats().size() > 1 ? "All coats together. " : "";
        return all + "Read each piece below at five places after cooling. " + rule(batch) + GAUGE;
    }

    /** When a piece of the batch, and the whole of it, is accepted, with the figures. */
    static String rule(OvenBatch batch) {
        FilmDemand demand = FilmDemand.of(batch.finish());
        ReadingSample sample = ReadingSample.of(batch.pieces());
        return "A piece is accepted where the mean of the five is at least " + demand.leastUm()
                + " µm and none is under " + Digits.plain(demand.acceptance().floorUm()) + " µm; over "
                + demand.mostUm() + " µm tell engineering. At least " + sample.pieces() + " of " + batch.pieces()
                + " are read, and " + (sample.acceptUpTo() == 0 ? "none" : "at most " + sample.acceptUpTo())
                + " of them may be below the limit, or the batch is rejected.";
    }
}
