package boltlore.trades.charging.sheets;

import boltlore.catalogue.Workshop;
import boltlore.order.Order;
import boltlore.report.Workbook;
import boltlore.report.WorkbookBuilder;
import boltlore.report.drawing.Svg;
import boltlore.trades.charging.Charging;
import java.util.Optional;

/** The charging and high-voltage sheet of one order. */
public final class ChargeSheet {

    public static final String FILE = "charging-and-high-voltage";

    private ChargeSheet() {}

    public static Workbook of(Charging charging, Workshop workshop) {
        Order order = charging.bill().order();
        String footer = "Charging and high voltage, order " + order.name();
        WorkbookBuilder workbook = Workbook.of(FILE, "Charging and high voltage")
                .about("Order " + order.name())
                .by(workshop.name());
        if (order.placed() != null) {
            workbook.dated(order.placed());
        }
        workbook.page(ChargingPage.of(charging, workshop, footer));
        workbook.page(HighVoltagePage.of(charging, footer));
        LoomPage.of(charging, footer).ifPresent(workbook::page);
        return workbook.build();
    }

    /** The chain from supply to pack at the first supply, as SVG; empty where nothing is known of it. */
    public static Optional<String> chain(Charging charging) {
        return ChainDrawing.of(charging).map(Svg::of);
    }
}
