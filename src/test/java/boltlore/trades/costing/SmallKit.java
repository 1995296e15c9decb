package boltlore.trades.costing;

import boltlore.bill.Bill;
import boltlore.bill.Item;
import boltlore.bill.Origin;
import boltlore.catalogue.Catalogue;
import boltlore.catalogue.CoatedWhere;
import boltlore.catalogue.Coater;
import boltlore.catalogue.CoatingShop;
import boltlore.catalogue.Family;
import boltlore.catalogue.Fill;
import boltlore.catalogue.Finish;
import boltlore.catalogue.Part;
import boltlore.catalogue.Partner;
import boltlore.catalogue.Position;
import boltlore.catalogue.Workshop;
import boltlore.choices.Choices;
import boltlore.measure.LineName;
import boltlore.measure.PartNumber;
import boltlore.measure.Party;
import boltlore.measure.PositionName;
import boltlore.measure.Wording;
import boltlore.order.Extra;
import boltlore.order.LeftOut;
import boltlore.order.Order;
import boltlore.order.OrderAddresses;
import boltlore.order.OrderTerms;
import boltlore.resolution.Kit;
import boltlore.resolution.Requirer;
import boltlore.resolution.Resolution;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/** A kit of a few sketched parts, put together by hand. Assembly takes 6 days; the outside coater 8. */
public final class SmallKit {

    private final Map<PartNumber, Part> parts = new TreeMap<>();
    private final List<Item> items = new ArrayList<>();
    private final List<Extra> extras = new ArrayList<>();
    private String partner = "";
    private OrderTerms terms = OrderTerms.NONE;

    public SmallKit know(SketchedPart sketch) {
        Part part = sketch.part();
        parts.put(part.number(), part);
        return this;
    }

    /** So many of a known part, at a position of that sub-system. */
    public SmallKit take(String subSystem, String part, String quantity) {
        items.add(item(position(subSystem), known(part), new BigDecimal(quantity), 1));
        return this;
    }

    /** So many of a known part, because each of another part of the kit needs it. */
    public SmallKit bring(String asker, String part, String quantity) {
        Item own = item(position("drive"), known(part), new BigDecimal(quantity), 1);
        Origin origin = new Origin.NeededBy(new Requirer.OfPart(new PartNumber(asker)), "It needs it.");
        items.add(new Item(
                1, own.position(), own.line(), own.part(), own.finish(), own.quantity(), origin, true, own.inside()));
        return this;
    }

    public SmallKit extra(Extra extra) {
        extras.add(extra);
        return this;
    }

    public SmallKit through(String partnerName) {
        partner = partnerName;
        return this;
    }

    public SmallKit agreed(OrderTerms orderTerms) {
        terms = orderTerms;
        return this;
    }

    public CostedBill priced() {
        return Pricing.cost(
                bill(),
                catalogue(),
                item -> new BigDecimal("2.005").multiply(item.quantity()),
                extra -> BigDecimal.ZERO);
    }

    private Item item(Position position, Part part, BigDecimal quantity, int level) {
        List<Item> inside = part.contains().stream()
                .map(child ->
                        item(position, known(child.part().text()), quantity.multiply(child.quantity()), level + 1))
                .toList();
        String finish = part.coat() == null || part.coat().finish() == null
                ? ""
                : part.coat().finish();
        LineName line = new LineName(part.number().text().toLowerCase(Locale.ROOT));
        return new Item(level, position, line, part, finish, quantity, new Origin.OwnLine(), true, inside);
    }

    private Part known(String number) {
        return catalogue().part(new PartNumber(number));
    }

    private static Position position(String subSystem) {
        return new Position(
                new PositionName(subSystem.replace(' ', '-')),
                Wording.english("Somewhere in " + subSystem),
                subSystem,
                "front",
                "",
                null,
                Fill.FREE,
                null,
                List.of(),
                List.of(),
                List.of());
    }

    private Bill bill() {
        Choices none = Choices.of(family(), Map.of());
        Order order = new Order(
                "OV-1",
                "small",
                "A. Customer",
                partner,
                "en",
                null,
                null,
                null,
                none,
                new TreeSet<>(),
                new TreeSet<>(),
                List.of(),
                new LeftOut.Undecided(),
                List.of(),
                extras,
                "",
                terms,
                Map.of(),
                "",
                OrderAddresses.NONE);
        Kit kit = new Kit(
                new TreeSet<>(),
                new TreeSet<>(),
                new TreeSet<>(),
                new TreeSet<>(),
                new TreeSet<>(),
                new TreeMap<>(),
                new TreeMap<>(),
                new TreeMap<>());
        return new Bill(order, new Resolution.Resolved(none, kit, new TreeSet<>()), items);
    }

    private static Family family() {
        return new Family(
                "small",
                Wording.english("Small"),
                null,
                List.of(),
                List.of(),
                Map.of(),
                List.of(),
                List.of(),
                List.of());
    }

    private Catalogue catalogue() {
        CoatingShop coating = new CoatingShop(
                Map.of(),
                List.of(),
                Map.of("Corraloch Coatings", new Coater("Corraloch Coatings", "Zinc", 8, true)),
                List.of(),
                Map.of(),
                BigDecimal.ONE);
        Workshop workshop = new Workshop(
                "Ostrevale Kit Works",
                "Ostrevale",
                Currency.getInstance("EUR"),
                BigDecimal.ONE,
                6,
                "en",
                List.of("en"),
                List.of(),
                Map.of(),
                List.of("drive", "battery"),
                List.of(),
                Map.of("Valbrune", new Partner("Valbrune", "Partner", "fr", Party.UNKNOWN)),
                Map.of(),
                Map.of(),
                Map.of(),
                Map.of(),
                coating);
        Map<String, Finish> finishes = Map.of(
                "zinc", finish("zinc", new CoatedWhere.OutsideByArea("Corraloch Coatings", BigDecimal.TEN)),
                "black", finish("black", new CoatedWhere.OwnOven("own")));
        return new Catalogue(workshop, finishes, Map.of(), parts, Map.of("small", family()), "0");
    }

    private static Finish finish(String name, CoatedWhere where) {
        return new Finish(name, Wording.english(name), "", Set.of(), List.of(), where);
    }
}
