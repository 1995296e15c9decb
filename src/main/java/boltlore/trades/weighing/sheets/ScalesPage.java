package boltlore.trades.weighing.sheets;

import boltlore.report.Page;
import boltlore.report.PageBuilder;
import boltlore.trades.weighing.OnAxles;

/** The page that goes to the weighbridge: cautions, and boxes for what it shows. */
final class ScalesPage {

    private ScalesPage() {}

    static PageBuilder of(OnAxles onAxles, String footer) {
        PageBuilder page = Page.named("Weighbridge").landscape().footer(footer).title("On the weighbridge");
        WeighingCautions.on(page);
        page.add(BridgeTable.of(onAxles));
        page.note(
                "Weigh on level ground, tyres at their pressure, one axle at a time and then the whole vehicle; the two"
                        + " axles must add up to the whole. Where weighed and computed differ by more than 2 % of the axle's"
                        + " load, look for what is not in the bill, and weigh the parts.");
        return page.signatures("Weighed by", "Seen by");
    }
}
