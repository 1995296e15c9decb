package boltlore.trades.coating;

import boltlore.bill.Bill;
import boltlore.bill.Item;
import boltlore.bill.Origin;
import boltlore.catalogue.Catalogue;
import boltlore.catalogue.CoatingShop;
import boltlore.catalogue.CoatingSpec;
import boltlore.catalogue.Family;
import boltlore.catalogue.Fill;
import boltlore.catalogue.Finish;
import boltlore.catalogue.Part;
import boltlore.catalogue.Position;
import boltlore.catalogue.Workshop;
import boltlore.choices.Choices;
import boltlore.demo.Demo;
import boltlore.measure.LineName;
import boltlore.measure.PartNumber;
import boltlore.measure.PositionName;
import boltlore.measure.Wording;
import boltlore.order.Extra;
import boltlore.order.LeftOut;
import boltlore.order.Order;
import boltlore.order.OrderAddresses;
import boltlore.order.OrderTerms;
import boltlore.resolution.Finding;
import boltlore.resolution.FindingKind;
import boltlore.resolution.Kit;
import boltlore.resolution.Resolution;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.Map;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/** Bills of one order each, put together piece by piece, and the catalogue around them. */
public final class SampleOrders {

    public static final int ASSEMBLY_DAYS = 6;

    private static final Family FAMILY = new Family(
            "van", Wording.english("Van"), null, List.of(), List.of(), Map.of(), List.of(), List.of(), List.of());

    private static final Position POSITION = new Position(
            new PositionName("somewhere"),
            Wording.english("Somewhere"),
            "drive",
            "front",
            "",
            null,
            Fill.FREE,
            null,
            List.of(),
            List.of(),
            List.of());

    private final String name;
    private final @Nullable LocalDate due;
    private final List<Item> items = new ArrayList<>();
    private final List<Extra> extras = new ArrayList<>();
    private final SortedSet<LineName> unused = new TreeSet<>();
    private final SortedSet<Finding> findings = new TreeSet<>();

    private SampleOrders(String name, @Nullable LocalDate due) {
        this.name = name;
        this.due = due;
    }

    public static SampleOrders order(String name) {
        return new SampleOrders(name, null);
    }

    public static SampleOrders order(String name, String due) {
        return new SampleOrders(name, LocalDate.parse(due));
    }

    public SampleOrders with(int quantity, Part part, Finish finish) {
        return with(quantity, part, finish, new LineName("line-" + part.number()));
    }

    public SampleOrders kept(int quantity, Part part, Finish finish) {
        LineName line = new LineName("kept-" + part.number());
        unused.add(line);
        findings.add(new Finding(FindingKind.KEPT, line.text()));
        return with(quantity, part, finish, line);
    }

    public SampleOrders undecided(int quantity, Part part, Finish finish) {
        LineName line = new LineName("undecided-" + part.number());
        unused.add(line);
        findings.add(new Finding(FindingKind.UNUSED, line.text()));
        return with(quantity, part, finish, line);
    }

    public SampleOrders extra(int quantity, Part part, String finish, boolean suppliedByCustomer) {
        extras.add(new Extra(
                part.number(),
                "",
                BigDecimal.valueOf(quantity),
                "each",
                null,
                null,
                suppliedByCustomer,
                "Asked for.",
                finish,
                null,
                null,
                null));
        return this;
    }

    public SampleOrders notCoated(Part part) {
        items.add(item(new LineName("plain"), part, "", 1));
        return this;
    }

    private SampleOrders with(int quantity, Part part, Finish finish, LineName line) {
        items.add(item(line, part, finish.name(), quantity));
        return this;
    }

    public Bill bill() {
        Choices choices = Choices.of(FAMILY, Map.of());
        Kit kit = new Kit(
                new TreeSet<>(),
                new TreeSet<>(),
                unused,
                new TreeSet<>(),
                new TreeSet<>(),
                new TreeMap<>(),
                new TreeMap<>(),
                new TreeMap<>(Map.of("coating", new TreeSet<>(List.of("oven")))));
        Order order = new Order(
                name,
                "van",
                "Customer",
                "",
                "en",
                null,
                null,
                due,
                choices,
                new TreeSet<>(),
                new TreeSet<>(),
                List.of(),
                new LeftOut.Undecided(),
                List.of(),
                List.copyOf(extras),
                "",
                OrderTerms.NONE,
                Map.of(),
                "",
                OrderAddresses.NONE);
        return new Bill(order, new Resolution.Resolved(choices, kit, findings), List.copyOf(items));
    }

    /** A catalogue with the sample shop, its booth holding that powder, and these finishes. */
    public static Catalogue catalogue(String powderInBooth, Finish... finishes) {
        return catalogue(SampleShop.shop(powderInBooth), Map.of(), finishes);
    }

    /** A catalogue with that shop, these parts and these finishes. */
    public static Catalogue catalogue(CoatingShop shop, Map<PartNumber, Part> parts, Finish... finishes) {
        Map<String, Finish> byName = new TreeMap<>();
        for (Finish finish : finishes) {
            byName.put(finish.name(), finish);
        }
        return new Catalogue(workshop(shop), byName, Map.of(), parts, Map.of(), "0");
    }

    public static Workshop workshop(CoatingShop shop) {
        return new Workshop(
                "Sample Works",
                "Nowhere",
                Currency.getInstance("EUR"),
                BigDecimal.ONE,
                ASSEMBLY_DAYS,
                "en",
                List.of("en"),
                List.of(),
                Map.of(),
                List.of(),
                List.of(),
                Map.of(),
                Map.of(),
                Map.of(),
                Map.of(),
                Demo.catalogue().workshop().cautions(),
                shop);
    }

    /** A row for loading, coated in black, with that many pieces. */
    public static BatchRow row(Part part, CoatingSpec coat, int pieces) {
        return new BatchRow(
                part,
                coat,
                SampleShop.OWN_BLACK,
                new BigDecimal("2.5"),
                CoatingStatus.NEEDED,
                List.of(new PieceMarks("BL-1", null, 1, pieces)));
    }

    private static Item item(LineName line, Part part, String finish, int quantity) {
        return new Item(
                1, POSITION, line, part, finish, BigDecimal.valueOf(quantity), new Origin.OwnLine(), true, List.of());
    }
}
