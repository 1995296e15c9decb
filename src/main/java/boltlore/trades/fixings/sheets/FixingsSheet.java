package boltlore.trades.fixings.sheets;

import boltlore.catalogue.Workshop;
import boltlore.order.Order;
import boltlore.report.Workbook;
import boltlore.report.WorkbookBuilder;
import boltlore.trades.fixings.KitFixings;

/** The fixings sheet of one order. */
public final class FixingsSheet {

    public static final String FILE = "fixings";

    private FixingsSheet() {}

    public static Workbook of(KitFixings fixings, Workshop workshop) {
        Order order = fixings.bill().order();
        String footer = "Fixings, order " + order.name();
        WorkbookBuilder workbook =
                Workbook.of(FILE, "Fixings").about("Order " + order.name()).by(workshop.name());
        if (order.placed() != null) {
            workbook.dated(order.placed());
        }
        workbook.page(JointsPage.of(fixings, workshop, footer));
        workbook.page(SafetyPage.of(fixings, footer));
        workbook.page(BagsPage.of(fixings, workshop, footer));
        return workbook.build();
    }
}
