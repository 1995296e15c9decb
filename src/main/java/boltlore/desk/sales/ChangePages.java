package boltlore.desk.sales;

import boltlore.asking.AskedHead;
import boltlore.book.ChangeHappening.Asker;
import boltlore.book.ChangeState;
import boltlore.book.OrderChange;
import boltlore.book.OrderStanding;
import boltlore.book.orders.ChangeDesk;
import boltlore.book.orders.ChangeEffect;
import boltlore.book.orders.KeptBench;
import boltlore.book.orders.KitsAtHand;
import boltlore.book.orders.OrderDesk;
import boltlore.catalogue.Option;
import boltlore.choices.Choices;
import boltlore.desk.frame.Acting;
import boltlore.desk.frame.Answer;
import boltlore.desk.frame.Call;
import boltlore.desk.frame.Names;
import boltlore.desk.frame.Room.Doors;
import boltlore.desk.frame.Told;
import boltlore.desk.frame.Typed;
import boltlore.desk.frame.Workshop;
import boltlore.faults.Outcome;
import boltlore.measure.Digits;
import boltlore.measure.Money;
import boltlore.order.LeftOut;
import boltlore.order.Order;
import boltlore.order.OrderBuilder;
import java.math.BigDecimal;
import java.util.Currency;
import java.util.List;
import java.util.Optional;

/** Change orders of a frozen kit, from what is asked to what is carried out, and parts that are added to a shipped one. */
public final class ChangePages {

    private static final String AT = SalesRoom.ORDER + "{order}";
    private static final String BRACKETS = AskedHead.BRACKETS.command();
    private static final int MOST_PIECES = 80;

    private final Workshop workshop;
    private final KitsAtHand kits;

    ChangePages(Workshop workshop, KitsAtHand kits) {
        this.workshop = workshop;
        this.kits = kits;
    }

    void open(Doors doors) {
        doors.look(AT + "/changes", this::list);
        doors.look(AT + "/change", this::ask);
        doors.act(AT + "/change", this::propose);
        doors.act(AT + "/decide", this::decide);
        new ServicePages(workshop).open(doors);
    }

    static String path(Call call) {
        return SalesRoom.ORDER + call.path("order") + "/changes";
    }

    private Answer list(Call call) {
        return workshop.book().read(reading -> {
            Outcome<OrderStanding> found = OrderDesk.standing(reading, call.path("order"));
            if (!(found instanceof Outcome.Sound<OrderStanding> sound)) {
                return OrderPages.missing(found);
            }
            List<Row> rows = reading.changes().of(sound.value().name()).stream()
                    .map(change -> row(sound.value(), change, ChangeEffect.of(reading, sound.value(), change)))
                    .toList();
            return Answer.page(
                    sound.value().name() + ": changes",
                    "sales/changes.jte",
                    new Changes(
                            Told.of(reading, call),
                            sound.value().name(),
                            rows,
                            sound.value().state().owed(),
                            sound.value().state().written().equals("shipped")));
        });
    }

    private Row row(OrderStanding order, OrderChange change, ChangeEffect effect) {
        Names names = workshop.names();
        Currency currency = Currency.getInstance(change.currency());
        BigDecimal net = effect.netDifference();
        List<String> pieces = effect.kit().changes().stream()
                .map(each -> (each.comesIn() ? "comes in: " : "goes out: ") + Digits.plain(each.amount()) + " "
                        + each.unit() + " " + names.piece(each.piece()))
                .toList();
        int more = pieces.size() - MOST_PIECES;
        return new Row(
                change.number(),
                change.asker(),
                change.state().written(),
                change.reason(),
                effect.said().stream()
                        .map(said -> names.said(order.family(), said))
                        .toList(),
                more > 0 ? pieces.subList(0, MOST_PIECES) : pieces,
                Math.max(0, more),
                effect.done().stream()
                        .map(each -> Digits.plain(each.quantity()) + " " + names.piece(each.piece()) + ": "
                                + each.stage() + " already")
                        .toList(),
                net == null
                        ? "the price before was in another currency"
                        : (net.signum() < 0 ? "" : "+") + Money.says(net, currency) + " before tax",
                (effect.dayDifference() < 0 ? "" : "+") + effect.dayDifference() + " days",
                change.state() == ChangeState.PROPOSED,
                change.state() == ChangeState.ACCEPTED);
    }

