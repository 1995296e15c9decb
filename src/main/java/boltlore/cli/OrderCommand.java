package boltlore.cli;

import boltlore.book.Entry;
import boltlore.book.OrderStanding;
import boltlore.book.OrderState;
import boltlore.book.QuotedVersion;
import boltlore.book.Subject;
import boltlore.book.db.Place;
import boltlore.book.db.Reading;
import boltlore.book.orders.KeptFinding;
import boltlore.book.orders.LeftOfOrder;
import boltlore.book.orders.OrderDesk;
import boltlore.book.orders.OrderJson;
import boltlore.faults.Outcome;
import boltlore.json.JsonOut;
import boltlore.json.TextShape;
import boltlore.order.Order;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.TypeConversionException;

/** Orders in the book, from the first draft to the shipped kit. */
@Command(
        name = "order",
        description = "Keep orders in the book: take down, quote, confirm, follow; 'order --help' lists how.",
        subcommands = {
            OrderCommand.Draft.class,
            OrderCommand.Listed.class,
            OrderCommand.Show.class,
            OrderOffers.Quote.class,
            OrderOffers.Versions.class,
            OrderOffers.Confirm.class,
            OrderOffers.Move.class,
            OrderSheetsWritten.class
        })
final class OrderCommand extends BookGroup {

    /** The number of one order. */
    static final class Numbered {
        @Parameters(paramLabel = "NUMBER", description = "The order's number.")
        private String number = "";

        Outcome<String> read() {
            return Said.text("NUMBER", number, TextShape.ORDER_NAME);
        }
    }

    /** Why something is done. */
    static final class Reason {
        @Option(names = "--reason", paramLabel = "TEXT", description = "Why; it stays with the entry.")
        private String reason = "";

        Outcome<String> read() {
            return Said.sentence("--reason", reason);
        }
    }

    /** Takes orders down. */
    @Command(
            name = "draft",
            description = "Take order files into the book, or take them down otherwise; they may be partial.")
    static final class Draft extends BookCommand {

        @Parameters(arity = "1..*", paramLabel = "ORDER", description = "Order files or drafts, or folders of them.")
        private List<Path> orders = new ArrayList<>();

        @Mixin
        private CatalogueOption catalogue = new CatalogueOption();

        @Mixin
        private Reason reason = new Reason();

        @Override
        Outcome<Integer> answer(Screen screen, Place place) {
            return CatalogueSession.of(catalogue)
                    .then(session -> OrderFiles.find(orders)
                            .then(files -> Outcome.all(
                                    files.stream().map(session::order).toList()))
                            .then(read -> reason.read().then(why -> taken(screen, place, read, why))));
        }

        private Outcome<Integer> taken(Screen screen, Place place, List<Order> read, String why) {
            return by().then(by -> inBookOrNew(
                    place,
                    book -> new OrderDesk(book, by)
                            .draft(read, why)
                            .then(written -> written(
                                    screen,
                                    written,
                                    all -> JsonOut.list(all, OrderJson::standing),
                                    all -> all.forEach(each -> screen.wrapped(0, line(each)))))));
        }
    }

    /** Lists orders. */
    @Command(name = "list", description = "List the orders of the book, first what is due first.")
    static final class Listed extends BookCommand {

        private static final int MOST = 200;

        @Option(
                names = "--state",
                paramLabel = "STATE",
                split = ",",
                converter = Typed.class,
                description = "Only orders in these states: draft, quoted, ordered, in-work, tested, shipped, lost,"
                        + " cancelled; without it all that are not shipped, lost or cancelled.")
        private List<OrderState> states = new ArrayList<>();

        @Option(names = "--most", paramLabel = "N", description = "At most so many, 200 without it.")
        private int most = MOST;

        @Mixin
        private Listing listing = new Listing();

        @Override
        Outcome<Integer> answer(Screen screen, Place place) {
            List<OrderState> asked = states.isEmpty()
                    ? OrderState.ALL.stream()
                            .filter(state -> state.open() || state.owed())
                            .toList()
                    : states;
            LocalDate today = today();
            return inBook(
                    place,
                    book -> book.read(reading -> {
                        Function<OrderStanding, JsonOut> json =
                                each -> OrderJson.standing(each).put("late", late(each, today));
                        return listing.of(reading.orders().in(asked, most), json)
                                .then(orders -> told(screen, reading, orders, json, today));
                    }));
        }

        private Outcome<Integer> told(
                Screen screen,
                Reading reading,
                List<OrderStanding> orders,
                Function<OrderStanding, JsonOut> json,
                LocalDate today) {
            answer(
                    screen,
                    orders,
                    all -> JsonOut.list(all, json),
                    all -> all.forEach(each -> screen.wrapped(
                            0,
                            line(each) + (late(each, today) ? ", late" : "") + ", "
                                    + reading.persons().shown(each.customer()))));
            if (!json()) {
                screen.wrapped(0, counts(reading));
            }
            return Outcome.sound(Exit.OK);
        }

