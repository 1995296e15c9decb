package boltlore.order.json;

import boltlore.catalogue.BuildDate;
import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Family;
import boltlore.choices.Choices;
import boltlore.faults.Outcome;
import boltlore.json.CurrencyReading;
import boltlore.json.Faults;
import boltlore.json.Json;
import boltlore.json.JsonFile;
import boltlore.json.ObjectReader;
import boltlore.json.PartyReading;
import boltlore.json.Range;
import boltlore.json.SchemaName;
import boltlore.json.TextShape;
import boltlore.json.Values;
import boltlore.measure.OptionName;
import boltlore.order.Order;
import boltlore.order.OrderAddresses;
import boltlore.order.OrderBuilder;
import boltlore.order.OrderTerms;
import boltlore.order.Waiver;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import java.util.SortedSet;
import java.util.regex.Pattern;

/** Reads an order file against the catalogue that it chooses from. */
public final class OrderReader {

    /** The schema of order files. */
    static final String SCHEMA = "order.schema.json";

    /** Something is always left to pay. */
    public static final BigDecimal MOST_DISCOUNT = BigDecimal.valueOf(95);

    private static final TextShape BUILT = new TextShape(
            OrderReader::isBuildDate,
            "a day, a month or a year from " + Values.FIRST_YEAR + " to " + Values.LAST_YEAR
                    + ", as \"1968-05-20\", \"1968-05\" or \"1968\"",
            "^(19|20|21)[0-9]{2}(-[0-9]{2}){0,2}$",
            10);

    /** Of 17 letters and digits, it is a vehicle identification number (ISO 3779): capitals but I, O and Q. */
    private static final Pattern CHASSIS_NUMBER =
            Pattern.compile("^(?=[A-HJ-NPR-Z0-9]{17}$|(?![A-Za-z0-9]{17}$))([A-Za-z0-9 ./-]*[A-Za-z ./-])?[0-9]{1,"
                    + Order.RUNNING_DIGITS + "}$");

    private static final TextShape CHASSIS = new TextShape(
            text -> text.length() <= 30 && CHASSIS_NUMBER.matcher(text).matches(),
            "a chassis number of letters, digits, ' ', '.', '/' and '-' that ends with its running number of at most "
                    + Order.RUNNING_DIGITS
                    + " digits, at most 30 long; of just 17 letters and digits, as ISO 3779 has them:"
                    + " capitals without I, O and Q",
            CHASSIS_NUMBER.pattern(),
            30);

    private static final Range DISCOUNT = new Range(BigDecimal.ZERO, true, MOST_DISCOUNT);

    private final Catalogue catalogue;
    private final Faults faults = new Faults();

    OrderReader(Catalogue catalogue) {
        this.catalogue = catalogue;
    }

    private static boolean isBuildDate(String text) {
        return BuildDate.read(text)
                .filter(built -> Values.isSensible(built.first()))
                .isPresent();
    }

    /** The order, or everything that is wrong with it. */
    public static Outcome<Order> read(Path file, Catalogue catalogue) {
        return JsonFile.read(file).then(json -> new OrderReader(catalogue).order(json));
    }

    /** The order in a JSON text that has already been read; {@code file} is what messages call it. */
    public static Outcome<Order> parse(String file, byte[] bytes, Catalogue catalogue) {
        return JsonFile.parse(file, bytes).then(json -> new OrderReader(catalogue).order(json));
    }

    private Outcome<Order> order(Json json) {
        return order(ObjectReader.of(json, faults));
    }

    Outcome<Order> order(ObjectReader reader) {
        SchemaName.check(reader, SCHEMA);
        String name = reader.text("order", TextShape.ORDER_NAME);
        String familyName = reader.text("family", TextShape.NAME);
        boolean known = !familyName.isEmpty()
                && Known.check(
                        familyName, reader.spot("family"), catalogue.families().keySet(), "a family", faults);
        // Nothing below means anything without the family that it speaks of.
        return known ? order(reader, name, catalogue.family(familyName)) : Outcome.faulty(faults.all());
    }

