package boltlore.cli;

import boltlore.book.ChangeHappening.Asker;
import boltlore.book.ChangeState;
import boltlore.book.OrderChange;
import boltlore.book.OrderStanding;
import boltlore.book.db.Book;
import boltlore.book.db.Place;
import boltlore.book.db.Written;
import boltlore.book.orders.Bench;
import boltlore.book.orders.ChangeDesk;
import boltlore.book.orders.ChangeEffect;
import boltlore.book.orders.KeptBench;
import boltlore.book.orders.OrderDesk;
import boltlore.book.orders.OrderJson;
import boltlore.book.orders.Touched;
import boltlore.catalogue.json.CatalogueReader;
import boltlore.faults.Outcome;
import boltlore.json.JsonOut;
import boltlore.json.TextShape;
import boltlore.measure.Money;
import boltlore.order.Order;
import boltlore.order.json.OrderReader;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.Currency;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Change orders and service orders. */
@Command(
        name = "change",
        description =
                "Change a frozen order by a numbered change order, add to a shipped one; 'change --help' lists how.",
        subcommands = {
            ChangeCommand.Propose.class,
            ChangeCommand.Listed.class,
            ChangeCommand.Decide.class,
            ChangeCarry.class,
            ServiceCommand.class,
            ChangeCommand.Touches.class
        })
final class ChangeCommand extends BookGroup {

    /** Proposes one. */
    @Command(
            name = "propose",
            description = "Propose a change of a frozen order, and say what comes in and goes out, what of it is done"
                    + " already, cost and days.")
    static final class Propose extends BookCommand {

        @Mixin
        private OrderCommand.Numbered order = new OrderCommand.Numbered();

        @Parameters(
                index = "1",
                arity = "0..1",
                paramLabel = "FILE",
                description = "The order as it would be; without it the order stays as it is, on another catalogue.")
        private @Nullable Path file;

        @Option(
                names = "--catalogue",
                paramLabel = "FOLDER",
                description = "The catalogue that it would stand on; without it the one that was frozen with it.")
        private @Nullable Path catalogue;

        @Option(names = "--asked-by", paramLabel = "WHO", description = "customer, workshop or supplier.")
        private Asker asker = Asker.CUSTOMER;

        @Mixin
        private OrderCommand.Reason reason = new OrderCommand.Reason();

        @Override
        Outcome<Integer> answer(Screen screen, Place place) {
            HeadStart.forKits();
            return onOrder(
                    place,
                    order,
                    reason,
                    at -> onBench(
                                    at.book(),
                                    at.order(),
                                    bench -> read(bench)
                                            .then(read -> new ChangeDesk(at.book(), at.by())
                                                    .propose(
                                                            at.order(),
                                                            read.isEmpty() ? null : read.get(0),
                                                            bench,
                                                            asker,
                                                            at.reason())))
                            .then(written ->
                                    written(screen, written, ChangeEffect::json, effect -> print(screen, effect))));
        }

        private Outcome<Written<ChangeEffect>> onBench(
                Book book, String name, Function<Bench, Outcome<Written<ChangeEffect>>> work) {
            if (catalogue != null) {
                Path folder = catalogue;
                return CatalogueReader.read(folder).then(read -> work.apply(Bench.of(read, folder)));
            }
            Outcome<OrderStanding> standing = book.read(reading -> ChangeDesk.owed(reading, name));
            return standing.then(now -> KeptBench.with(book, now.catalogue(), work));
        }

        private Outcome<List<Order>> read(Bench bench) {
            return file == null
                    ? Outcome.sound(List.of())
                    : OrderReader.read(file, bench.catalogue()).then(order -> Outcome.sound(List.of(order)));
        }
    }

    static void print(Screen screen, ChangeEffect effect) {
        screen.heading(line(effect.change()));
        effect.said().forEach(each -> screen.wrapped(2, each.toString()));
        effect.kit().changes().forEach(each -> screen.wrapped(2, each.toString()));
        effect.done().forEach(each -> screen.wrapped(2, each.toString()));
        screen.wrapped(2, figures(effect));
    }

    private static String figures(ChangeEffect effect) {
        Currency currency = Currency.getInstance(effect.change().currency());
        BigDecimal net = effect.netDifference();
        BigDecimal cost = effect.costDifference();
        String price = net == null ? "the price before was in another currency" : signed(net, currency) + " before tax";
        return "Price: " + price
                + (cost == null ? "" : "; cost: " + signed(cost, Currency.getInstance(effect.costCurrency())))
                + "; lead time: " + (effect.dayDifference() < 0 ? "" : "+") + effect.dayDifference() + " days.";
    }

