package boltlore.trades.coating.sheets;

import boltlore.catalogue.CoatingShop;
import boltlore.report.Column;
import boltlore.report.Kind;
import boltlore.report.Page;
import boltlore.report.PageBuilder;
import boltlore.report.Particulars;
import boltlore.report.ParticularsBuilder;
import boltlore.trades.coating.CoatPlan;
import boltlore.trades.coating.OvenBatch;

/** What to do with one batch for an own oven before it is sprayed, and which runs it goes through. */
final class BatchPage {

    private static final Column[] BY_HAND = {Column.tick("treated", "Treated"), Column.blank("good", "Good")};

    private BatchPage() {}

    static PageBuilder of(OvenBatch batch, CoatPlan plan, CoatingShop shop, String footer) {
        String finish = batch.finish().says().english();
        PageBuilder page = Page.named("Batch " + batch.number()).landscape().footer(footer);
        page.title("Batch " + batch.number() + ": " + finish).add(particulars(batch));
        CoatingCautions.on(page, CoatingCautions.REMINDER);
        if (!batch.rows().isEmpty()) {
            page.heading("Coats").add(CoatsTable.of(batch, plan, shop));
            BatchWords.notes(batch).forEach(page::note);
            page.heading("Pieces").add(PartsTable.of(batch.rows(), BY_HAND));
        }
        TooBigTable.on(page, batch.tooBig());
        return page.signatures("Pre-treated by", "Masked by");
    }

    private static ParticularsBuilder particulars(OvenBatch batch) {
        return Particulars.named("batch")
                .say("where", "Where", batch.oven().says())
                .say("need", "In store by", CoatWords.day(batch.needBy()))
                .say("pre-treatment", "Pre-treatment", batch.finish().preTreatment())
                .say("cure", "Cure", CoatWords.cures(batch.finish()))
                .say("mass", "Bare mass, kg", Kind.decimal(1), batch.kg());
    }
}
