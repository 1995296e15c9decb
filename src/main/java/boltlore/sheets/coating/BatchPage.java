package boltlore.sheets.coating;

import boltlore.catalogue.CoatingShop;
import boltlore.coating.OvenBatch;
import boltlore.sheets.Column;
import boltlore.sheets.Kind;
import boltlore.sheets.Page;
import boltlore.sheets.PageBuilder;
import boltlore.sheets.Particulars;
import boltlore.sheets.ParticularsBuilder;

/** What to do with one batch for an own oven, from pre-treatment to spraying. */
final class BatchPage {

    private static final Column[] BY_HAND = {Column.tick("hung", "Hung"), Column.blank("good", "Good")};

    private BatchPage() {}

    static PageBuilder of(OvenBatch batch, CoatingShop shop, String footer) {
        String finish = batch.finish().says().english();
        PageBuilder page = Page.named("Batch " + batch.number()).landscape().footer(footer);
        page.title("Batch " + batch.number() + ": " + finish).add(particulars(batch));
        CoatingCautions.on(page, CoatingCautions.REMINDER);
        page.heading("Coats").add(CoatsTable.of(batch, shop));
        MasksTable.on(page, batch.rows(), shop);
        if (!batch.rows().isEmpty()) {
            page.heading("Pieces").add(PartsTable.of(batch.rows(), BY_HAND));
        }
        TooBigTable.on(page, batch.tooBig());
        return page.signatures("Pre-treated by", "Masked and hung by");
    }

    private static ParticularsBuilder particulars(OvenBatch batch) {
        return Particulars.named("batch")
                .say("where", "Where", batch.oven().says())
                .say("need", "In store by", CoatWords.day(batch.needBy()))
                .say("pre-treatment", "Pre-treatment", batch.finish().preTreatment())
                .say("cure", "Cure", CoatWords.cures(batch.finish()))
                .say("mass", "Bare mass, kg", Kind.decimal(1), batch.kg())
                .say("utilisation", "Powder that stays on", CoatWords.utilisation(batch.finish()));
    }
}