    private Outcome<Order> order(ObjectReader reader, String name, Family family) {
        ChoicesReading choosing = new ChoicesReading(family, faults);
        BuildDate donorBuilt =
                reader.findText("donorBuilt", BUILT).flatMap(BuildDate::read).orElse(null);
        LocalDate placed = reader.findDate("placed");
        ChoicesReading.Chosen chosen = choosing.chosen(reader, donorBuilt);
        SortedSet<OptionName> firm = choosing.firm(reader, chosen.values().keySet());
        LeftOutReading leftOut = new LeftOutReading(family, faults);
        Order order = new Order(
                name,
                family.name(),
                reader.text("customer", TextShape.LINE),
                partner(reader),
                language(reader),
                donorBuilt,
                placed,
                reader.findDate("due"),
                Choices.of(family, chosen.values()),
                chosen.byDate(),
                firm,
                choosing.rank(reader, firm),
                leftOut.read(reader),
                reader.findObjects("waived", OrderReader::waiver),
                reader.findObjects("extra", new ExtraReading(catalogue, family, placed)::extra),
                reader.findText("notes").orElse(""),
                reader.findObject("terms", OrderReader::terms).orElse(OrderTerms.NONE),
                new MeasuredReading(family, faults).read(reader),
                reader.findText("chassis", CHASSIS).orElse(""),
                addresses(reader));
        dates(order, reader);
        reader.done();
        return faults.orElse(new OrderBuilder(order).build());
    }

    /** Called as the customer where they have no name of their own. */
    private static OrderAddresses addresses(ObjectReader reader) {
        String customer = reader.member("customer")
                .map(json -> json instanceof Json.Text text ? text.text() : "")
                .orElse("");
        return new OrderAddresses(
                reader.findObject("consignee", each -> PartyReading.read(each, customer))
                        .orElse(null),
                reader.findObject("invoice", each -> PartyReading.read(each, customer))
                        .orElse(null));
    }

    private String partner(ObjectReader reader) {
        Optional<String> partner = reader.findText("partner", TextShape.LINE);
        partner.ifPresent(name -> Known.check(
                name,
                reader.spot("partner"),
                catalogue.workshop().partners().keySet(),
                "a partner of the workshop",
                faults));
        return partner.orElse("");
    }

    private String language(ObjectReader reader) {
        String language = reader.text("language", TextShape.LANGUAGE);
        if (!language.isEmpty()) {
            Known.check(
                    language,
                    reader.spot("language"),
                    catalogue.workshop().languages(),
                    "a language of the workshop",
                    faults);
        }
        return language;
    }

    private static OrderTerms terms(ObjectReader reader) {
        BigDecimal discount = reader.findDecimal("discountPercent", DISCOUNT);
        return new OrderTerms(
                discount,
                CurrencyReading.find(reader, "currency"),
                reader.findObject("delivery", PartyReading::delivery).orElse(null),
                reader.findText("payment", TextShape.LINE).orElse(""));
    }

    private static Waiver waiver(ObjectReader reader) {
        return new Waiver(
                reader.text("finding", TextShape.LINE),
                reader.findText("subject", TextShape.LINE).orElse(""),
                reader.text("who", TextShape.LINE),
                reader.date("when"),
                reader.text("why"));
    }

    private static void dates(Order order, ObjectReader reader) {
        LocalDate placed = order.placed();
        BuildDate built = order.donorBuilt();
        if (placed != null && built != null && built.isAfter(placed)) {
            String expected = "a day not after " + placed + ", when it was placed";
            reader.faultAt("donorBuilt", "built " + built, expected, "Check the vehicle's papers.");
        }
        LocalDate due = order.due();
        if (placed != null && due != null && due.isBefore(placed)) {
            reader.faultAt(
                    "due", "due " + due, "a day not before " + placed + ", when it was placed", "Swap the two dates.");
        }
    }
}
