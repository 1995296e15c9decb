package boltlore.trades.weighing.sheets;

import boltlore.catalogue.Family;
import boltlore.catalogue.Workshop;
import boltlore.order.Order;
import boltlore.report.Workbook;
import boltlore.report.WorkbookBuilder;
import boltlore.report.drawing.Svg;
import boltlore.trades.weighing.OnAxles;
import boltlore.trades.weighing.Weighing;

/** The weight statement of one order. */
public final class WeighSheet {

    public static final String FILE = "weight-statement";

    private WeighSheet() {}

    public static Workbook of(Weighing weighing, Family family, Workshop workshop) {
        Order order = weighing.bill().order();
        String footer = "Weight statement, order " + order.name();
        WorkbookBuilder workbook = Workbook.of(FILE, "Weight statement")
                .about("Order " + order.name())
                .by(workshop.name());
        if (order.placed() != null) {
            workbook.dated(order.placed());
        }
        workbook.page(StatementPage.of(weighing, new HeadOfSheet(weighing, family, workshop), footer));
        workbook.page(MassesPage.of(weighing, footer));
        OnAxles onAxles = weighing.onAxles();
        if (onAxles != null) {
            workbook.page(HeaviestPage.of(weighing, onAxles, footer));
            workbook.page(ScalesPage.of(onAxles, footer));
        }
        return workbook.build();
    }

    /** The vehicle from its side with its axle loads before and after, as SVG. */
    public static String sideView(OnAxles onAxles) {
        return Svg.of(SideView.of(onAxles));
    }
}
