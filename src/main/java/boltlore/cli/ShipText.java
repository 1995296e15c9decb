package boltlore.cli;

import boltlore.catalogue.EnvelopeMm;
import boltlore.trades.shipping.Consignment;
import boltlore.trades.shipping.Crate;
import boltlore.trades.shipping.ShipFindings;
import boltlore.trades.shipping.Shipment;
import boltlore.trades.shipping.sheets.ShipWords;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Path;
import java.util.Locale;

/** A shipment for the terminal. */
final class ShipText {

    private static final String ROW = "  %5s  %-46s %-18s %8s %8s%n";

    private ShipText() {}

    static void print(Screen screen, Shipment shipment, Consignment together) {
        screen.heading(shipment.order().name() + ", "
                + shipment.order().choices().family().says().english());
        screen.text(
                String.format(Locale.ROOT, ROW, "crate", "fit stage and content", "outside mm", "net kg", "gross kg"));
        shipment.crates().forEach(crate -> screen.text(row(shipment, crate)));
        screen.text(String.format(Locale.ROOT, ROW, "all", "", "", shown(shipment.netKg()), shown(shipment.grossKg())));
        ShipFindings.of(shipment, together)
                .forEach(finding -> screen.wrapped(
                        2, (finding.stops() ? "Stops: " : "") + finding.about() + ": " + finding.says()));
    }

    static String written(int orders, Path out) {
        return (orders == 1 ? "Shipping papers" : "Shipping papers of " + orders + " orders") + " written to " + out;
    }

    private static String row(Shipment shipment, Crate crate) {
        return String.format(
                Locale.ROOT,
                ROW,
                crate.number(),
                ShipWords.content(shipment, crate),
                size(crate.type().outside()),
                shown(crate.netKg()),
                shown(crate.grossKg()));
    }

    private static String size(EnvelopeMm size) {
        return size.length() + " x " + size.width() + " x " + size.height();
    }

    private static String shown(BigDecimal number) {
        return number.setScale(1, RoundingMode.HALF_UP).toPlainString();
    }
}
