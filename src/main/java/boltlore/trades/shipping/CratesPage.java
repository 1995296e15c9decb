package boltlore.trades.shipping;

import boltlore.findings.Findings;
import boltlore.findings.Severity;
import boltlore.order.Order;
import boltlore.report.CautionNotes;
import boltlore.report.FindingsTable;
import boltlore.report.Kind;
import boltlore.report.Page;
import boltlore.report.PageBuilder;
import boltlore.report.Particulars;
import boltlore.report.ParticularsBuilder;
import boltlore.report.TableBuilder;
import boltlore.report.TableSpec;
import java.math.BigDecimal;
import java.util.Locale;

/** The first two pages: all crates drawn and listed, and what to check before they leave. */
final class CratesPage {

    private static final String MASSES =
            "Gross is net, the empty crate and its packing. Net is without the film of powder, spares counted in. Weigh each"
                    + " crate before it leaves and write the mass on its label.";
    private static final String FILLED =
            "Filled is what the content takes up; by mass is what of it was given to parts without a size.";

    private static final Kind KG = Kind.decimal(1).in("kg");
    private static final Kind M3 = Kind.decimal(2).in("m³");
    private static final BigDecimal LITRES_IN_M3 = BigDecimal.valueOf(1000);

    private CratesPage() {}

    static PageBuilder compose(
            Shipment shipment, Consignment together, Findings findings, LoadWords words, String footer) {
        PageBuilder page =
                Page.named("Crates").footer(footer).title(ShippingReport.TITLE).add(head(shipment, together));
        if (findings.stops()) {
            page.caution(
                    Severity.STOP.says(words.language()), "Nothing leaves as it is: see 'Before the crates leave'.");
        }
        if (!shipment.crates().isEmpty()) {
            page.picture(CratesDrawing.draw(shipment.crates()));
            page.add(crates(shipment, words)).note(MASSES);
            page.add(inside(words).of(shipment.crates())).note(FILLED);
        }
        CautionNotes.always(page, "crates", shipment.workshop(), words.language());
        lithium(page, shipment);
        return page;
    }

    /** What to check, to be signed by who packed. */
    static PageBuilder findings(Findings findings, String language, String footer) {
        PageBuilder page = Page.named("Before they leave").footer(footer).title("Before the crates leave");
        FindingsTable.alone(page, findings, language);
        return page.signatures("Packed and weighed by", "Checked by");
    }

    /** Where a crate holds lithium batteries. */
    static void lithium(PageBuilder page, Shipment shipment) {
        if (shipment.dangerous().stream().anyMatch(DangerousGoods::lithium)) {
            CautionNotes.always(
                    page,
                    "lithium-crates",
                    shipment.workshop(),
                    shipment.workshop().language());
        }
    }

    /** A row a crate. */
    static TableBuilder crates(Shipment shipment, LoadWords words) {
        TableBuilder table = TableSpec.<Crate>named("crates")
                .whole("crate", "Crate", "", Crate::number)
                .text("content", "Fit stage and content", 24, crate -> words.of(crate.load()))
                .said("kind", "Kind", 24, crate -> crate.type().says())
                .code("kind-id", crate -> crate.type().name())
                .text(
                        "outside",
                        "Outside (mm)",
                        crate -> NumberFormats.size(crate.type().outside()))
                .decimal("net", "Net", "kg", 1, Crate::netKg)
                .decimal(
                        "empty",
                        "Crate, packing",
                        "kg",
                        1,
                        crate -> crate.grossKg().subtract(crate.netKg()))
                .decimal("gross", "Gross", "kg", 1, Crate::grossKg)
                .text("lift", "Lift with", 12, crate -> lift(crate, shipment))
                .of(shipment.crates());
        table.total("total", "All crates")
                .sum("net", shipment.netKg())
                .sum("empty", shipment.grossKg().subtract(shipment.netKg()))
                .sum("gross", shipment.grossKg());
        return table;
    }

    private static TableSpec<Crate> inside(LoadWords words) {
        return TableSpec.<Crate>named("filling")
                .whole("crate", "Crate", "", Crate::number)
                .text("stages", "Fit stages", 34, crate -> words.stages(crate.stages()))
                .code("stage-ids", crate -> String.join(", ", crate.stages()))
                .text("un", "UN number", crate -> crate.load().un())
                .whole("length", "Length", "mm", crate -> crate.type().outside().length())
                .whole("width", "Width", "mm", crate -> crate.type().outside().width())
                .whole("height", "Height", "mm", crate -> crate.type().outside().height())
                .decimal("litres", "Filled", "l", 1, Crate::litres)
                .decimal("by-mass", "By mass", "l", 1, Crate::guessedLitres);
    }

    private static String lift(Crate crate, Shipment shipment) {
        return switch (Lift.of(crate.grossKg(), shipment.shipping().lifting())) {
            case ONE_PERSON -> "one person";
            case TWO_PERSONS -> "two people";
            case GEAR -> "pallet truck or hoist";
        };
    }

    private static ParticularsBuilder head(Shipment shipment, Consignment together) {
        Order order = shipment.order();
        Route route = shipment.route();
        ParticularsBuilder says = Particulars.named("shipment")
                .say("workshop", "Workshop", shipment.workshop().name())
                .say("order", "Order", order.name() + ", " + order.customer())
                .say(
                        "vehicle",
                        "Base vehicle",
                        order.choices().family().says().in(shipment.workshop().language()))
                .say(
                        "by",
                        "Travels by",
                        shipment.overseas()
                                ? "not decided: overseas, sea or air"
                                : route.by().name().toLowerCase(Locale.ROOT))
                .say("to", "Countries on the way", route.to().isEmpty() ? "not given" : String.join(", ", route.to()))
                .say(
                        "crates",
                        "Crates",
                        Kind.whole(),
                        BigDecimal.valueOf(shipment.crates().size()))
                .say("net", "Net", KG, shipment.netKg())
                .say("gross", "Gross", KG, shipment.grossKg())
                .say("volume", "Outer volume", M3, shipment.outerLitres().divide(LITRES_IN_M3));
        return route.by() == By.ROAD
                        && !shipment.overseas()
                        && !shipment.dangerous().isEmpty()
                ? says.say(
                        "points",
                        "ADR points, vehicle",
                        Kind.decimal(1),
                        together.points().points())
                : says;
    }
}
