package boltlore.trades.shipping;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Consignor;
import boltlore.catalogue.CrateType;
import boltlore.catalogue.EnvelopeMm;
import boltlore.catalogue.Lifting;
import boltlore.catalogue.OwnCrate;
import boltlore.catalogue.RatedMotor;
import boltlore.catalogue.ShippedBattery;
import boltlore.catalogue.Shipping;
import boltlore.catalogue.Wood;
import boltlore.findings.Finding;
import boltlore.measure.PartNumber;
import boltlore.measure.Party;
import boltlore.measure.Wording;
import boltlore.order.Extra;
import boltlore.sketch.CatalogueSketch;
import boltlore.sketch.OrderSketch;
import boltlore.sketch.PartSketch;
import boltlore.sketch.PositionSketch;
import boltlore.trades.costing.CostedBill;
import boltlore.trades.costing.ExtraCost;
import boltlore.trades.costing.Pricing;
import boltlore.trades.costing.quote.Quotation;
import boltlore.trades.picking.PickingList;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * A kit in the making that is packed into one kind of case of 1000 by 800 by 600 mm inside for 200 kg gross, tare 20 kg and
 * packing 2 kg, and one box of 500 by 400 by 400 mm for batteries for 100 kg gross, tare 8 kg.
 */
public final class ShippedKit {

    private final CatalogueSketch sketch = new CatalogueSketch();
    private final List<OwnCrate> ownCrates = new ArrayList<>();
    private final Map<PartNumber, EnvelopeMm> sizes = new LinkedHashMap<>();
    private final Map<PartNumber, RatedMotor> motors = new LinkedHashMap<>();
    private final Map<PartNumber, ShippedBattery> batteries = new LinkedHashMap<>();
    private final List<Extra> extras = new ArrayList<>();
    private Consignor consignor = new Consignor(List.of("Row 1", "Place"), "IE", "1", "Somebody");
    private @Nullable Party consignee;
    private Wood wood = Wood.PLYWOOD;
    private String woodMark = "";
    private String unMark = "UN 4D/Y100";
    private By by = By.ROAD;
    private List<String> to = List.of("FR");
    private List<String> byRoad = List.of();
    private int places;

    public static PartSketch cells(String number, String kg, String un, @Nullable String wattHours) {
        return PartSketch.bought(number).massKg(kg).transport(un, wattHours).customs("8507.60", "HU");
    }

    /** In stage 'front'. */
    public ShippedKit part(String number, String kg, int quantity) {
        return part(PartSketch.bought(number).massKg(kg).customs("8708.99", "IE"), "", quantity);
    }

    public ShippedKit part(PartSketch part, String bag, int quantity) {
        return part(part, "front", bag, quantity);
    }

    public ShippedKit part(PartSketch part, String stage, String bag, int quantity) {
        String number = part.draw().number().text();
        String place = "place-" + places++;
        sketch.part(part);
        sketch.position(PositionSketch.at(place).stage(stage).bag(bag).line(place, number, "" + quantity));
        return this;
    }

    /** Whose test summary lies in a folder. */
    public ShippedKit battery(String number, String kg, @Nullable String wattHours) {
        batteries.computeIfAbsent(
                new PartNumber(number), part -> new ShippedBattery(part, false, false, "Folder", null));
        return part(cells(number, kg, "UN 3480", wattHours), "", 1);
    }

    public ShippedKit size(String number, int length, int width, int height) {
        sizes.put(new PartNumber(number), new EnvelopeMm(length, width, height));
        return this;
    }

    public ShippedKit ownCrate(String bag, boolean together) {
        ownCrates.add(new OwnCrate(bag, Wording.english(bag), together));
        return this;
    }

    public ShippedKit motor(String number, String kw) {
        PartNumber part = new PartNumber(number);
        motors.put(part, new RatedMotor(part, new BigDecimal(kw), RatedMotor.Current.AC));
        return this;
    }

    public ShippedKit known(String number, boolean strongCase, String testSummary, @Nullable String chargePercent) {
        PartNumber part = new PartNumber(number);
        BigDecimal charge = chargePercent == null ? null : new BigDecimal(chargePercent);
        batteries.put(part, new ShippedBattery(part, strongCase, false, testSummary, charge));
        return this;
    }

