package boltlore.trades.costing.sheets;

import boltlore.order.Order;
import boltlore.report.Workbook;
import boltlore.report.WorkbookBuilder;
import boltlore.report.drawing.Svg;
import boltlore.trades.costing.cost.FullCost;
import boltlore.trades.costing.quote.Calculation;

/** The cost statement of one order: what its kit costs in full, how the price came about, what sets its lead time. */
public final class CostSheet {

    public static final String FILE = "cost-statement";

    private CostSheet() {}

    public static Workbook of(Calculation calculation) {
        FullCost cost = calculation.cost();
        Order order = cost.priced().bill().order();
        String footer = "Cost statement, order " + order.name() + ", for the workshop only";
        WorkbookBuilder book = Workbook.of(FILE, "Cost statement")
                .about("Order " + order.name())
                .by(cost.priced().catalogue().workshop().name())
                .dated(calculation.quotation().on());
        return book.page(CostPage.of(calculation, footer))
                .page(BridgePage.of(cost, footer))
                .page(SubSystemsPage.of(cost, footer))
                .page(WorkPage.of(cost, footer))
                .page(LandedPage.of(cost, footer))
                .page(MadePage.of(cost, footer))
                .page(LeadPage.of(calculation, footer))
                .build();
    }

    /** The elements of the cost as bars, as SVG. */
    public static String bars(FullCost cost) {
        return Svg.of(CostBars.of(cost));
    }
}
