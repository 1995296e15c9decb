package boltlore.asking;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.EffectivityScale;
import boltlore.catalogue.Option;
import boltlore.faults.Fault;
import boltlore.faults.Outcome;
import boltlore.measure.Party;
import boltlore.order.LeftOut;
import boltlore.order.Order;
import boltlore.order.OrderAddresses;
import boltlore.order.OrderBuilder;
import boltlore.order.OrderTerms;
import boltlore.order.json.OrderReader;
import boltlore.order.json.OrderWriter;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** What an order says beside its choices, in the order in which it is asked. */
public enum AskedHead {
    BUILT("built", "When was the base vehicle built? A date, a month or a year, as 1968-05-20, 1968-05 or 1968.", true),
    CHASSIS("chassis", "What is the chassis number? Its last digits are the running number.", false),
    NUMBER("number", "Which order number?", false),
    CUSTOMER("customer", "For which customer?", false),
    MEASURED("measured", "What was measured on the vehicle, in mm? As 'name 1840', one or several.", true),
    DUE("due", "When is the kit due? A date, as 2027-03-12.", true),
    PARTNER("partner", "Through which partner workshop?", true),
    DISCOUNT("discount", "What discount, in per cent, in place of the partner's?", true),
    BRACKETS(
            "brackets",
            "Brackets that support nothing in this kit: leave them out, or keep them? 'out' or 'keep'.",
            true),
    PLACED("placed", "When was the order placed? A date, as 2027-03-12.", false),
    ADDRESS(
            "address",
            "Where do the crates go? Lines of the address and the country's two letters with ';' between: 'Row 1; Town; IE'.",
            true),
    LANGUAGE("language", "In which language are the papers?", true);

    /** What is asked: a question of the family, something else that an order says, or whether it is to be written. */
    public record Asking(@Nullable Option option, @Nullable AskedHead head) {
        public boolean isLast() {
            return option == null && head == null;
        }

        public String prompt() {
            return (option != null ? named(option) : head == null ? "write" : head.command()) + "?";
        }

        private static String named(Option option) {
            return (option.group() == null ? option.name() : option.group().name()).text();
        }
    }

    /** Few digits, and no power of ten: such a number can be written out. */
    public static final Pattern PERCENT = Pattern.compile("[0-9]{1,3}(\\.[0-9]{1,4})?");

    /** What settles options, and so is asked before them. */
    public static final List<AskedHead> BEFORE_OPTIONS = List.of(BUILT, PLACED, CHASSIS);

    private final String command;
    private final String asks;
    private final boolean optional;

    AskedHead(String command, String asks, boolean optional) {
        this.command = command;
        this.asks = asks;
        this.optional = optional;
    }

    public String command() {
        return command;
    }

    public String asks() {
        return asks;
    }

    /** Whether an order does without. */
    public boolean optional() {
        return optional;
    }

    /** What comes of it where nothing is said. */
    public String without() {
        if (this == BRACKETS) {
            return "Enter puts it off; the kit does not ship before it is decided.";
        }
        if (this == MEASURED) {
            return "Enter puts it off; nothing is cut to it before it is measured.";
        }
        return optional ? "Enter leaves it out." : "'quit' keeps the draft without it.";
    }

    public static Optional<AskedHead> named(String command) {
        for (AskedHead head : values()) {
            if (head.command.equals(command)) {
                return Optional.of(head);
            }
        }
        return Optional.empty();
    }

    public boolean missing(Order order) {
        return switch (this) {
            case BUILT -> order.donorBuilt() == null && BuiltSaid.wouldSettle(order.choices());
            case NUMBER -> order.name().equals(OrderBuilder.NO_NUMBER);
            case CUSTOMER -> order.customer().equals(OrderBuilder.NO_CUSTOMER);
            case MEASURED -> !MeasuredSaid.open(order).isEmpty();
            case DUE -> order.due() == null;
            case PARTNER -> order.partner().isEmpty();
            case DISCOUNT -> order.terms().discountPercent() == null;
            case BRACKETS -> order.leftOut() instanceof LeftOut.Undecided;
            case CHASSIS -> order.chassis().isEmpty() && asks(order, EffectivityScale.By.CHASSIS);
            case PLACED -> order.placed() == null && asks(order, EffectivityScale.By.PLACED);
            case ADDRESS, LANGUAGE -> false;
        };
    }

