package boltlore.trades.cutting.sheets;

import boltlore.catalogue.BarStock;
import boltlore.catalogue.Saw;
import boltlore.measure.Digits;
import boltlore.report.Page;
import boltlore.report.PageBuilder;
import boltlore.report.Particulars;
import boltlore.report.ParticularsBuilder;
import boltlore.trades.cutting.MaterialCuts;

/** What the saw needs for one material: the bars drawn, the bars to take, the pieces in the order that they are cut. */
final class MaterialPage {

    private MaterialPage() {}

    static PageBuilder of(MaterialCuts cuts, String footer) {
        PageBuilder page = Page.named(cuts.material().says()).landscape().footer(footer);
        page.title(cuts.material().says()).add(particulars(cuts));
        CutCautions.reminder(page);
        page.heading("Bars as they are cut, lengths in mm");
        BarPatterns.of(cuts.bars()).forEach(pattern -> page.picture(BarDrawing.of(pattern, cuts)));
        page.heading("Bars to take").add(BarsTable.of(cuts.material().name(), cuts.bars()));
        page.heading("Pieces, bar by bar").add(PiecesTable.of(cuts.material().name(), cuts.bars()));
        return page.signatures("Cut by", "Lengths and marks checked by");
    }

    private static ParticularsBuilder particulars(MaterialCuts cuts) {
        BarStock stock = cuts.stock();
        Saw saw = stock.saw();
        return Particulars.named("saw")
                .say("saw", "Saw", saw.says())
                .say("kerf", "Kerf", Digits.plain(saw.kerfMm()) + " mm")
                .say("trim", "Head trim", Digits.plain(saw.headTrimMm()) + " mm, its cut included")
                .say("keep", "Rests are kept from", Digits.plain(stock.keepFromMm()) + " mm")
                .say("lengths", "Bars are bought in", CutWords.lengths(stock))
                .say("turn", "Turned over", stock.turns() ? "yes, slanted ends lie together" : "no");
    }
}
