package boltlore.trades.coating.sheets;

import boltlore.report.Cell;
import boltlore.report.Kind;
import boltlore.report.Page;
import boltlore.report.PageBuilder;
import boltlore.report.Particulars;
import boltlore.report.ParticularsBuilder;
import boltlore.trades.coating.OvenBatch;

/** What is read of one batch after its last coat: earth points and film. */
final class FilmPage {

    private FilmPage() {}

    static PageBuilder of(OvenBatch batch, String footer) {
        String number = "Batch " + batch.number();
        String title = number + ", film: " + batch.finish().says().english();
        PageBuilder page =
                Page.named(number + " film").landscape().footer(footer).title(title);
        page.add(instruments());
        CoatingCautions.on(page, CoatingCautions.REMINDER);
        EarthTable.on(page, batch.rows());
        page.heading("Film readings").note(FilmTable.acceptance(batch)).add(FilmTable.of(batch));
        return page.signatures("Inspected and released to stores by");
    }

    private static ParticularsBuilder instruments() {
        return Particulars.named("instruments")
                .leave("gauge", "Film gauge number")
                .add("calibrated", "Gauge calibrated until", Kind.blank().day(), Cell.EMPTY)
                .leave("meter", "Resistance meter");
    }
}
