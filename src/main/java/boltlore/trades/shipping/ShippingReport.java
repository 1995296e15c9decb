package boltlore.trades.shipping;

import boltlore.catalogue.Finish;
import boltlore.findings.Findings;
import boltlore.measure.Wording;
import boltlore.order.Order;
import boltlore.report.Heading;
import boltlore.report.Look;
import boltlore.report.Page;
import boltlore.report.PageBuilder;
import boltlore.report.Report;
import boltlore.report.ReportBuilder;
import java.util.List;
import java.util.Map;

/** The shipping papers of one order: crates, packing list, customs lines, dangerous-goods draft and labels. */
final class ShippingReport {

    static final String TITLE = "Shipping papers";

    /** To be cut apart and put on two sides of each crate. */
    private static final int LABELS_ON_PAGE = 2;

    private ShippingReport() {}

    /** @param together all orders in the vehicle, whose dangerous goods count together */
    static Report compose(Shipment shipment, Consignment together, Map<String, Finish> finishes) {
        Order order = shipment.order();
        Findings findings = shipment.findings(together);
        LoadWords english = LoadWords.of(shipment, Wording.ENGLISH);
        String footer = TITLE + ", order " + order.name();
        ReportBuilder book = Report.named("shipping-papers", TITLE)
                .about("Order " + order.name())
                .by(shipment.workshop().name())
                .found(findings)
                .glance(new Heading(
                        order.name() + ", " + order.choices().family().says().english(), Look.TITLE))
                .glance(CratesPage.crates(shipment, english).build());
        if (order.placed() != null) {
            book.dated(order.placed());
        }
        boolean customs = shipment.route().leavesUnion(shipment.shipping());
        PageBuilder crates = CratesPage.compose(shipment, together, findings, english, footer);
        book.page(customs ? crates : crates.note(withinUnion(shipment)));
        book.page(CratesPage.findings(findings, footer));
        LoadWords words = LoadWords.of(shipment, order.language());
        book.page(PackingPage.compose(shipment, finishes, words));
        book.data(PackingPage.parts(shipment, finishes, words));
        if (customs) {
            book.page(CustomsPage.compose(shipment, footer));
        }
        if (!shipment.dangerous().isEmpty()) {
            book.page(DangerousPage.compose(shipment, together, footer));
        }
        labels(book, shipment, words);
        return book.build();
    }

    /** Goods that stay within one union of customs are declared to nobody. */
    private static String withinUnion(Shipment shipment) {
        String from = shipment.shipping().consignor().country();
        return shipment.route().crossesBorder(shipment.shipping())
                ? "Customs papers: none, since " + from + " and "
                        + String.join(", ", shipment.route().to()) + " belong to one customs union."
                : "Customs papers: none, since the crates stay in " + from + ".";
    }

    private static void labels(ReportBuilder book, Shipment shipment, LoadWords words) {
        List<Crate> crates = shipment.crates();
        for (int i = 0; i < crates.size(); i += LABELS_ON_PAGE) {
            PageBuilder page = Page.named("Labels " + (i / LABELS_ON_PAGE + 1))
                    .in(words.language())
                    .print(PackingPage.print(shipment, words.phrases()));
            crates.subList(i, Math.min(crates.size(), i + LABELS_ON_PAGE))
                    .forEach(crate -> page.picture(LabelDrawing.draw(crate, shipment, words)));
            book.page(page);
        }
    }
}
