package boltlore.trades.shipping.sheets;

import boltlore.order.Order;
import boltlore.report.Kind;
import boltlore.report.Page;
import boltlore.report.PageBuilder;
import boltlore.report.Particulars;
import boltlore.report.ParticularsBuilder;
import boltlore.trades.shipping.ShipFinding;
import boltlore.trades.shipping.Shipment;
import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;

/** The first two pages: all crates drawn and listed, and what to look at before they leave. */
final class GlancePage {

    private static final String MASSES =
            "Gross is net, the empty crate and its packing. Net is without the film of powder, spares counted in. Weigh each"
                    + " crate before it leaves and write the mass on its label.";

    private static final Kind KG = Kind.decimal(1);
    private static final Kind M3 = Kind.decimal(2);
    private static final BigDecimal LITRES_IN_M3 = BigDecimal.valueOf(1000);

    private GlancePage() {}

    static PageBuilder of(Shipment shipment, boolean stops, LoadWords words, String footer) {
        PageBuilder page =
                Page.named("Crates").footer(footer).title("Shipping papers").add(head(shipment));
        if (stops) {
            page.caution("Stops", "Nothing leaves as it is: see 'Before the crates leave'.");
        }
        if (!shipment.crates().isEmpty()) {
            page.picture(CratesDrawing.of(shipment.crates()));
            page.add(CratesTable.of(shipment, words)).note(MASSES);
        }
        ShipCautions.lifting(page);
        ShipCautions.lithium(page, shipment);
        return page;
    }

    /** What to look at, to be signed by who packed. */
    static PageBuilder findings(List<ShipFinding> findings, String footer) {
        return Page.named("Before they leave")
                .footer(footer)
                .title("Before the crates leave")
                .add(FindingsTable.of(findings))
                .signatures("Packed and weighed by", "Looked at by");
    }

    private static ParticularsBuilder head(Shipment shipment) {
        Order order = shipment.order();
        ParticularsBuilder says = Particulars.named("shipment")
                .say("workshop", "Workshop", shipment.workshop().name())
                .say("order", "Order", order.name() + ", " + order.customer())
                .say("vehicle", "Vehicle", order.choices().family().says().english())
                .say("by", "Travels by", shipment.route().by().name().toLowerCase(Locale.ROOT));
        return crates(says.say("to", "Countries on the way", to(shipment)), shipment);
    }

    private static ParticularsBuilder crates(ParticularsBuilder says, Shipment shipment) {
        BigDecimal crates = BigDecimal.valueOf(shipment.crates().size());
        return says.say("crates", "Crates", Kind.whole(), crates)
                .say("gross", "Gross (kg)", KG, shipment.grossKg())
                .say("volume", "Outer volume (m³)", M3, shipment.outerLitres().divide(LITRES_IN_M3));
    }

    private static String to(Shipment shipment) {
        return shipment.route().to().isEmpty()
                ? "not told"
                : String.join(", ", shipment.route().to());
    }
}
