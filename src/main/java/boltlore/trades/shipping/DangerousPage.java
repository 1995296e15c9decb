package boltlore.trades.shipping;

import boltlore.report.CautionNotes;
import boltlore.report.Column;
import boltlore.report.Page;
import boltlore.report.PageBuilder;
import boltlore.report.TableBuilder;
import boltlore.report.TableSpec;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** What the dangerous-goods papers would say; only a trained and appointed person makes them out. */
final class DangerousPage {

    /** From memory. */
    private static final String SEALED =
            "New sealed lead-acid batteries may be exempt from ADR where they are secured, protected against short"
                    + " circuit and clean outside (special provision 598); the adviser decides. They are counted here.";

    private static final String PASSPORT =
            "Battery passport, one for each battery of an electric vehicle that comes on the EU market from 18 February 2027"
                    + " on: the importer, or who places it there, bears it";

    /** Special provision 310 of ADR 2025, as it is published. */
    private static final String SMALL_RUN =
            "Statement in the transport document: 'Transport in accordance with special provision 310'; by air approval of"
                    + " the authority of the State of origin (special provision A88)";

    private static final String OVERSEAS =
            "Goes overseas, and nobody has said how: packing instructions, exemptions and the transport document depend on"
                    + " it and are drafted when 'ship' is run with --by sea or --by air. Rules of the road hold to the port"
                    + " or airport at most; the adviser decides.";

    /** Goods in the vehicle, of one order. */
    private record InVehicle(String order, DangerousGoods goods) {

        <T> @Nullable T listed(Function<UnNumber, T> value) {
            return goods.entry().map(value).orElse(null);
        }
    }

    private static final TableSpec<DangerousGoods> GOODS = TableSpec.<DangerousGoods>named("dangerous-goods")
            .text("un", "UN number", DangerousGoods::un)
            .text("crates", "Crates", goods -> NumberFormats.numbers(goods.crates()))
            .quantity("pieces", "Pieces", "", DangerousGoods::pieces)
            .decimal("net", "Articles, net", "kg", 1, DangerousGoods::netKg)
            .decimal("energy", "Energy", "Wh", 0, DangerousGoods::wattHours);

    private static final TableSpec<PackingInstruction> INSTRUCTIONS = TableSpec.<PackingInstruction>named(
                    "instructions")
            .text("code", "Packing instruction", 24, PackingInstruction::code)
            .text("says", "For", 66, PackingInstruction::says)
            .box(Column.tick("chosen", "Chosen"));

    private static final TableSpec<DangerousGoods> TERMINALS = TableSpec.<DangerousGoods>named("terminals")
            .text("goods", "Goods", 30, DangerousPage::names)
            .text("un", "UN number", DangerousGoods::un)
            .text("crates", "Crates", goods -> NumberFormats.numbers(goods.crates()))
            .box(Column.blank("guard", "Guarded by"))
            .box(Column.tick("confirmed", "Confirmed"));

    private static final TableSpec<InVehicle> POINTS = TableSpec.<InVehicle>named("points")
            .text("order", "Order", 20, InVehicle::order)
            .text("un", "UN number", row -> row.goods().un())
            .whole("category", "Transport category", "", row -> row.listed(UnNumber::category))
            .decimal("net", "Articles, net", "kg", 1, row -> row.goods().netKg())
            .quantity("factor", "Factor", "", row -> row.listed(UnNumber::pointsPerKg))
            .decimal(
                    "points",
                    "ADR points",
                    "",
                    1,
                    row -> row.listed(
                            un -> RoadPoints.of(un, row.goods().netKg()).points()))
            .text("remark", "Remark", 30, row -> row.goods().entry().isEmpty() ? "not known: adviser" : null);

    private static final TableSpec<String> DOCUMENTS = TableSpec.<String>named("documents")
            .text("document", "Document or item", 84, document -> document)
            .box(Column.tick("present", "Present"));

    private DangerousPage() {}

    static PageBuilder compose(Shipment shipment, Consignment together, String footer) {
        PageBuilder page = Page.named("Dangerous goods").footer(footer);
        page.title("DRAFT – dangerous goods");
        CautionNotes.always(
                page,
                "dangerous-goods",
                shipment.workshop(),
                shipment.workshop().language());
        page.add(GOODS.of(shipment.dangerous()));
        terminals(page, shipment);
        if (shipment.overseas()) {
            page.note(OVERSEAS);
        } else {
            byWay(page, shipment, together);
        }
        CratesPage.lithium(page, shipment);
        return page.signatures("Packed by (trained)", "Classified and checked by (adviser)", "Handed over by");
    }

