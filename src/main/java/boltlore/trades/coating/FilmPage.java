package boltlore.trades.coating;

import boltlore.measure.Digits;
import boltlore.report.CautionNotes;
import boltlore.report.Column;
import boltlore.report.Kind;
import boltlore.report.Page;
import boltlore.report.PageBuilder;
import boltlore.report.Particulars;
import boltlore.report.TableBuilder;
import boltlore.report.TableSpec;
import java.util.List;

/** What is read of one batch after its last coat: earth points, and film at five places on enough pieces. */
final class FilmPage {

    static final String SOURCES =
            "Film is read on steel to ISO 2178, on aluminium to ISO 2360. The least mean and the maximum are those of the"
                    + " finish. How many are read and may be below the limit: sampling table of a specification for coated"
                    + " aluminium, film to EN ISO 2360, used here for steel too. The lowest reading and what is done with a"
                    + " piece that is not good are the workshop's own values, check before use.";

    private static final String HOW =
            "Read each piece marked 'read' at five places after cooling; of the others write down what is seen or read"
                    + " besides.";

    private static final String GAUGE =
            " Magnetic gauge on steel (ISO 2178), eddy current on aluminium (ISO 2360), zeroed on the bare metal; on"
                    + " galvanised steel take off the zinc.";

    private FilmPage() {}

    /** What is filled in here is read back by these keys, and by those that the table is about. */
    private static TableSpec<FilmPiece> film(Again again) {
        TableSpec<FilmPiece> film = TableSpec.<FilmPiece>named("film")
                .text("part", "Part", piece -> piece.row().part().number().text())
                .text("piece", "Piece", FilmPiece::mark)
                .text("read", "To read", piece -> piece.toRead() ? "read" : "");
        for (int reading = 1; reading <= FilmAcceptance.READINGS; reading++) {
            film.box(Column.blank("reading-" + reading, "Film " + reading)
                    .in("µm")
                    .atMost(9));
        }
        return film.box(Column.blank("mean", "Mean").in("µm"))
                .box(new Column("good", "Accepted", Kind.blank().oneOf("yes", "no")))
                .box(Column.blank("look", "Visual OK, or fault").atMost(10))
                .box(new Column("on", "Read on", Kind.blank().day()))
                .besideThePaper()
                .box(Column.blank("least", "Lowest").in("µm"))
                .said(
                        "name",
                        "Name",
                        Column.USUAL_WIDEST,
                        piece -> piece.row().part().name())
                .whole("coating", "Coating", "", piece -> again.coating(piece.row(), piece.mark()));
    }

    /** All batches, one below the other. */
    static PageBuilder compose(List<OvenBatch> batches, CoatJob job, String footer) {
        PageBuilder page = Page.named("Film")
                .footer(footer)
                .title("Film and earth points")
                .add(Particulars.named("instruments")
                        .leave("gauge", "Film gauge number")
                        .leave("calibrated", "Gauge calibrated until")
                        .leave("meter", "Resistance meter"));
        CautionNotes.always(
                page, "coating-batch", job.workshop(), job.workshop().language());
        page.note(HOW + GAUGE);
        if (batches.stream().anyMatch(batch -> EarthTable.speaksOf(batch.rows()))) {
            page.note(EarthTable.BARE);
        }
        for (OvenBatch batch : batches) {
            page.heading("Batch " + batch.number() + ": "
                            + batch.finish().says().in(job.workshop().language()))
                    .note("Film limits " + CoatCodes.limits(batch.finish()) + ", lot " + CoatCodes.lot(batch) + ". "
                            + acceptance(batch))
                    .add(readings(batch, job.again()));
            EarthTable.on(page, batch.rows(), "batch", batch.number());
        }
        return page.signatures("Inspected and released to stores by");
    }

    private static TableBuilder readings(OvenBatch batch, Again again) {
        return film(again)
                .of(FilmPiece.of(batch))
                .about("batch", batch.number())
                .about("lot", CoatCodes.lot(batch))
                .about("finish", batch.finish().says().english())
                .about("limits", CoatCodes.limits(batch.finish()));
    }

    private static String acceptance(OvenBatch batch) {
        String all = batch.finish().coats().size() > 1 ? "All coats together. " : "";
        return all + rule(batch);
    }

    /** When a piece of the batch, and the whole of it, is accepted, with the figures. */
    static String rule(OvenBatch batch) {
        FilmDemand demand = FilmDemand.of(batch.finish());
        ReadingSample sample = ReadingSample.of(batch.pieces());
        return "A piece is accepted where the mean of the five is at least " + demand.leastUm()
                + " µm and none is under " + Digits.plain(demand.acceptance().floorUm()) + " µm or over "
                + demand.mostUm() + " µm; any other is reworked and read again. At least " + sample.pieces() + " of "
                + batch.pieces() + " are read, and "
                + (sample.acceptUpTo() == 0 ? "none" : "at most " + sample.acceptUpTo())
                + " of them may be below the limit, or the batch is rejected until all of them are read.";
    }
}