    private static String signed(BigDecimal amount, Currency currency) {
        return (amount.signum() < 0 ? "" : "+") + Money.says(amount, currency);
    }

    static String line(OrderChange change) {
        return change.order() + ", change " + change.number() + " (" + change.asker() + "): "
                + change.state().written() + " – " + change.reason();
    }

    /** Lists them. */
    @Command(
            name = "list",
            description =
                    "List the changes of an order with what they come to, or all that are proposed and not decided.")
    static final class Listed extends BookCommand {

        @Parameters(arity = "0..1", paramLabel = "NUMBER", description = "The order's number; without it all orders.")
        private String order = "";

        @Override
        Outcome<Integer> answer(Screen screen, Place place) {
            if (order.isEmpty()) {
                return inBook(place, book -> {
                    answer(
                            screen,
                            book.<List<OrderChange>>read(
                                    reading -> reading.changes().in(ChangeState.PROPOSED)),
                            all -> JsonOut.list(all, OrderJson::change),
                            all -> all.forEach(each -> screen.wrapped(0, line(each))));
                    return Outcome.sound(Exit.OK);
                });
            }
            return Said.text("NUMBER", order, TextShape.ORDER_NAME)
                    .then(name -> inBook(
                            place,
                            book -> book.read(reading -> OrderDesk.standing(reading, name)
                                    .then(standing -> {
                                        answer(
                                                screen,
                                                reading.changes().of(name).stream()
                                                        .map(each -> ChangeEffect.of(reading, standing, each))
                                                        .toList(),
                                                all -> JsonOut.list(all, ChangeEffect::json),
                                                all -> all.forEach(each -> print(screen, each)));
                                        return Outcome.sound(Exit.OK);
                                    }))));
        }
    }

    /** Decides one. */
    @Command(
            name = "decide",
            description = "Accept or drop a proposed change, or say that an accepted one is carried out and verified.")
    static final class Decide extends BookCommand {

        enum To {
            ACCEPT,
            DROP,
            DONE
        }

        @Mixin
        private OrderCommand.Numbered order = new OrderCommand.Numbered();

        @Parameters(index = "1", paramLabel = "CHANGE", description = "The change's number within the order.")
        private int number;

        @Parameters(index = "2", paramLabel = "DECISION", description = "accept, drop or done.")
        private To to = To.DROP;

        @Mixin
        private OrderCommand.Reason reason = new OrderCommand.Reason();

        @Override
        Outcome<Integer> answer(Screen screen, Place place) {
            ChangeState state = switch (to) {
                case ACCEPT -> ChangeState.ACCEPTED;
                case DROP -> ChangeState.DROPPED;
                case DONE -> ChangeState.CARRIED_OUT;
            };
            return onOrder(
                    place,
                    order,
                    reason,
                    at -> new ChangeDesk(at.book(), at.by())
                            .decide(at.order(), number, state, at.reason())
                            .then(written -> written(
                                    screen, written, OrderJson::change, each -> screen.wrapped(0, line(each)))));
        }
    }

    /** Says whom an edit of the catalogue touches. */
    @Command(
            name = "touches",
            description = "Say which drafts, open orders and shipped kits hold what the catalogue, as it is now, has"
                    + " otherwise than when they were resolved: by part, revision and choice.")
    static final class Touches extends BookCommand {

        @Mixin
        private CatalogueOption catalogue = new CatalogueOption();

        @Override
        Outcome<Integer> answer(Screen screen, Place place) {
            return by().then(by -> CatalogueSession.of(catalogue)
                    .then(session -> inBook(
                            place,
                            book -> Touched.by(
                                            book,
                                            new Bench(session.catalogue(), session.resolver(), catalogue.folder()),
                                            by.today())
                                    .then(touched -> {
                                        answer(
                                                screen,
                                                touched,
                                                all -> JsonOut.list(all, Touched::json),
                                                all -> all.forEach(each -> {
                                                    screen.heading(OrderCommand.line(each.order()));
                                                    each.what().forEach(what -> screen.wrapped(2, what));
                                                }));
                                        if (!json()) {
                                            screen.wrapped(0, touched.size() + " orders.");
                                        }
                                        return Outcome.sound(Exit.OK);
                                    }))));
        }
    }
}