    /** Of which nothing else is known than that it is a prototype or of a small run. */
    public ShippedKit smallRun(String number) {
        PartNumber part = new PartNumber(number);
        batteries.put(part, new ShippedBattery(part, true, true, "", new BigDecimal("30")));
        return this;
    }

    public ShippedKit extra(Extra extra) {
        extras.add(extra);
        return this;
    }

    public ShippedKit consignor(Consignor value) {
        consignor = value;
        return this;
    }

    public ShippedKit consignee(Party party) {
        consignee = party;
        return this;
    }

    public ShippedKit wood(Wood of, String mark) {
        wood = of;
        woodMark = mark;
        return this;
    }

    public ShippedKit unMark(String value) {
        unMark = value;
        return this;
    }

    public ShippedKit by(By value) {
        by = value;
        return this;
    }

    public ShippedKit to(String... countries) {
        to = List.of(countries);
        return this;
    }

    /** What lorries reach; without it nobody has said. */
    public ShippedKit byRoad(String... countries) {
        byRoad = List.of(countries);
        return this;
    }

    public Shipping shipping() {
        return new Shipping(
                consignor,
                List.of("IE", "FR", "DE"),
                byRoad,
                List.of(box(), crate()),
                ownCrates,
                List.of(),
                new BigDecimal("60"),
                new BigDecimal("1"),
                new Lifting(new BigDecimal("23"), new BigDecimal("40")),
                sizes,
                motors,
                batteries);
    }

    private CrateType crate() {
        return new CrateType(
                "case",
                Wording.english("Case"),
                new EnvelopeMm(1000, 800, 600),
                new EnvelopeMm(1040, 840, 740),
                new BigDecimal("20"),
                new BigDecimal("2"),
                new BigDecimal("200"),
                wood,
                woodMark,
                "",
                false,
                true,
                BigDecimal.ZERO,
                BigDecimal.ZERO);
    }

    private CrateType box() {
        return new CrateType(
                "battery-box",
                Wording.english("Box"),
                new EnvelopeMm(500, 400, 400),
                new EnvelopeMm(530, 430, 450),
                new BigDecimal("8"),
                BigDecimal.ZERO,
                new BigDecimal("100"),
                Wood.PLYWOOD,
                "",
                unMark,
                true,
                false,
                BigDecimal.ZERO,
                BigDecimal.ZERO);
    }

    public Catalogue catalogue() {
        Catalogue plain = sketch.draw();
        return new Catalogue(
                plain.workshop(),
                plain.finishes(),
                plain.materials(),
                plain.parts(),
                plain.families(),
                plain.revision(),
                null,
                shipping());
    }

    public Shipment shipment() {
        Catalogue catalogue = catalogue();
        OrderSketch order =
                new OrderSketch(catalogue).extra(extras.toArray(Extra[]::new)).consignee(consignee);
        PickingList list = PickingList.of(order.plan(), order.bill());
        CostedBill costed = Pricing.cost(order.bill(), catalogue);
        return Shipper.ship(costed, price(costed), list, new Route(by, to));
    }

    /** What everything costs directly and 40 % on it, or what an extra was agreed at. */
    private static SellingPrice price(CostedBill costed) {
        BigDecimal factor = new BigDecimal("1.4");
        Map<Extra, BigDecimal> of = new LinkedHashMap<>();
        costed.extras().forEach(each -> of.merge(each.extra(), price(each, factor), BigDecimal::add));
        BigDecimal kit = costed.totals().cost().multiply(factor).setScale(2, RoundingMode.HALF_UP);
        return new SellingPrice(costed.currency(), kit, of, null, Quotation.Terms.NONE);
    }

    private static BigDecimal price(ExtraCost costed, BigDecimal factor) {
        Extra extra = costed.extra();
        return extra.suppliedByCustomer() || extra.price() == null
                ? costed.cost().multiply(factor).setScale(2, RoundingMode.HALF_UP)
                : extra.price().multiply(extra.quantity());
    }

    private List<String> says(boolean stops) {
        Shipment shipment = shipment();
        return shipment.findings(new Consignment(List.of(shipment))).all().stream()
                .filter(finding -> finding.stops() == stops)
                .map(Finding::says)
                .toList();
    }

    /** Sentences of what stops. */
    public List<String> stops() {
        return says(true);
    }

    /** Sentences of what is to be checked or known and stops nothing. */
    public List<String> looks() {
        return says(false);
    }
}
