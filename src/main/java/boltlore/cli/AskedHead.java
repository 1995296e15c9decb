package boltlore.cli;

import boltlore.catalogue.BuildDates;
import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Option;
import boltlore.choices.Choices;
import boltlore.faults.Fault;
import boltlore.faults.Outcome;
import boltlore.measure.OptionName;
import boltlore.order.LeftOut;
import boltlore.order.Order;
import boltlore.order.OrderBuilder;
import boltlore.order.OrderTerms;
import boltlore.order.json.OrderReader;
import boltlore.order.json.OrderWriter;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.Year;
import java.time.YearMonth;
import java.util.Optional;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/** What an order says beside its choices, in the order in which it is asked. */
enum AskedHead {
    BUILT("built", "When was the base vehicle built? A date, a month or a year, as 1968-05-20, 1968-05 or 1968.", true),
    NUMBER("number", "Which order number?", false),
    CUSTOMER("customer", "For which customer?", false),
    DUE("due", "When is the kit due? A date, as 2027-03-12.", true),
    PARTNER("partner", "Through which partner workshop?", true),
    DISCOUNT("discount", "What discount, in per cent, in place of the partner's?", true),
    BRACKETS(
            "brackets",
            "Brackets that support nothing in this kit: leave them out, or keep them? 'out' or 'keep'.",
            true);

    /** What is asked: a question of the family or something else that an order says. */
    record Asking(@Nullable Option option, @Nullable AskedHead head) {
        String prompt() {
            return option != null ? option.name() + "?" : (head == null ? "" : head.command()) + "?";
        }
    }

    private final String command;
    private final String asks;
    private final boolean optional;

    AskedHead(String command, String asks, boolean optional) {
        this.command = command;
        this.asks = asks;
        this.optional = optional;
    }

    String command() {
        return command;
    }

    String asks() {
        return asks;
    }

    /** Whether an order does without. */
    boolean optional() {
        return optional;
    }

    /** What comes of it where nothing is said. */
    String without() {
        if (this == BRACKETS) {
            return "Enter puts it off; the kit does not ship before it is decided.";
        }
        return optional ? "Enter leaves it out." : "'quit' keeps the draft without it.";
    }

    static Optional<AskedHead> named(String command) {
        for (AskedHead head : values()) {
            if (head.command.equals(command)) {
                return Optional.of(head);
            }
        }
        return Optional.empty();
    }

    boolean missing(Order order) {
        return switch (this) {
            case BUILT -> order.donorBuilt() == null && dated(order.choices()).isPresent();
            case NUMBER -> order.name().equals(OrderBuilder.NO_NUMBER);
            case CUSTOMER -> order.customer().equals(OrderBuilder.NO_CUSTOMER);
            case DUE -> order.due() == null;
            case PARTNER -> order.partner().isEmpty();
            case DISCOUNT -> order.terms().discountPercent() == null;
            case BRACKETS -> order.leftOut() instanceof LeftOut.Undecided;
        };
    }

    /** An option that a build date would settle and nobody has answered. */
    private static Optional<Option> dated(Choices choices) {
        return choices.unsettled().stream()
                .filter(option -> !option.builtFrom().isEmpty())
                .findFirst();
    }

    /** The order with what was said, or what is wrong with it. */
    Outcome<Order> said(Order order, String text, Catalogue catalogue) {
        OrderBuilder builder = new OrderBuilder(order);
        try {
            Outcome<Order> changed = switch (this) {
                case BUILT -> built(order, text);
                case NUMBER -> Outcome.sound(builder.name(text).build());
                case CUSTOMER -> Outcome.sound(builder.customer(text).build());
                case DUE -> Outcome.sound(builder.due(LocalDate.parse(text)).build());
                case PARTNER -> Outcome.sound(builder.partner(text).build());
                case DISCOUNT -> Outcome.sound(discount(order, text));
                case BRACKETS -> brackets(order, text);
            };
            return changed.then(said -> checked(said, catalogue));
        } catch (DateTimeException | NumberFormatException unreadable) {
            return Outcome.faulty(Fault.of("", "'" + text + "'", expected(), ""));
        }
    }

    private String expected() {
        return switch (this) {
            case DISCOUNT -> "per cent, as 2.5";
            case BRACKETS -> "'out' or 'keep'";
            default -> "a date, as 2027-03-12";
        };
    }

    /** Whatever an order file may not say cannot be said here either. */
    private static Outcome<Order> checked(Order order, Catalogue catalogue) {
        byte[] text = OrderWriter.write(order).getBytes(StandardCharsets.UTF_8);
        return OrderReader.parse("", text, catalogue).then(read -> Outcome.sound(order));
    }

    private static Order discount(Order order, String text) {
        OrderTerms terms = new OrderTerms(new BigDecimal(text), order.terms().currency());
        return new OrderBuilder(order).terms(terms).build();
    }

    private Outcome<Order> brackets(Order order, String text) {
        return switch (text) {
            case "out" -> Outcome.sound(order.withLeftOut(new LeftOut.AllUnused()));
            case "keep" -> Outcome.sound(order.withLeftOut(new LeftOut.Keep()));
            default -> Outcome.faulty(Fault.of("", "'" + text + "'", expected(), ""));
        };
    }

    /** A month or a year settles as much as its days have in common; only a day is kept as the date. */
    private static Outcome<Order> built(Order order, String text) {
        boolean year = text.length() == 4;
        YearMonth month = text.length() == 7 ? YearMonth.parse(text) : null;
        LocalDate first = year ? Year.parse(text).atDay(1) : month != null ? month.atDay(1) : LocalDate.parse(text);
        LocalDate last = year ? first.plusYears(1).minusDays(1) : month != null ? month.atEndOfMonth() : first;
        OrderBuilder builder = new OrderBuilder(order);
        TreeSet<OptionName> byDate = new TreeSet<>(order.settledByDate());
        Choices choices = order.choices();
        for (Option option : choices.family().options()) {
            Optional<BuildDates> dates = dates(option, first, last);
            boolean open = choices.value(option.name()).isEmpty() || byDate.contains(option.name());
            if (!option.builtFrom().isEmpty() && open && dates.isEmpty()) {
                return Outcome.faulty(Fault.of(
                        "",
                        "built " + text + ", in which the answer to '" + option.asks() + "' changed",
                        "a month or a day",
                        "Or leave it empty and answer that question."));
            }
            if (dates.isPresent() && open) {
                choices = choices.with(option.name(), dates.get().value());
                if (first.equals(last)) {
                    byDate.add(option.name());
                } else {
                    byDate.remove(option.name());
                }
            }
        }
        return Outcome.sound(builder.choices(choices)
                .settledByDate(byDate)
                .donorBuilt(first.equals(last) ? first : order.donorBuilt())
                .build());
    }

    private static Optional<BuildDates> dates(Option option, LocalDate first, LocalDate last) {
        return option.builtFrom().stream()
                .filter(dates -> dates.holds(first) && dates.holds(last))
                .findFirst();
    }
}
