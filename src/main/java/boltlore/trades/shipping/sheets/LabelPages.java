package boltlore.trades.shipping.sheets;

import boltlore.report.Page;
import boltlore.report.PageBuilder;
import boltlore.trades.shipping.Crate;
import boltlore.trades.shipping.Shipment;
import java.util.ArrayList;
import java.util.List;

/** Two labels a page, to be cut apart and put on two sides of each crate. */
final class LabelPages {

    private static final int ON_PAGE = 2;

    private LabelPages() {}

    static List<PageBuilder> of(Shipment shipment, LoadWords words) {
        List<PageBuilder> pages = new ArrayList<>();
        List<Crate> crates = shipment.crates();
        for (int i = 0; i < crates.size(); i += ON_PAGE) {
            List<Crate> some = crates.subList(i, Math.min(crates.size(), i + ON_PAGE));
            PageBuilder page = Page.named("Labels " + (i / ON_PAGE + 1));
            some.forEach(crate -> page.picture(LabelDrawing.of(crate, shipment, words)));
            pages.add(page);
        }
        return pages;
    }
}
