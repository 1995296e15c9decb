package boltlore.trades.shipping;

import boltlore.catalogue.Consignor;
import boltlore.order.Order;
import boltlore.report.Kind;
import boltlore.report.Page;
import boltlore.report.PageBuilder;
import boltlore.report.Particulars;
import boltlore.report.ParticularsBuilder;
import boltlore.report.RowBuilder;
import boltlore.report.TableBuilder;
import boltlore.report.TableSpec;
import java.math.BigDecimal;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;

/** Goods by customs code and origin with their values, for the broker. */
final class CustomsPage {

    private static final int NAMED = 3;

    private static final String VALUES =
            "Each extra stands at its own price; the price of the kit is shared out over its lines so that they add up to it"
                    + " exactly (largest remainder method). Spares are counted in the pieces and in the mass, and carry no"
                    + " value of their own. Freight and insurance to the border are not in it.";

    private static final String QUOTED =
            "The values add up to the price paid or payable (transaction value): the quotation's price of kit and extras,"
                    + " after discount and without tax.";

    private static final String NO_VALUES =
            "The lines have no values, because the order has no price; 'boltlore price' says why. The broker needs the price paid"
                    + " or payable (transaction value).";

    private static final String CHECKED =
            "A customs broker or a trained person checks codes, origins, values and whether the kit is declared as a set,"
                    + " and signs the declaration. Six digits are common to all countries; what follows is national.";

    private CustomsPage() {}

    static PageBuilder compose(Shipment shipment, String footer) {
        PageBuilder page = Page.named("Customs lines")
                .footer(footer)
                .title("Customs lines, draft")
                .add(head(shipment))
                .add(table(shipment));
        return (shipment.price() == null
                        ? page.note(NO_VALUES)
                        : page.note(QUOTED).note(VALUES))
                .caution("Draft", CHECKED)
                .signatures("Checked by (trained person)");
    }

    private static ParticularsBuilder head(Shipment shipment) {
        Order order = shipment.order();
        Consignor consignor = shipment.shipping().consignor();
        ParticularsBuilder says = Particulars.named("customs")
                .say("consignor", "Consignor", String.join(", ", consignor.address()) + ", " + consignor.country())
                .say("order", "Order", order.name())
                .say("consignee", "Consignee", order.partner().isEmpty() ? order.customer() : order.partner())
                .leave("address", "Consignee's address")
                .say(
                        "crates",
                        "Packages",
                        shipment.crates().size() + ", gross " + NumberFormats.kg(shipment.grossKg()));
        says.say("asked", "Customs papers", asked(shipment));
        SellingPrice price = shipment.price();
        return price == null ? says : says.say("price", "Price", Kind.money(price.currency()), price.total());
    }

    /** What is only taken to be so, because nobody has named the destination, says that it is. */
    private static String asked(Shipment shipment) {
        return shipment.route().to().isEmpty()
                ? "open: the destination is not given; none are required within the customs union"
                : "required";
    }

    private static TableBuilder table(Shipment shipment) {
        SellingPrice price = shipment.price();
        TableSpec<CustomsLine> lines = TableSpec.<CustomsLine>named("customs-lines")
                .text("hs", "HS code", 12, line -> line.hs().isEmpty() ? "not known" : line.hs())
                .text("origin", "Origin", 8, line -> line.origin().isEmpty() ? "–" : line.origin())
                .text("goods", "Goods", 42, CustomsPage::goods)
                .quantity("pieces", "Pieces", "", line -> line.pieces().signum() == 0 ? null : line.pieces())
                .text("other-quantity", "Other quantity", 10, line -> String.join(", ", line.measured()))
                .decimal("net", "Net", "kg", 2, CustomsLine::netKg);
        if (price != null) {
            lines.money("value", "Value", price.currency(), CustomsLine::value);
        }
        TableBuilder table = lines.of(shipment.customs());
        BigDecimal netKg = shipment.customs().stream().map(CustomsLine::netKg).reduce(BigDecimal.ZERO, BigDecimal::add);
        RowBuilder total = table.total("total", "All lines").sum("net", netKg);
        if (price != null) {
            total.sum("value", price.total());
        }
        return table;
    }

    /** The heading's own words where it is among the usual ones, and the heaviest goods. */
    private static String goods(CustomsLine line) {
        List<String> names = line.goods().stream()
                .sorted(Comparator.comparing((Goods goods) -> goods.kg(goods.packed()))
                        .reversed())
                .map(CustomsPage::name)
                .distinct()
                .toList();
        String heading =
                Tariff.of(line.hs()).map(tariff -> tariff.says() + ": ").orElse("");
        String more = names.size() > NAMED ? " and " + (names.size() - NAMED) + " more" : "";
        return heading + names.stream().limit(NAMED).collect(Collectors.joining("; ")) + more;
    }

    private static String name(Goods goods) {
        return goods.part() == null ? goods.name() : goods.part().name().english();
    }
}
