package boltlore.book.orders;

import boltlore.book.By;
import boltlore.book.ChangeHappening;
import boltlore.book.ChangeHappening.Asker;
import boltlore.book.ChangeState;
import boltlore.book.Frozen;
import boltlore.book.KitLine;
import boltlore.book.KitLines;
import boltlore.book.KitNeed;
import boltlore.book.OrderChange;
import boltlore.book.OrderStanding;
import boltlore.book.OrderState;
import boltlore.book.db.Book;
import boltlore.book.db.Reading;
import boltlore.book.db.Writing;
import boltlore.book.db.Written;
import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Part;
import boltlore.faults.Fault;
import boltlore.faults.Outcome;
import boltlore.measure.PartNumber;
import boltlore.order.Order;
import boltlore.trades.costing.quote.Quotation;
import boltlore.trades.costing.quote.QuoteRequest;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * The calls by which a frozen order is changed (ISO 10007:2017, 5.4): a change is proposed and evaluated, decided, carried
 * out and verified; each has a number and a reason.
 */
public final class ChangeDesk {

    private final Book book;
    private final By by;

    public ChangeDesk(Book book, By by) {
        this.book = book;
        this.by = by;
    }

    /**
     * Proposes a change: what the order would say, or the same order on another catalogue.
     *
     * @param order as it would be, with names; or null for the order as it is
     * @param bench of the catalogue that it would stand on
     */
    public Outcome<Written<ChangeEffect>> propose(
            String name, @Nullable Order order, Bench bench, Asker asker, String reason) {
        if (reason.isBlank()) {
            return Outcome.faulty(noReason(name, "the justification of the change"));
        }
        if (order != null && !order.name().equals(name)) {
            return Outcome.faulty(Fault.of(
                    "order " + name, "a file of order '" + order.name() + "'", "this order as it would be", ""));
        }
        return book.read(reading -> owed(reading, name)).then(standing -> {
            Outcome<Order> wanted = order != null
                    ? Outcome.sound(order)
                    : bench.order(name, book.read(reading -> reading.contents().of(standing.draft())));
            return wanted.then(asked -> bench.resolve(asked, new QuoteRequest(by.today(), null, null))
                    .then(resolved -> KeptCatalogue.of(bench.folder(), bench.catalogue())
                            .then(catalogue -> book.write(by, writing -> {
                                Outcome<KeyedOrder> keyed = order == null
                                        ? Outcome.sound(new KeyedOrder(asked))
                                        : KeyedOrder.of(writing, asked);
                                return keyed.then(
                                        kept -> proposed(writing, standing, kept, resolved, catalogue, asker, reason));
                            }))));
        });
    }

    private static Outcome<ChangeEffect> proposed(
            Writing writing,
            OrderStanding before,
            KeyedOrder order,
            Bench.Resolved resolved,
            KeptCatalogue catalogue,
            Asker asker,
            String reason) {
        return owed(writing, before.name()).then(now -> {
            String kit = writing.keep(Kitted.lines(resolved.kit().bill()));
            String content = writing.keep(order.content());
            if (kit.equals(now.resolved()) && content.equals(now.draft())) {
                return Outcome.faulty(Fault.of(
                        "order " + now.name(),
                        "the order and the kit as they are",
                        "something that changes",
                        "Nothing was written."));
            }
            Frozen stands = stands(writing, resolved, catalogue, content, kit);
            int number = writing.changes().of(now.name()).size() + 1;
            writing.add(
                    new ChangeHappening.Proposed(
                            now.name(),
                            number,
                            asker,
                            now.resolved(),
                            Kitted.offer(resolved.pricing().quotation().orElseThrow()),
                            OrderDesk.choices(order.order()),
                            stands),
                    reason);
            return Outcome.sound(ChangeEffect.of(
                    writing, now, writing.changes().find(now.name(), number).orElseThrow()));
        });
    }

    private static Frozen stands(
            Writing writing, Bench.Resolved resolved, KeptCatalogue catalogue, String content, String kit) {
        Quotation quotation = resolved.pricing().quotation().orElseThrow();
        return new Frozen(
                content,
                kit,
                catalogue.keep(writing),
                writing.keep(Kitted.figures(quotation)),
                writing.keep(Kitted.cost(resolved.pricing())),
                writing.keep(KeptFinding.write(resolved.found())),
                writing.keep(KitNeed.write(Kitted.needs(resolved.kit()))));
    }

    /** Accepts or drops a proposed change, or says that an accepted one is carried out and verified. */
    public Outcome<Written<OrderChange>> decide(String name, int number, ChangeState to, String reason) {
        return book.write(
                by,
                writing -> OrderDesk.standing(writing, name)
                        .then(standing -> change(writing, name, number)
                                .then(change -> mayBecome(writing, standing, change, to, reason)
                                        .then(sound -> {
                                            writing.add(new ChangeHappening.Decided(name, number, to), reason);
                                            return change(writing, name, number);
                                        }))));
    }

