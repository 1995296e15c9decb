package boltlore.book.orders;

import boltlore.book.By;
import boltlore.book.Frozen;
import boltlore.book.Held;
import boltlore.book.KitNeed;
import boltlore.book.OrderHappening;
import boltlore.book.OrderStanding;
import boltlore.book.OrderState;
import boltlore.book.QuotedVersion;
import boltlore.book.StockHappening;
import boltlore.book.db.Book;
import boltlore.book.db.Orders;
import boltlore.book.db.Reading;
import boltlore.book.db.Writing;
import boltlore.book.db.Written;
import boltlore.faults.Fault;
import boltlore.faults.Outcome;
import boltlore.order.Order;
import boltlore.trades.costing.quote.Quotation;
import boltlore.trades.costing.quote.QuoteRequest;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Currency;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** The calls by which an order becomes a draft, is quoted, confirmed and moved on. */
public final class OrderDesk {

    private final Book book;
    private final By by;

    public OrderDesk(Book book, By by) {
        this.book = book;
        this.by = by;
    }

    /** Takes orders down, or takes them down otherwise; they may be partial. All of them or none. */
    public Outcome<Written<List<OrderStanding>>> draft(List<Order> orders, String reason) {
        return book.write(
                by,
                writing -> Outcome.all(orders.stream()
                        .map(order -> draft(writing, order, reason))
                        .toList()));
    }

    private static Outcome<OrderStanding> draft(Writing writing, Order order, String reason) {
        OrderStanding known = writing.orders().find(order.name()).orElse(null);
        if (known != null && !known.state().open()) {
            return Outcome.faulty(notOpen(known, "a draft or a quoted order"));
        }
        return ofItsOwn(writing, order.name())
                .then(own -> KeyedOrder.of(writing, order))
                .then(keyed -> {
                    String content = writing.keep(keyed.content());
                    if (known == null || !known.draft().equals(content)) {
                        writing.add(drafted(keyed.order(), content), reason);
                    }
                    return standing(writing, order.name());
                });
    }

    /** Numbers that differ by small and capital letters alone are one on paper, in file names and when they are read out. */
    static Outcome<String> ofItsOwn(Reading reading, String name) {
        return reading.orders().find(name).isPresent()
                ? Outcome.sound(name)
                : reading.orders()
                        .alike(name)
                        .map(other -> Outcome.<String>faulty(Fault.of(
                                "",
                                "the order number '" + name + "' beside '" + other + "'",
                                "a number that differs by more than small and capital letters",
                                "")))
                        .orElseGet(() -> Outcome.sound(name));
    }

    static OrderHappening.Drafted drafted(Order keyed, String content) {
        return new OrderHappening.Drafted(
                keyed.name(), keyed.family(), keyed.customer(), keyed.partner(), keyed.due(), choices(keyed), content);
    }

    static SortedMap<String, String> choices(Order order) {
        SortedMap<String, String> choices = new TreeMap<>();
        order.choices().values().forEach((option, value) -> choices.put(option.text(), value));
        return choices;
    }

    /** What is asked of a quotation beside what the order has agreed. */
    public record Asked(
            @Nullable BigDecimal discountPercent, @Nullable Currency currency) {}

    /** Quotes an order as it was last taken down: a new version, while the earlier ones stay. */
    public Outcome<Written<QuotedVersion>> quote(String name, Bench bench, Asked asked, String reason) {
        Outcome<OrderStanding> known = book.read(reading -> standing(reading, name));
        return known.then(standing -> standing.state().open()
                        ? Outcome.sound(standing)
                        : Outcome.<OrderStanding>faulty(notOpen(standing, "a draft or a quoted order")))
                .then(standing -> quote(standing, bench, asked, reason));
    }

    private Outcome<Written<QuotedVersion>> quote(OrderStanding standing, Bench bench, Asked asked, String reason) {
        byte[] draft = book.read(reading -> reading.contents().of(standing.draft()));
        QuoteRequest request = new QuoteRequest(by.today(), asked.discountPercent(), asked.currency());
        return bench.order(standing.name(), draft)
                .then(order -> bench.resolve(order, request))
                .then(resolved -> KeptCatalogue.of(bench.folder(), bench.catalogue())
                        .then(catalogue ->
                                book.write(by, writing -> quoted(writing, standing, resolved, catalogue, reason))));
    }

    private static Outcome<QuotedVersion> quoted(
            Writing writing, OrderStanding before, Bench.Resolved resolved, KeptCatalogue catalogue, String reason) {
        return standing(writing, before.name()).then(now -> {
            if (!now.draft().equals(before.draft())
                    || now.version() != before.version()
                    || !now.state().open()) {
                return Outcome.faulty(changed(now));
            }
            Quotation quotation = resolved.pricing().quotation().orElseThrow();
            Frozen stands = new Frozen(
                    now.draft(),
                    writing.keep(Kitted.lines(resolved.kit().bill())),
                    catalogue.keep(writing),
                    writing.keep(Kitted.figures(quotation)),
                    writing.keep(Kitted.cost(resolved.pricing())),
                    writing.keep(KeptFinding.write(resolved.found())),
                    writing.keep(KitNeed.write(Kitted.needs(resolved.kit()))));
            writing.add(
                    new OrderHappening.Quoted(now.name(), now.version() + 1, Kitted.offer(quotation), stands), reason);
            return Outcome.sound(last(writing.orders(), now.name()));
        });
    }