    /** What the order says now, each to be said otherwise. */
    private Answer ask(Call call) {
        Outcome<Order> found = workshop.book()
                .read(reading -> ChangeDesk.owed(reading, call.path("order"))
                        .then(owed -> kits.of(reading, owed.name(), call.today()))
                        .then(kit -> Outcome.sound(kit.order())));
        if (!(found instanceof Outcome.Sound<Order> sound)) {
            return OrderPages.missing(found);
        }
        Order order = sound.value();
        List<Asked> asked = order.choices().family().options().stream()
                .map(option -> asked(order, option, call))
                .toList();
        return Answer.page(
                order.name() + ": change it",
                "sales/change.jte",
                new Change(order.name(), asked, call.said(BRACKETS), brackets(order)));
    }

    /** A change may leave brackets that support nothing any more: nothing is packed before somebody has said what of them. */
    private static String brackets(Order order) {
        if (order.leftOut() instanceof LeftOut.Undecided) {
            return "not decided";
        }
        return order.leftOut() instanceof LeftOut.Keep ? "kept for later" : "left out";
    }

    private static Asked asked(Order order, Option option, Call call) {
        String field = "option-" + option.name().text();
        String now = order.choices().value(option.name()).orElse("");
        return new Asked(
                field,
                option.asks(),
                now,
                call.said(field).isEmpty() ? now : call.said(field),
                option.values().stream()
                        .map(value -> new Card.Fact(value.value(), value.says().english()))
                        .toList());
    }

    private Answer propose(Call call) {
        Typed typed = new Typed(call);
        String why = typed.reason("reason", "Why it changes");
        Asker asker = Optional.ofNullable(Asker.WORDS.byName().get(call.said("asker")))
                .orElse(Asker.CUSTOMER);
        String name = call.path("order");
        return Acting.done(
                call,
                path(call),
                by -> typed.sound()
                        .then(ok -> workshop.book().read(reading -> ChangeDesk.owed(reading, name)))
                        .then(owed -> KeptBench.of(
                                workshop.book(),
                                workshop.bench(),
                                owed.catalogue(),
                                bench -> workshop.book()
                                        .read(reading -> kits.of(reading, name, call.today()))
                                        .then(kit -> otherwise(kit.order(), call))
                                        .then(order -> new ChangeDesk(workshop.book(), by)
                                                .propose(name, order, bench, asker, why)))),
                this::ask);
    }

    private Outcome<Order> otherwise(Order order, Call call) {
        Choices choices = order.choices();
        for (Option option : choices.family().options()) {
            String said = call.said("option-" + option.name().text());
            if (option.value(said).isPresent()) {
                choices = choices.with(option.name(), said);
            }
        }
        Order changed = new OrderBuilder(order).choices(choices).build();
        String brackets = call.said(BRACKETS);
        return brackets.isEmpty()
                ? Outcome.sound(changed)
                : AskedHead.BRACKETS.said(changed, brackets, workshop.bench().catalogue());
    }

    private Answer decide(Call call) {
        Typed typed = new Typed(call);
        int number = typed.count("number", "Change");
        Optional<ChangeState> to =
                Optional.ofNullable(ChangeState.WORDS.byName().get(call.said("to")));
        if (to.isEmpty()) {
            typed.fault("to", "What becomes of it", "nothing", "accepted, dropped or carried out");
        }
        String why = typed.sentence("reason", "Reason");
        return Acting.done(
                call,
                path(call),
                by -> typed.sound()
                        .then(ok -> new ChangeDesk(workshop.book(), by)
                                .decide(call.path("order"), number, to.orElseThrow(), why)),
                this::list);
    }

    /** All changes of an order. */
    public record Changes(List<String> told, String number, List<Row> rows, boolean mayChange, boolean shipped) {}

    /**
     * A change, and what it comes to.
     *
     * @param pieces what comes in and goes out, the first of it
     * @param more how many pieces beside these
     * @param done what was done already of what goes out
     */
    public record Row(
            int number,
            String asker,
            String state,
            String reason,
            List<String> says,
            List<String> pieces,
            int more,
            List<String> done,
            String price,
            String days,
            boolean proposed,
            boolean accepted) {}

    /**
     * What may be said otherwise.
     *
     * @param brackets 'out' or 'keep' as it was typed, or empty for as it is
     * @param bracketsNow in words
     */
    public record Change(String number, List<Asked> asked, String brackets, String bracketsNow) {}

    /** A question with its answer. */
    public record Asked(String field, String asks, String now, String said, List<Card.Fact> values) {}
}