    /** Whether some line of the family holds only from or until some order. */
    private static boolean asks(Order order, EffectivityScale.By by) {
        return order.choices().family().option(by.option()).isPresent();
    }

    /** The order with what was said, or what is wrong with it. */
    public Outcome<Order> said(Order order, String text, Catalogue catalogue) {
        OrderBuilder builder = new OrderBuilder(order);
        Outcome<Order> changed = switch (this) {
            case BUILT -> BuiltSaid.in(order, text);
            case CHASSIS -> Outcome.sound(builder.chassis(text).build());
            case NUMBER -> Outcome.sound(builder.name(text).build());
            case CUSTOMER -> Outcome.sound(builder.customer(text).build());
            case MEASURED -> MeasuredSaid.in(order, text);
            case DUE -> day(text).then(day -> Outcome.sound(builder.due(day).build()));
            case PARTNER -> Outcome.sound(new PapersLanguage(catalogue).through(text, order));
            case DISCOUNT -> discount(order, text);
            case BRACKETS -> brackets(order, text);
            case PLACED ->
                day(text).then(day -> Outcome.sound(builder.placed(day).build()));
            case ADDRESS -> address(order, text);
            case LANGUAGE -> Outcome.sound(builder.language(text).build());
        };
        return changed.then(said -> checked(said, catalogue));
    }

    /** Only the address; whom to ask for and all numbers stay as they were. */
    private static Outcome<Order> address(Order order, String text) {
        List<String> lines =
                Arrays.stream(text.split(";", -1)).map(String::strip).toList();
        if (lines.size() < 2) {
            return otherThan(text, "an address, as 'Row 1; Town; IE'");
        }
        Party before = order.addresses().consignee();
        Party known = before == null ? Party.UNKNOWN.called(order.customer()) : before;
        Party consignee = new Party(
                known.name(),
                lines.subList(0, lines.size() - 1),
                lines.get(lines.size() - 1).toUpperCase(Locale.ROOT),
                known.contact(),
                known.phone(),
                known.email(),
                known.taxNumber(),
                known.eori());
        return Outcome.sound(new OrderBuilder(order)
                .addresses(new OrderAddresses(consignee, order.addresses().invoice()))
                .build());
    }

    private static Outcome<LocalDate> day(String text) {
        return SaidDay.day(text)
                .<Outcome<LocalDate>>map(Outcome::sound)
                .orElseGet(() -> otherThan(text, SaidDay.EXPECTED));
    }

    /** Whatever an order file may not say cannot be said here either; the file's places mean nothing here. */
    public static Outcome<Order> checked(Order order, Catalogue catalogue) {
        byte[] text = OrderWriter.write(order).getBytes(StandardCharsets.UTF_8);
        Outcome<Order> read = OrderReader.parse("", text, catalogue);
        return read instanceof Outcome.Sound<Order>
                ? Outcome.sound(order)
                : Outcome.faulty(read.faults().stream()
                        .map(Fault::withoutPlace)
                        .distinct()
                        .toList());
    }

    private static Outcome<Order> discount(Order order, String text) {
        if (!PERCENT.matcher(text).matches()) {
            return otherThan(text, "per cent, as 2.5");
        }
        OrderTerms agreed = order.terms();
        OrderTerms terms = new OrderTerms(new BigDecimal(text), agreed.currency(), agreed.delivery(), agreed.payment());
        return Outcome.sound(new OrderBuilder(order).terms(terms).build());
    }

    private static Outcome<Order> brackets(Order order, String text) {
        return switch (text) {
            case "out" -> Outcome.sound(order.withLeftOut(new LeftOut.AllUnused()));
            case "keep" -> Outcome.sound(order.withLeftOut(new LeftOut.Keep()));
            default -> otherThan(text, "'out' or 'keep'");
        };
    }

    private static <T> Outcome<T> otherThan(String text, String expected) {
        return Outcome.faulty(Fault.of("", "'" + text + "'", expected, ""));
    }
}
