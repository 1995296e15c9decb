package boltlore.trades.shipping;

import boltlore.faults.Outcome;
import boltlore.report.SheetFile;
import boltlore.report.drawing.Svg;
import boltlore.trades.KitInWork;
import boltlore.trades.Room;
import boltlore.trades.Trade;
import boltlore.trades.TradeOption;
import boltlore.trades.TradeOption.Given;
import boltlore.trades.TradeResult;
import boltlore.trades.costing.quote.OrderPricing;
import boltlore.trades.costing.quote.QuoteOptions;
import boltlore.trades.picking.PickingTrade;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Supplier;
import java.util.stream.Stream;

/** Orders in their crates, with drafts of the papers that they travel with. */
public final class ShippingTrade extends Trade {

    public static final String NAME = "ship";

    /** Name of the file that says what lies in which crate. */
    public static final String PACKING_LIST = "packing-list";

    private static final List<String> COUNTRIES = List.of(Locale.getISOCountries());

    private static final TradeOption<By> BY =
            TradeOption.of("--by", "WAY", "How they travel: road, sea or air; without it road.", ShippingTrade::by);
    private static final TradeOption<List<String>> TO = new TradeOption<>(
            "--to",
            "COUNTRY",
            "Country that they go to, after those that they pass (two letters, ISO 3166); may be given several times.",
            true,
            false,
            ShippingTrade::to);

    /** A kit is planned before anybody has to know where it goes; nobody types this. */
    private static final TradeOption<Boolean> PLANNED =
            TradeOption.of("planned", "", "Not shipped yet.", text -> Outcome.sound(true));

    public ShippingTrade() {
        super(
                NAME,
                Room.BENCH,
                "Pack orders into crates by fit stage and draft their shipping papers: packing list, customs lines,"
                        + " dangerous goods and labels. Orders given together travel in one vehicle.",
                "No order of these can be shipped.",
                List.of(ShippingFinding.values()),
                Stream.concat(Stream.of(BY, TO), QuoteOptions.ALL.stream()).toList());
    }

    @Override
    public Given forKit() {
        return Given.NONE.with(PLANNED, true);
    }

    @Override
    public Outcome<List<TradeResult>> work(List<KitInWork> kits, Given options) {
        Route route =
                new Route(options.get(BY).orElse(By.ROAD), options.get(TO).orElse(List.of()), !options.has(PLANNED));
        List<Outcome<Shipment>> shipments =
                kits.stream().map(kit -> shipment(kit, route, options)).toList();
        return Outcome.all(shipments).then(all -> Outcome.sound(results(kits, all)));
    }

    private static List<TradeResult> results(List<KitInWork> kits, List<Shipment> shipments) {
        Consignment together = new Consignment(shipments);
        List<TradeResult> results = new ArrayList<>();
        for (int i = 0; i < kits.size(); i++) {
            KitInWork kit = kits.get(i);
            Shipment shipment = shipments.get(i);
            results.add(
                    new TradeResult(kit.order().name(), shipment.findings(together), sheets(kit, shipment, together)));
        }
        return results;
    }

    /** What stays in the house, and in a folder of its own what leaves it. */
    private static List<TradeResult.Sheet> sheets(KitInWork kit, Shipment shipment, Consignment together) {
        List<TradeResult.Sheet> sheets = new ArrayList<>(List.of(sheet(kit, shipment, together)));
        ShippingReport.forCustomer(shipment, kit.catalogue().finishes())
                .forEach(paper -> sheets.add(new TradeResult.Sheet(TradeResult.FOR_CUSTOMERS, () -> paper, List::of)));
        return sheets;
    }

    /** The papers, and beside them all crates as a drawing of its own. */
    private static TradeResult.Sheet sheet(KitInWork kit, Shipment shipment, Consignment together) {
        Supplier<List<SheetFile>> drawing = () -> shipment.crates().isEmpty()
                ? List.of()
                : List.of(SheetFile.utf8("crates.svg", Svg.encode(CratesDrawing.draw(shipment.crates()))));
        return new TradeResult.Sheet(
                "",
                () -> ShippingReport.compose(shipment, together, kit.catalogue().finishes()),
                drawing);
    }

    /** Without values where the order has no price, unless a price was asked for. */
    private static Outcome<Shipment> shipment(KitInWork kit, Route route, Given options) {
        OrderPricing pricing = QuoteOptions.pricing(kit, options);
        SellingPrice price = SellingPrice.of(pricing).orElse(null);
        boolean asked = QuoteOptions.ALL.stream().anyMatch(options::has);
        return price == null && asked && kit.catalogue().prices() != null
                ? Outcome.faulty(pricing.calculation().faults())
                : Outcome.sound(Shipper.ship(pricing.costed(), price, PickingTrade.list(kit), route));
    }

    /**
     * A kit in the crates that it is planned to lie in, wherever it goes.
     *
     * @param kit of one order
     * @return the plan, without a price
     */
    public static Shipment planned(KitInWork kit) {
        return kit.once(
                Shipment.class,
                any -> Shipper.ship(
                        QuoteOptions.pricing(kit, Given.NONE).costed(),
                        null,
                        PickingTrade.list(kit),
                        new Route(By.ROAD, List.of(), false)));
    }

    private static Outcome<By> by(String text) {
        for (By by : By.values()) {
            if (by.name().equalsIgnoreCase(text.strip())) {
                return Outcome.sound(by);
            }
        }
        return BY.refused("'" + text + "'", "road, sea or air");
    }

    /** Countries in the order given, several in one text by commas. */
    private static Outcome<List<String>> to(List<String> texts) {
        List<String> countries = new ArrayList<>();
        for (String country : String.join(",", texts).split(",", -1)) {
            String code = country.strip().toUpperCase(Locale.ROOT);
            if (!COUNTRIES.contains(code)) {
                return TO.refused(
                        "'" + code + "', which is no country's code", "two letters (ISO 3166), such as IE for Ireland");
            }
            countries.add(code);
        }
        return Outcome.sound(List.copyOf(countries));
    }
}
