package boltlore.cli;

import boltlore.book.OrderStanding;
import boltlore.book.OrderState;
import boltlore.book.QuotedVersion;
import boltlore.book.db.Book;
import boltlore.book.db.Place;
import boltlore.book.orders.AsBuiltRecord;
import boltlore.book.orders.Bench;
import boltlore.book.orders.KeptFinding;
import boltlore.book.orders.LeftOfOrder;
import boltlore.book.orders.OrderDesk;
import boltlore.book.orders.OrderDesk.Asked;
import boltlore.book.orders.OrderJson;
import boltlore.book.orders.VersionsDiffer;
import boltlore.faults.Fault;
import boltlore.faults.Outcome;
import boltlore.json.CurrencyReading;
import boltlore.json.JsonOut;
import boltlore.measure.Money;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Currency;
import java.util.List;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Quoting an order of the book, confirming it, moving it on. */
final class OrderOffers {

    private OrderOffers() {}

    /** Makes a version of the quotation. */
    @Command(
            name = "quote",
            description =
                    "Quote an order as it was last taken down: a new version, while the earlier ones stay readable.")
    static final class Quote extends BookCommand {

        @Mixin
        private OrderCommand.Numbered order = new OrderCommand.Numbered();

        @Mixin
        private CatalogueOption catalogue = new CatalogueOption();

        @Option(
                names = "--discount",
                paramLabel = "PERCENT",
                converter = DiscountGiven.class,
                description = "Discount in per cent, in place of the partner's.")
        private @Nullable BigDecimal discount;

        @Option(
                names = "--currency",
                paramLabel = "CODE",
                description = "Currency to quote in, as GBP (ISO 4217), in place of the partner's or the workshop's.")
        private @Nullable String currency;

        @Mixin
        private OrderCommand.Reason reason = new OrderCommand.Reason();

        @Override
        Outcome<Integer> answer(Screen screen, Place place) {
            HeadStart.forKits();
            return onOrder(
                    place,
                    order,
                    reason,
                    at -> CatalogueSession.of(catalogue)
                            .then(session -> asked().then(asked -> new OrderDesk(at.book(), at.by())
                                    .quote(at.order(), bench(session, catalogue), asked, at.reason())))
                            .then(written -> written(
                                    screen, written, OrderJson::quotation, quoted -> told(screen, at.book(), quoted))));
        }

        /** What stops it is told at once: it keeps the order from being confirmed. */
        private static void told(Screen screen, Book book, QuotedVersion quoted) {
            screen.wrapped(0, quoted.order() + ", " + line(quoted));
            List<KeptFinding> found =
                    book.read(reading -> KeptFinding.in(reading, quoted.stands().findings()));
            found.stream()
                    .filter(KeptFinding::stops)
                    .forEach(stop -> screen.wrapped(2, "Stop, " + stop.by() + ": " + stop.says()));
            long checks = found.stream().filter(KeptFinding::isToCheck).count();
            if (checks > 0) {
                screen.wrapped(
                        2, checks + " to check: 'boltlore order show " + quoted.order() + " --findings' tells each.");
            }
        }

        private Outcome<Asked> asked() {
            if (currency == null) {
                return Outcome.sound(new Asked(discount, null));
            }
            return CurrencyReading.known(currency)
                    .map(known -> Outcome.sound(new Asked(discount, known)))
                    .orElseGet(() ->
                            Outcome.faulty(Fault.of("--currency", "'" + currency + "'", CurrencyReading.EXPECTED, "")));
        }
    }

    private static Bench bench(CatalogueSession session, CatalogueOption catalogue) {
        return new Bench(session.catalogue(), session.resolver(), catalogue.folder());
    }

    /** 'version 2 of 2026-11-30, valid until 2026-12-30: EUR 41,200.00 before tax, EUR 49,028.00 in all, 84 days'. */
    static String line(QuotedVersion quoted) {
        Currency currency = Currency.getInstance(quoted.offer().currency());
        return "version " + quoted.version() + " of " + quoted.offer().on() + ", valid until "
                + quoted.offer().validUntil() + ": " + Money.says(quoted.offer().net(), currency) + " before tax, "
                + Money.says(quoted.offer().total(), currency) + " in all, "
                + quoted.offer().leadDays() + " days";
    }

    /** Says what differs between two versions. */
    @Command(
            name = "versions",
            description = "List the versions of an order's quotation, or say what differs between two of them.")
    static final class Versions extends BookCommand {

        @Mixin
        private OrderCommand.Numbered order = new OrderCommand.Numbered();

        @Parameters(arity = "0..2", paramLabel = "VERSION", description = "Two versions to compare.")
        private List<Integer> compared = List.of();

        @Override
        Outcome<Integer> answer(Screen screen, Place place) {
            return order.read()
                    .then(name -> inBook(
                            place,
                            book -> book.read(reading -> OrderDesk.standing(reading, name)
                                    .then(known -> compared.size() == 2
                                            ? VersionsDiffer.of(reading, name, compared.get(0), compared.get(1))
                                                    .then(differ -> differ(screen, differ))
                                            : listed(screen, reading.orders().quotations(name))))));
        }