        /** Days as they are written (ISO 8601) sort as the days do. */
        private static boolean late(OrderStanding order, LocalDate today) {
            return order.state().owed() && !order.due().isEmpty() && order.due().compareTo(today.toString()) < 0;
        }

        private static String counts(Reading reading) {
            String all = reading.orders().counts().entrySet().stream()
                    .map((Map.Entry<OrderState, Long> each) ->
                            each.getValue() + " " + each.getKey().written())
                    .collect(Collectors.joining(", "));
            return all.isEmpty() ? "No orders yet." : "In all: " + all + ".";
        }
    }

    /** Shows one order with all that has happened to it. */
    @Command(name = "show", description = "Show one order of the book: where it stands, its quotations, what happened.")
    static final class Show extends BookCommand {

        @Mixin
        private Numbered order = new Numbered();

        @Option(names = "--kit", description = "Tell the lines of its kit too, as they were resolved.")
        private boolean kit;

        @Option(names = "--findings", description = "Tell what the rules and all trades found of its kit too.")
        private boolean findings;

        @Override
        Outcome<Integer> answer(Screen screen, Place place) {
            return order.read()
                    .then(name -> inBook(
                            place,
                            book -> book.read(reading -> OrderDesk.standing(reading, name)
                                    .then(standing -> show(screen, reading, standing)))));
        }

        private JsonOut.Members answer(
                Reading reading, OrderStanding standing, List<QuotedVersion> quoted, List<Entry> entries) {
            JsonOut.Members answer = OrderJson.standing(standing)
                    .put("quotations", JsonOut.list(quoted, OrderJson::quotation))
                    .put("entries", JsonOut.list(entries, OrderJson::entry));
            if (standing.state() == OrderState.CANCELLED) {
                answer.put("left", LeftOfOrder.of(reading, standing.name()).json());
            }
            if (kit && !standing.kit().isEmpty()) {
                answer.put("lines", JsonOut.list(reading.orders().lines(standing.kit()), OrderJson::line));
            }
            if (findings) {
                answer.put("findings", JsonOut.list(KeptFinding.of(reading, standing), KeptFinding::json));
            }
            return answer;
        }

        private Outcome<Integer> show(Screen screen, Reading reading, OrderStanding standing) {
            List<QuotedVersion> quoted = reading.orders().quotations(standing.name());
            List<Entry> entries = reading.journal().of(new Subject("order", standing.name()));
            if (json()) {
                screen.line(answer(reading, standing, quoted, entries).written().stripTrailing());
                return Outcome.sound(Exit.OK);
            }
            screen.heading(line(standing) + ", " + reading.persons().shown(standing.customer()));
            if (standing.state() == OrderState.CANCELLED) {
                LeftOfOrder.of(reading, standing.name()).sentences().forEach(each -> screen.wrapped(2, each));
            }
            quoted.forEach(each -> screen.wrapped(2, OrderOffers.line(each)));
            entries.forEach(each -> screen.wrapped(2, BookGroup.line(each, reading)));
            if (findings) {
                KeptFinding.of(reading, standing)
                        .forEach(each -> screen.wrapped(2, each.severity() + ", " + each.by() + ": " + each.says()));
            }
            if (kit && !standing.kit().isEmpty()) {
                reading.orders()
                        .lines(standing.kit())
                        .forEach(each ->
                                screen.line("  ".repeat(each.level()) + each.part() + " " + each.revision() + "  "
                                        + each.quantity().toPlainString() + " " + each.unit()
                                        + (each.finish().isEmpty() ? "" : ", " + each.finish())));
            }
            return Outcome.sound(Exit.OK);
        }
    }

    /** 'BL-1001, pannier-van: quoted (version 2), due 2026-06-19'. */
    static String line(OrderStanding order) {
        String version = order.confirmed() > 0
                ? " (version " + order.confirmed() + ")"
                : order.version() > 0 ? " (version " + order.version() + ")" : "";
        return order.name() + ", " + order.family() + ": " + order.state().written() + version
                + (order.due().isEmpty() ? "" : ", due " + order.due());
    }

    /** A state as people type it. */
    static final class Typed implements ITypeConverter<OrderState> {
        @Override
        public OrderState convert(String typed) {
            String wanted = typed.toLowerCase(Locale.ROOT).replace('-', ' ');
            return OrderState.ALL.stream()
                    .filter(state -> state.written().equals(wanted))
                    .findFirst()
                    .orElseThrow(() -> new TypeConversionException("'" + typed + "'; expected one of "
                            + OrderState.ALL.stream()
                                    .map(state -> state.written().replace(' ', '-'))
                                    .collect(Collectors.joining(", "))));
        }
    }
}