    /**
     * Freezes an order as it was quoted last.
     *
     * @param due day that is agreed, or null to keep the draft's
     * @param reason asked for where the quotation has run out
     */
    public Outcome<Written<OrderStanding>> confirm(String name, @Nullable LocalDate due, String reason) {
        return book.write(
                by,
                writing -> standing(writing, name).then(now -> {
                    if (now.state() != OrderState.QUOTED) {
                        return Outcome.faulty(notOpen(now, "a quoted order"));
                    }
                    QuotedVersion quoted = last(writing.orders(), name);
                    if (!quoted.stands().order().equals(now.draft())) {
                        return Outcome.faulty(Fault.of(
                                "order " + name,
                                "a draft that was changed after version " + now.version() + " was quoted",
                                "a quotation of what is ordered",
                                "'boltlore order quote " + name + "' makes version " + (now.version() + 1) + "."));
                    }
                    if (by.today().isAfter(quoted.offer().validUntil()) && reason.isBlank()) {
                        return Outcome.faulty(Fault.of(
                                "order " + name,
                                "a quotation that was valid until "
                                        + quoted.offer().validUntil(),
                                "one that is valid on " + by.today(),
                                "Quote again, or say with --reason why it is taken all the same."));
                    }
                    List<Fault> held = HoldPoints.beforeConfirming(writing, quoted).stream()
                            .map(point -> point.fault(name))
                            .toList();
                    if (!held.isEmpty()) {
                        return Outcome.faulty(held);
                    }
                    LocalDate agreed = due != null || now.due().isEmpty() ? due : LocalDate.parse(now.due());
                    writing.add(new OrderHappening.Ordered(name, quoted.version(), agreed), reason);
                    return standing(writing, name);
                }));
    }

    /** Says that an order stands elsewhere now, past no hold point. */
    public Outcome<Written<OrderStanding>> move(String name, OrderState to, String reason) {
        return move(name, to, false, reason);
    }

    /**
     * Says that an order stands elsewhere now. What holds it on its way is told; what a person may answer for is passed by
     * only where the person says so, with the reason, and stands with the entry.
     *
     * @param release whether the person passes what may be passed
     */
    public Outcome<Written<OrderStanding>> move(String name, OrderState to, boolean release, String reason) {
        return book.write(
                by,
                writing -> standing(writing, name).then(now -> {
                    if (!now.state().next().contains(to)) {
                        String may = now.state().next().stream()
                                .map(OrderState::written)
                                .collect(Collectors.joining(", "));
                        return Outcome.faulty(Fault.of(
                                "order " + name,
                                "'" + now.state().written() + "', from where it does not go to '" + to.written() + "'",
                                may.isEmpty() ? "nothing further" : "one of " + may,
                                to == OrderState.QUOTED || to == OrderState.ORDERED
                                        ? "'boltlore order quote' and 'boltlore order confirm' do that."
                                        : ""));
                    }
                    boolean back = now.state() == OrderState.TESTED && to == OrderState.IN_WORK;
                    if (reason.isBlank() && (to == OrderState.LOST || to == OrderState.CANCELLED || back)) {
                        return Outcome.faulty(
                                Fault.of("order " + name, "no reason", "why it is " + to.written(), "Add --reason."));
                    }
                    List<HoldPoint> points = HoldPoints.before(writing, now, to);
                    boolean passes = release && !reason.isBlank();
                    List<Fault> held = points.stream()
                            .filter(point -> !passes || !point.mayBeReleased())
                            .map(point -> point.fault(name))
                            .toList();
                    return held.isEmpty() ? moved(writing, now, to, points, reason) : Outcome.faulty(held);
                }));
    }

    /** What was kept in the stores for an order that needs it no more is free again. */
    private static Outcome<OrderStanding> moved(
            Writing writing, OrderStanding now, OrderState to, List<HoldPoint> released, String reason) {
        writing.add(
                new OrderHappening.Moved(
                        now.name(), to, released.stream().map(HoldPoint::found).toList()),
                reason);
        if (to == OrderState.SHIPPED || to == OrderState.CANCELLED) {
            writing.stock().reservations().stream()
                    .filter(kept -> kept.order().equals(now.name()))
                    .forEach(kept -> writing.add(
                            new StockHappening.Reserved(
                                    new Held(kept.part(), kept.finish(), "", "", ""), BigDecimal.ZERO, now.name()),
                            ""));
        }
        return standing(writing, now.name());
    }

    /** Keeps the hashes of sheets that were given out. */
    public Outcome<Written<OrderStanding>> issue(String name, SortedMap<String, String> sheets) {
        return book.write(
                by,
                writing -> standing(writing, name).then(now -> {
                    writing.add(new OrderHappening.Issued(name, sheets), "");
                    return standing(writing, name);
                }));
    }

    /** Where an order stands; faulty where there is none of that number. */
    public static Outcome<OrderStanding> standing(Reading reading, String name) {
        return reading.orders()
                .find(name)
                .map(Outcome::sound)
                .orElseGet(() -> Outcome.faulty(Fault.of(
                        "",
                        "the order '" + name + "'",
                        "an order of the book",
                        "'boltlore order list' shows them; 'boltlore order draft FILE' takes one down.")));
    }

    private static QuotedVersion last(Orders orders, String name) {
        List<QuotedVersion> all = orders.quotations(name);
        return all.get(all.size() - 1);
    }

    private static Fault notOpen(OrderStanding standing, String expected) {
        return Fault.of(
                "order " + standing.name(),
                "'" + standing.state().written() + "'",
                expected,
                standing.state().frozen()
                        ? "It is frozen: 'boltlore change propose " + standing.name()
                                + "' changes it by a change order."
                        : "");
    }

    private static Fault changed(OrderStanding now) {
        return Fault.of(
                "order " + now.name(),
                "a draft that another desk has changed just now",
                "the draft that the kit was resolved from",
                "Look at it and quote again; nothing was written.");
    }
}
