package boltlore.trades.shipping;

import boltlore.catalogue.Finish;
import boltlore.findings.Findings;
import boltlore.order.Order;
import boltlore.report.Heading;
import boltlore.report.Look;
import boltlore.report.Page;
import boltlore.report.PageBuilder;
import boltlore.report.Report;
import boltlore.report.ReportBuilder;
import boltlore.report.Words;
import boltlore.trades.FoundBy;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** The shipping papers of one order: crates, dangerous goods and labels for the workshop; what travels along apart. */
final class ShippingReport {

    static final String TITLE = "Shipping papers";

    /** To be cut apart and put on two sides of each crate. */
    private static final int LABELS_ON_PAGE = 4;

    private ShippingReport() {}

    /** @param together all orders in the vehicle, whose dangerous goods count together */
    static Report compose(Shipment shipment, Consignment together, Map<String, Finish> finishes) {
        Order order = shipment.order();
        Findings findings =
                FoundBy.of("", shipment.findings(together), shipment.order()).findings();
        String language = shipment.workshop().language();
        LoadWords own = LoadWords.of(shipment, language);
        String footer = TITLE + ", order " + order.name();
        ReportBuilder book = Report.named("shipping-papers", TITLE)
                .about("Order " + order.name())
                .by(shipment.workshop().name())
                .in(Words.of(language, ShippingReport.class))
                .found(findings)
                .glance(new Heading(
                        order.name() + ", " + order.choices().family().says().in(language), Look.TITLE))
                .glance(CratesPage.crates(shipment, own).build());
        if (order.placed() != null) {
            book.dated(order.placed());
        }
        boolean customs = shipment.route().leavesUnion(shipment.shipping());
        PageBuilder crates = CratesPage.compose(shipment, together, findings, own, footer);
        crates.note(customs ? leavingUnion(shipment) : withinUnion(shipment));
        book.page(crates.also(CratesPage.findings(findings, language, footer)));
        LoadWords words = LoadWords.of(shipment, order.language());
        book.data(PackingPage.parts(shipment, finishes, words));
        if (!shipment.dangerous().isEmpty()) {
            book.page(DangerousPage.compose(shipment, together, footer));
        }
        labels(book, shipment, words);
        return book.build();
    }

    /** The papers that go with the crates, each in a file of its own: nothing of the workshop's stands in them. */
    static List<Report> forCustomer(Shipment shipment, Map<String, Finish> finishes) {
        LoadWords words = LoadWords.of(shipment, shipment.order().language());
        List<Report> papers = new ArrayList<>();
        if (!shipment.crates().isEmpty()) {
            papers.add(own(shipment, ShippingTrade.PACKING_LIST, words.phrases().say("title"))
                    .page(PackingPage.compose(shipment, finishes, words))
                    .build());
        }
        if (shipment.route().leavesUnion(shipment.shipping())) {
            String title = InvoicePage.phrases(words.language()).say("title");
            papers.add(own(shipment, InvoicePage.FILE, title)
                    .page(new InvoicePage(shipment).page())
                    .build());
        }
        if (!shipment.dangerous().isEmpty() && !shipment.overseas()) {
            papers.add(TransportDocument.compose(shipment));
        }
        return papers;
    }

    private static ReportBuilder own(Shipment shipment, String file, String title) {
        Order order = shipment.order();
        ReportBuilder report = Report.named(file, title)
                .about(LoadWords.of(shipment, order.language()).phrases().say("order") + " " + order.name())
                .by(shipment.workshop().name())
                .in(order.language());
        return order.placed() == null ? report : report.dated(order.placed());
    }

    /** What is only taken to be so, because nobody has named the destination, says that it is. */
    private static String leavingUnion(Shipment shipment) {
        return "Customs papers: "
                + (shipment.route().to().isEmpty()
                        ? "open, since the destination is not given; none are required within the customs union."
                        : "required; the pro-forma invoice is in the folder 'customer'.");
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
                    .in(Words.of(words.language(), ShippingReport.class))
                    .print(PackingPage.print(shipment, words.phrases()));
            int end = Math.min(crates.size(), i + LABELS_ON_PAGE);
            for (int from = i; from < end; from += LabelDrawing.SIDE_BY_SIDE) {
                List<Crate> row = crates.subList(from, Math.min(end, from + LabelDrawing.SIDE_BY_SIDE));
                page.picture(LabelDrawing.draw(row, shipment, words));
            }
            book.page(page);
        }
    }
}
