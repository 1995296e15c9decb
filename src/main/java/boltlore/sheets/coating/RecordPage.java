package boltlore.sheets.coating;

import boltlore.coating.OvenBatch;
import boltlore.sheets.Page;
import boltlore.sheets.PageBuilder;
import boltlore.sheets.Particulars;
import boltlore.sheets.ParticularsBuilder;
import boltlore.sheets.WorkbookBuilder;
import java.util.stream.IntStream;

/** What is written down of one batch: how it was cured, its earth points, its film; the film apart where it is long. */
final class RecordPage {

    /** Rows of all tables together that print on one sheet of A4 with their headings and signatures. */
    private static final int ROWS_ON_ONE_SHEET = 9;

    private static final String CURED = "Cured by";
    private static final String RELEASED = "Inspected and released to stores by";

    private RecordPage() {}

    static void on(WorkbookBuilder workbook, OvenBatch batch, String footer) {
        if (batch.loads().size() > 1) {
            workbook.page(
                    page(batch, "loads", "what hangs in which load", footer).add(LoadPiecesTable.of(batch)));
        }
        record(workbook, batch, footer);
    }

    private static void record(WorkbookBuilder workbook, OvenBatch batch, String footer) {
        boolean together = rows(batch) <= ROWS_ON_ONE_SHEET;
        PageBuilder page = page(batch, "record", together ? "cure and film" : "cure", footer);
        page.add(together ? gauge(probe()) : probe());
        CoatingCautions.on(page, CoatingCautions.REMINDER);
        loads(page, batch);
        if (together) {
            workbook.page(film(page, batch).signatures(CURED, RELEASED));
        } else {
            workbook.page(page.signatures(CURED));
            workbook.page(film(page(batch, "film", "film", footer).add(gauge(particulars())), batch)
                    .signatures(RELEASED));
        }
    }

    private static PageBuilder page(OvenBatch batch, String name, String about, String footer) {
        String finish = batch.finish().says().english();
        String number = "Batch " + batch.number();
        return Page.named(number + " " + name).landscape().footer(footer).title(number + ", " + about + ": " + finish);
    }

    private static int rows(OvenBatch batch) {
        int cures = batch.loads().size() * batch.finish().coats().size();
        int earthed = (int) batch.rows().stream().filter(EarthTable::speaksOf).count();
        return cures + earthed + FilmTable.sampled(batch);
    }

    private static ParticularsBuilder particulars() {
        return Particulars.named("instruments");
    }

    private static ParticularsBuilder probe() {
        return particulars().leave("probe", "Metal probe number").leave("meter", "Resistance meter");
    }

    private static ParticularsBuilder gauge(ParticularsBuilder particulars) {
        return particulars.leave("gauge", "Film gauge number").leave("calibrated", "Gauge calibrated until");
    }

    private static void loads(PageBuilder page, OvenBatch batch) {
        page.heading("Oven loads").note(LoadWords.limits(batch));
        IntStream.range(0, batch.loads().size())
                .mapToObj(i -> LoadWords.mixed(batch.loads().get(i), i + 1))
                .filter(words -> !words.isEmpty())
                .forEach(page::note);
        page.add(LoadsTable.of(batch));
        EarthTable.on(page, batch.rows());
    }

    private static PageBuilder film(PageBuilder page, OvenBatch batch) {
        return page.heading("Film readings").note(FilmTable.acceptance(batch)).add(FilmTable.of(batch));
    }
}
