package boltlore.trades.shipping.sheets;

import boltlore.catalogue.Finish;
import boltlore.measure.Wording;
import boltlore.order.Order;
import boltlore.report.PageBuilder;
import boltlore.report.Phrases;
import boltlore.report.Workbook;
import boltlore.report.WorkbookBuilder;
import boltlore.report.drawing.Svg;
import boltlore.trades.shipping.Consignment;
import boltlore.trades.shipping.ShipFinding;
import boltlore.trades.shipping.ShipFindings;
import boltlore.trades.shipping.Shipment;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** The shipping papers of one order. */
public final class ShipSheet {

    public static final String FILE = "shipping-papers";

    private ShipSheet() {}

    /**
     * Crates at a glance, packing list, customs lines, dangerous-goods draft and labels.
     *
     * @param together all orders in the vehicle, whose dangerous goods count together
     */
    public static Workbook of(Shipment shipment, Consignment together, Map<String, Finish> finishes) {
        Order order = shipment.order();
        WorkbookBuilder book = Workbook.of(FILE, "Shipping papers")
                .about("Order " + order.name())
                .by(shipment.workshop().name());
        if (order.placed() != null) {
            book.dated(order.placed());
        }
        pages(shipment, together, finishes).forEach(book::page);
        return book.build();
    }

    private static List<PageBuilder> pages(Shipment shipment, Consignment together, Map<String, Finish> finishes) {
        String language = shipment.order().language();
        String footer = "Shipping papers, order " + shipment.order().name();
        List<PageBuilder> pages = new ArrayList<>(first(shipment, together, footer));
        pages.add(PackingPage.of(shipment, finishes, phrases(language)));
        pages.add(CustomsPage.of(shipment, footer));
        if (!shipment.dangerous().isEmpty()) {
            pages.add(DangerousPage.of(shipment, together, footer));
        }
        pages.addAll(LabelPages.of(shipment, words(shipment, language)));
        return pages;
    }

    private static List<PageBuilder> first(Shipment shipment, Consignment together, String footer) {
        List<ShipFinding> findings = ShipFindings.of(shipment, together);
        boolean stops = findings.stream().anyMatch(ShipFinding::stops);
        return List.of(
                GlancePage.of(shipment, stops, words(shipment, Wording.ENGLISH), footer),
                GlancePage.findings(findings, footer));
    }

    private static Phrases phrases(String language) {
        return Phrases.of(ShipSheet.class, "packing", language);
    }

    private static LoadWords words(Shipment shipment, String language) {
        return new LoadWords(shipment.workshop(), shipment.shipping(), language, phrases(language));
    }

    /** All crates from their long side, as SVG. */
    public static String crates(Shipment shipment) {
        return Svg.of(CratesDrawing.of(shipment.crates()));
    }
}
