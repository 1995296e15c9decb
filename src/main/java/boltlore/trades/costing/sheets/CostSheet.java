package boltlore.trades.costing.sheets;

import boltlore.findings.Findings;
import boltlore.order.Order;
import boltlore.report.Heading;
import boltlore.report.Look;
import boltlore.report.PageBuilder;
import boltlore.report.Report;
import boltlore.report.Words;
import boltlore.report.drawing.Svg;
import boltlore.trades.FoundBy;
import boltlore.trades.costing.cost.FullCost;
import boltlore.trades.costing.quote.Calculation;

/** The cost statement of one order: what its kit costs in full, how the price came about, what sets its lead time. */
public final class CostSheet {

    public static final String FILE = "cost-statement";

    private CostSheet() {}

    public static Report compose(Calculation calculation, Findings found) {
        FullCost cost = calculation.cost();
        Order order = cost.costed().bill().order();
        Findings findings = FoundBy.of("", found, order).findings();
        String footer = "Cost statement, order " + order.name() + ", for the workshop only";
        CostPage front = new CostPage(calculation);
        CostTables tables = new CostTables(cost, footer);
        return Report.named(FILE, "Cost statement")
                .about("Order " + order.name())
                .by(cost.costed().catalogue().workshop().name())
                .in(Words.of(cost.costed().catalogue().workshop().language(), CostSheet.class))
                .dated(calculation.quotation().on())
                .found(findings)
                .glance(new Heading(order.name() + ", " + order.customer(), Look.TITLE))
                .glance(front.elements().build(), front.price().build())
                .glance(front.glance().build())
                .page(cost(front.page(findings, footer), tables))
                .page(parts(tables, cost))
                .page(LeadPage.compose(calculation, footer))
                .build();
    }

    /** The first page, and on with how the cost is made up. */
    private static PageBuilder cost(PageBuilder page, CostTables tables) {
        tables.reconciliation(page);
        tables.work(page);
        return page;
    }

    /** By sub-system and by supplier, and what no print needs below: part by part, as it was bought and as it was made. */
    private static PageBuilder parts(CostTables tables, FullCost cost) {
        return LandedPage.add(cost, tables.subSystems())
                .note(
                        "On the screen, and in the files beside this workbook, each bought part by supplier and each made part"
                                + " follow below. A made part's row is its own step for all of it in the kit: an assembly's row holds"
                                + " its joining, not what it is joined of. Material is the part master's cost less the labour that is"
                                + " in it already, as the workshop's prices say of made parts.")
                .add(LandedPage.parts(cost))
                .add(tables.madeParts());
    }

    /** The elements of the cost as bars, as SVG. */
    public static String bars(FullCost cost) {
        return Svg.encode(CostBars.draw(cost));
    }
}