        private Outcome<Integer> listed(Screen screen, List<QuotedVersion> all) {
            answer(
                    screen,
                    all,
                    versions -> JsonOut.list(versions, OrderJson::quotation),
                    versions -> versions.forEach(each -> screen.wrapped(0, line(each))));
            return Outcome.sound(Exit.OK);
        }

        private Outcome<Integer> differ(Screen screen, VersionsDiffer differ) {
            answer(screen, differ, VersionsDiffer::json, said -> {
                screen.wrapped(0, line(said.before()));
                screen.wrapped(0, line(said.after()));
                said.said().forEach(each -> screen.wrapped(2, each.toString()));
                said.kit().changes().forEach(each -> screen.wrapped(2, each.toString()));
                if (said.said().isEmpty() && said.kit().changes().isEmpty()) {
                    screen.wrapped(2, "The same order and the same kit.");
                }
                if (!said.sameCatalogue()) {
                    screen.wrapped(2, "The catalogue was changed between the two.");
                }
            });
            return Outcome.sound(Exit.OK);
        }
    }

    /** Freezes what was quoted. */
    @Command(
            name = "confirm",
            description = "Confirm the last quotation: choices, catalogue, kit and price are frozen from then on.")
    static final class Confirm extends BookCommand {

        @Mixin
        private OrderCommand.Numbered order = new OrderCommand.Numbered();

        @Option(
                names = "--due",
                paramLabel = "DATE",
                converter = Day.class,
                description = "The day that is agreed; without it the draft's.")
        private @Nullable LocalDate due;

        @Mixin
        private OrderCommand.Reason reason = new OrderCommand.Reason();

        @Mixin
        private Sure sure = new Sure();

        @Override
        Outcome<Integer> answer(Screen screen, Place place) {
            return onOrder(
                    place,
                    order,
                    reason,
                    at -> sure.of(screen, at.order() + " is frozen as it was quoted")
                            .then(asked -> new OrderDesk(at.book(), at.by()).confirm(at.order(), due, at.reason()))
                            .then(written -> written(
                                    screen,
                                    written,
                                    OrderJson::standing,
                                    now -> screen.wrapped(0, OrderCommand.line(now)))));
        }
    }

    /** Moves an order on. */
    @Command(name = "move", description = "Say that an order is in work, tested, shipped, lost or cancelled.")
    static final class Move extends BookCommand {

        @Mixin
        private OrderCommand.Numbered order = new OrderCommand.Numbered();

        @Parameters(
                index = "1",
                paramLabel = "STATE",
                converter = OrderCommand.Typed.class,
                description = "in-work, tested, shipped, lost, cancelled.")
        private OrderState to = OrderState.DRAFT;

        @Option(
                names = "--yes",
                description =
                        "Pass what holds the order and a person may answer for; --reason says why, and both stay with"
                                + " the entry.")
        private boolean yes;

        @Mixin
        private OrderCommand.Reason reason = new OrderCommand.Reason();

        @Override
        Outcome<Integer> answer(Screen screen, Place place) {
            return onOrder(
                    place,
                    order,
                    reason,
                    at -> (to == OrderState.SHIPPED || to == OrderState.CANCELLED
                                    ? Sure.of(screen, yes, at.order() + " becomes " + to.written())
                                    : Outcome.sound(true))
                            .then(asked -> new OrderDesk(at.book(), at.by()).move(at.order(), to, yes, at.reason()))
                            .then(written -> written(
                                    screen, written, OrderJson::standing, now -> moved(screen, at.book(), now))));
        }

        /** What leaves the workshop is written down: what is not is told, and stops nothing; so is what was bought in vain. */
        private static void moved(Screen screen, Book book, OrderStanding now) {
            screen.wrapped(0, OrderCommand.line(now));
            if (now.state() == OrderState.CANCELLED) {
                LeftOfOrder left = book.read(reading -> LeftOfOrder.of(reading, now.name()));
                left.sentences().forEach(each -> screen.wrapped(2, each));
                if (left.bought().stream().anyMatch(each -> each.open() > 0)) {
                    screen.wrapped(
                            2,
                            "Ask the suppliers whether what has not come may stay away; 'boltlore purchase close NUMBER'"
                                    + " writes down what will not come.");
                }
            }
            if (now.state() == OrderState.TESTED || now.state() == OrderState.SHIPPED) {
                int differences = book.read(reading -> AsBuiltRecord.of(reading, now))
                        .differences()
                        .size();
                if (differences > 0) {
                    screen.wrapped(
                            2,
                            "Differs from what was designed, or is not written down: " + differences
                                    + " parts; 'boltlore" + " built show " + now.name() + "' names them.");
                }
            }
        }
    }
}
