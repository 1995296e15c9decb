package boltlore.trades.coating.sheets;

import boltlore.report.Column;
import boltlore.report.Page;
import boltlore.report.PageBuilder;
import boltlore.report.RowBuilder;
import boltlore.report.Table;
import boltlore.report.TableBuilder;
import boltlore.report.Workbook;
import boltlore.report.WorkbookBuilder;
import boltlore.trades.coating.FilmVerdict;
import boltlore.trades.coating.PieceVerdict;
import boltlore.trades.coating.PowderVerdict;
import boltlore.trades.coating.RecordVerdict;

/** Film and powder of a plan as the coating shop wrote them down, judged. */
public final class RecordSheet {

    public static final String FILE = "coating-record";

    private static final Column[] BATCHES = {
        Column.text("batch", "Batch"),
        Column.text("finish", "Finish").atMost(30),
        Column.whole("pieces", "Pieces"),
        Column.whole("least", "Least mean").in("µm"),
        Column.decimal("floor", "Least reading", 1).in("µm"),
        Column.whole("most", "Most mean").in("µm"),
        Column.whole("read", "Read"),
        Column.whole("short", "Short"),
        Column.text("decision", "Decision").atMost(40),
        Column.text("look", "Look at").atMost(36),
        Column.signature("by", "Released by")
    };
    private static final Column[] PIECES = {
        Column.text("part", "Part"),
        Column.text("piece", "Piece"),
        Column.text("readings", "Readings").in("µm"),
        Column.decimal("mean", "Mean", 1).in("µm"),
        Column.decimal("lowest", "Lowest", 1).in("µm"),
        Column.text("verdict", "Verdict").atMost(60)
    };
    private static final Column[] POWDER = {
        Column.text("run", "Run"),
        Column.text("powder", "Powder"),
        Column.decimal("theory", "By theory", 3).in("kg"),
        Column.decimal("issued", "Issued", 3).in("kg"),
        Column.decimal("difference", "Difference", 1).in("%"),
        Column.decimal("on-parts", "On the parts", 1).in("%"),
        Column.text("word", "Word").atMost(60)
    };

    private static final String THEORY =
            "Theory is area, target film and specific gravity, over the share that the plan lets end on parts. Up to "
                    + PowderVerdict.USUAL_PERCENT + " % off it is usual.";

    private RecordSheet() {}

    public static Workbook of(RecordVerdict verdict, CoatJob job) {
        String orders = CoatSheet.orders(job.plan());
        String footer = "Film and powder, " + orders;
        WorkbookBuilder workbook = Workbook.of(FILE, "Film and powder of a coating plan")
                .about(orders)
                .by(job.workshop().name());
        CoatSheet.placed(job.plan()).ifPresent(workbook::dated);
        if (!verdict.film().isEmpty()) {
            workbook.page(film(verdict, footer)).page(pieces(verdict, footer));
        }
        if (!verdict.powder().isEmpty()) {
            workbook.page(powder(verdict, footer));
        }
        return workbook.build();
    }

    private static PageBuilder film(RecordVerdict verdict, String footer) {
        PageBuilder page = Page.named("Film").landscape().footer(footer).title("Film readings, judged");
        page.note(FilmRule.SOURCES);
        TableBuilder batches = Table.named("batches").columns(BATCHES);
        verdict.film().forEach(film -> batch(batches, film));
        return page.add(batches);
    }

    private static PageBuilder pieces(RecordVerdict verdict, String footer) {
        TableBuilder pieces = Table.named("pieces").columns(PIECES);
        verdict.film().forEach(film -> pieces(pieces, film));
        PageBuilder page = Page.named("Pieces").landscape().footer(footer).title("Film readings, piece by piece");
        return page.add(pieces);
    }

    private static void batch(TableBuilder table, FilmVerdict film) {
        table.row()
                .put("batch", String.valueOf(film.batch().number()))
                .put("finish", film.batch().finish().says().english())
                .put("pieces", film.batch().pieces())
                .put("least", film.demand().leastUm())
                .put("floor", film.demand().acceptance().floorUm())
                .put("most", film.demand().mostUm())
                .put("read", film.pieces().size())
                .put("short", film.shortfalls())
                .put("decision", FilmRule.decision(film))
                .put("look", RecordWords.look(film));
    }

    private static void pieces(TableBuilder table, FilmVerdict film) {
        String finish = film.batch().finish().says().english();
        table.group("batch-" + film.batch().number(), "Batch " + film.batch().number() + ", " + finish);
        film.pieces().forEach(piece -> fill(table.row(), piece, film));
    }

    private static void fill(RowBuilder cells, PieceVerdict piece, FilmVerdict film) {
        cells.put("part", piece.reading().part())
                .put("piece", piece.reading().piece())
                .put("readings", RecordWords.readings(piece.reading()))
                .put("mean", piece.mean())
                .put("lowest", piece.reading().lowest())
                .put("verdict", RecordWords.verdict(piece, film.demand()));
    }

    private static PageBuilder powder(RecordVerdict verdict, String footer) {
        TableBuilder table = Table.named("powder").columns(POWDER);
        verdict.powder().forEach(powder -> fill(table.row(), powder));
        PageBuilder page = Page.named("Powder").landscape().footer(footer).title("Powder issued against theory");
        return page.note(THEORY).add(table);
    }

    private static void fill(RowBuilder cells, PowderVerdict powder) {
        cells.put("run", String.valueOf(powder.run().number()))
                .put("powder", powder.run().powder())
                .put("theory", powder.theoryKg())
                .put("issued", powder.issuedKg())
                .put("difference", powder.differencePercent())
                .put("on-parts", powder.onPartsPercent())
                .put("word", PowderVerdictWords.of(powder));
    }
}