    /** What the rules of the way by which they travel ask for. */
    private static void byWay(PageBuilder page, Shipment shipment, Consignment together) {
        List<DangerousGoods> lithium =
                shipment.dangerous().stream().filter(DangerousGoods::lithium).toList();
        if (!lithium.isEmpty()) {
            page.heading("Packing instructions for lithium batteries, "
                            + shipment.route().by().rules())
                    .add(instructions(lithium, shipment));
            page.note(LithiumWords.classification());
            lithium.stream()
                    .flatMap(goods -> LithiumWords.byRoute(goods, shipment).stream())
                    .forEach(page::note);
        }
        if (shipment.dangerous().stream().anyMatch(goods -> goods.un().equals(UnNumber.LEAD_ACID_SEALED.un()))) {
            page.note(SEALED);
        }
        if (shipment.route().by() == By.ROAD) {
            page.heading("Exemption by quantity, " + By.ROAD.rules() + ", 1.1.3.6")
                    .add(points(together));
        }
        page.heading("Documents required").add(DOCUMENTS.of(documents(shipment, together)));
    }

    /** Covers of the kit may lie in another crate than the batteries: whoever packs says what guards the terminals. */
    private static void terminals(PageBuilder page, Shipment shipment) {
        page.heading("Terminals guarded against short circuit, to be confirmed by the packer")
                .note(
                        "Nothing that the workshop has on record says what guards the terminals on the way. Covers packed in"
                                + " another crate than the batteries do not: the packer looks, writes down what guards them (caps, covers, own case) and"
                                + " confirms it; an unguarded terminal does not leave.")
                .add(TERMINALS.of(shipment.dangerous()));
    }

    private static String names(DangerousGoods goods) {
        return goods.packed().map(packed -> packed.goods().name()).distinct().collect(Collectors.joining(", "));
    }

    /** Those that a trained person chooses from. */
    private static TableBuilder instructions(List<DangerousGoods> lithium, Shipment shipment) {
        By by = shipment.route().by();
        return INSTRUCTIONS.of(Stream.concat(
                        lithium.stream()
                                .flatMap(goods -> goods.crates().stream())
                                .flatMap(crate -> toConsider(crate, shipment)),
                        Stream.of(PackingInstruction.ofDamaged(by)))
                .distinct()
                .sorted()
                .toList());
    }

    private static Stream<PackingInstruction> toConsider(Crate crate, Shipment shipment) {
        BigDecimal pieces = crate.packed().stream().map(Packed::quantity).reduce(BigDecimal.ZERO, BigDecimal::add);
        By by = shipment.route().by();
        return crate.packed().stream()
                .map(Packed::goods)
                .flatMap(goods -> (by == By.AIR
                                ? PackingInstruction.byAir(crate.load().un(), shipment.known(goods))
                                : PackingInstruction.toConsider(
                                        goods.kg(BigDecimal.ONE), pieces, shipment.known(goods)))
                        .stream());
    }

    /** Points of all orders in the vehicle. */
    private static TableBuilder points(Consignment together) {
        TableBuilder table = POINTS.of(together.shipments().stream()
                .flatMap(shipment -> shipment.dangerous().stream()
                        .map(goods -> new InVehicle(shipment.order().name(), goods)))
                .toList());
        RoadPoints points = together.points();
        table.total("total", "In the vehicle")
                .sum("points", points.points())
                .put("remark", points.exempt() ? "up to 1000: exemption applies" : "above 1000: no exemption");
        return table;
    }

    private static List<String> documents(Shipment shipment, Consignment together) {
        List<String> all = new ArrayList<>(Papers.required(
                shipment.route().by(), together.points().exempt(), LithiumWords.testSummaries(shipment)));
        if (shipment.dangerous().stream()
                .flatMap(DangerousGoods::packed)
                .anyMatch(packed -> shipment.known(packed.goods()).smallRun())) {
            all.add(SMALL_RUN);
        }
        if (together.dangerous().anyMatch(DangerousGoods::lithium)) {
            all.add(PASSPORT);
        }
        String adviser = shipment.shipping().consignor().adviser();
        all.add("Name of the safety adviser: " + (adviser.isEmpty() ? "none is named" : adviser));
        all.add("Proof that who packs, marks and hands over is trained for it");
        return all;
    }
}