    private static Outcome<OrderChange> mayBecome(
            Reading reading, OrderStanding standing, OrderChange change, ChangeState to, String reason) {
        String which = "order " + change.order() + ", change " + change.number();
        if (!change.state().next().contains(to)) {
            String may =
                    change.state().next().stream().map(ChangeState::written).collect(Collectors.joining(" or "));
            return Outcome.faulty(Fault.of(
                    which,
                    "'" + change.state().written() + "', which does not become '" + to.written() + "'",
                    may.isEmpty() ? "nothing further" : may,
                    ""));
        }
        if (to == ChangeState.ACCEPTED && !standing.state().owed()) {
            return Outcome.faulty(notOwed(standing));
        }
        List<HoldPoint> held = switch (to) {
            case ACCEPTED -> HoldPoints.stops(reading, change.stands());
            case CARRIED_OUT -> HoldPoints.beforeCarriedOut(reading, standing, change);
            case PROPOSED, DROPPED -> List.of();
        };
        if (!held.isEmpty()) {
            return Outcome.faulty(
                    held.stream().map(point -> point.fault(change.order())).toList());
        }
        if (to == ChangeState.ACCEPTED && !change.from().equals(standing.resolved())) {
            return Outcome.faulty(Fault.of(
                    which,
                    "a change of a kit that is another one by now",
                    "one that was evaluated against the kit as it is",
                    "Drop it and propose it again: another change was accepted in between."));
        }
        return to == ChangeState.DROPPED && reason.isBlank()
                ? Outcome.faulty(noReason(change.order(), "why it is dropped"))
                : Outcome.sound(change);
    }

    /** Parts that a service order adds, how many of each. */
    public record Additional(String part, BigDecimal quantity) {}

    /** Adds parts to a kit that has been shipped. */
    public Outcome<Written<OrderChange>> serve(
            String name, List<Additional> parts, Catalogue catalogue, String currency, BigDecimal net, String reason) {
        if (reason.isBlank()) {
            return Outcome.faulty(noReason(name, "what they are for"));
        }
        return Outcome.all(parts.stream().map(each -> line(catalogue, each)).toList())
                .then(lines -> book.write(
                        by,
                        writing -> OrderDesk.standing(writing, name).then(now -> {
                            if (now.state() != OrderState.SHIPPED) {
                                return Outcome.faulty(Fault.of(
                                        "order " + name,
                                        "'" + now.state().written() + "'",
                                        "a shipped kit",
                                        now.state().owed()
                                                ? "'boltlore change propose " + name
                                                        + "' changes a kit that has not left."
                                                : ""));
                            }
                            List<KitLine> all = new ArrayList<>(writing.orders().lines(now.kit()));
                            all.addAll(lines);
                            String kit = writing.keep(KitLines.write(all));
                            int number = writing.changes().of(name).size() + 1;
                            writing.add(
                                    new ChangeHappening.ServiceAdded(name, number, lines, kit, currency, net), reason);
                            return change(writing, name, number);
                        })));
    }

    private static Outcome<KitLine> line(Catalogue catalogue, Additional added) {
        Part part = catalogue.parts().get(new PartNumber(added.part()));
        return part == null
                ? Outcome.faulty(Fault.of(
                        "",
                        "'" + added.part() + "'",
                        "a part of the catalogue",
                        "'boltlore parts' lists and searches them."))
                : Outcome.sound(Kitted.served(part, added.quantity()));
    }

    private static Outcome<OrderChange> change(Reading reading, String name, int number) {
        return reading.changes()
                .find(name, number)
                .map(Outcome::sound)
                .orElseGet(() -> Outcome.faulty(Fault.of(
                        "order " + name,
                        "no change " + number,
                        "a change of this order",
                        "'boltlore change list " + name + "' lists them.")));
    }

    /** The order, if it may be changed: confirmed, and not shipped. */
    public static Outcome<OrderStanding> owed(Reading reading, String name) {
        return OrderDesk.standing(reading, name)
                .then(now -> now.state().owed() ? Outcome.sound(now) : Outcome.faulty(notOwed(now)));
    }

    private static Fault notOwed(OrderStanding now) {
        return Fault.of(
                "order " + now.name(),
                "'" + now.state().written() + "'",
                "an order that is confirmed and has not left",
                now.state().open()
                        ? "Take it down otherwise: 'boltlore order draft'."
                        : now.state() == OrderState.SHIPPED ? "'boltlore change service' adds parts to it." : "");
    }

    private static Fault noReason(String order, String expected) {
        return Fault.of("order " + order, "no reason", expected, "Add --reason.");
    }
}
