package boltlore.sheets.coating;

import boltlore.catalogue.CoatingShop;
import boltlore.coating.OvenBatch;
import boltlore.sheets.Column;
import boltlore.sheets.Kind;
import boltlore.sheets.Page;
import boltlore.sheets.PageBuilder;
import boltlore.sheets.Particulars;
import boltlore.sheets.ParticularsBuilder;
import java.util.stream.IntStream;

/** One batch for an own oven: what to do with it from hanging to release. */
final class BatchPage {

    private static final Column[] BY_HAND = {Column.tick("hung", "Hung"), Column.blank("good", "Good")};

    private BatchPage() {}

    static PageBuilder of(OvenBatch batch, CoatingShop shop, String footer) {
        String finish = batch.finish().says().english();
        PageBuilder page = Page.named("Batch " + batch.number()).landscape().footer(footer);
        page.title("Batch " + batch.number() + ": " + finish).add(particulars(batch));
        CoatingCautions.on(page, CoatingCautions.REMINDER);
        page.heading("Coats").add(CoatsTable.of(batch, shop));
        if (!batch.rows().isEmpty()) {
            pieces(page, batch, shop);
        }
        TooBigTable.on(page, batch.tooBig());
        return page.signatures("Masked and hung by", "Sprayed by", "Cured by", "Inspected and released by");
    }

    private static void pieces(PageBuilder page, OvenBatch batch, CoatingShop shop) {
        page.heading("Pieces").add(PartsTable.of(batch.rows(), BY_HAND));
        MasksTable.on(page, batch.rows(), shop);
        loads(page, batch);
        readings(page, batch);
        EarthTable.on(page, batch.rows());
    }

    private static ParticularsBuilder particulars(OvenBatch batch) {
        return Particulars.named("batch")
                .say("where", "Where", batch.oven().says())
                .say("need", "In store by", CoatWords.day(batch.needBy()))
                .say("pre-treatment", "Pre-treatment", batch.finish().preTreatment())
                .say("cure", "Cure", CoatWords.cures(batch.finish()))
                .say("mass", "Bare mass, kg", Kind.decimal(1), batch.kg());
    }

    private static void loads(PageBuilder page, OvenBatch batch) {
        page.heading("Oven loads").note(LoadWords.limits(batch));
        IntStream.range(0, batch.loads().size())
                .mapToObj(i -> LoadWords.mixed(batch.loads().get(i), i + 1))
                .filter(words -> !words.isEmpty())
                .forEach(page::note);
        page.add(LoadsTable.of(batch));
        if (batch.loads().size() > 1) {
            page.heading("Pieces in each load").add(LoadPiecesTable.of(batch));
        }
    }

    private static void readings(PageBuilder page, OvenBatch batch) {
        page.heading("Film readings")
                .add(Particulars.named("gauge")
                        .leave("gauge", "Gauge number")
                        .leave("calibrated", "Calibrated until")
                        .leave("read-by", "Read by"))
                .note(FilmTable.acceptance(batch))
                .add(FilmTable.of(batch));
    }
}
