package boltlore.desk.sales;

import boltlore.asking.KitFigures;
import boltlore.book.Offer;
import boltlore.book.OrderStanding;
import boltlore.book.OrderState;
import boltlore.book.QuotedVersion;
import boltlore.book.orders.DraftDesk.Draft;
import boltlore.book.orders.LeftOfOrder;
import boltlore.book.orders.OrderDesk;
import boltlore.desk.frame.Acting;
import boltlore.desk.frame.Answer;
import boltlore.desk.frame.Call;
import boltlore.desk.frame.Room.Doors;
import boltlore.desk.frame.Typed;
import boltlore.desk.frame.Workshop;
import boltlore.faults.Outcome;
import java.time.LocalDate;
import java.util.Currency;
import java.util.List;

/** What is looked at once more before an order is frozen: which version, for how much, and until when. */
public final class ConfirmPages {

    private final Workshop workshop;

    ConfirmPages(Workshop workshop) {
        this.workshop = workshop;
    }

    void open(Doors doors) {
        doors.look(SalesRoom.ORDER + "{order}/confirm", this::page);
        doors.act(SalesRoom.ORDER + "{order}/confirm", this::confirm);
        doors.look(SalesRoom.ORDER + "{order}/give-up", this::givingUp);
        doors.act(SalesRoom.ORDER + "{order}/give-up", this::giveUp);
    }

    private Answer page(Call call) {
        Outcome<Draft> found = OrderPages.draft(workshop, call.path("order"));
        if (!(found instanceof Outcome.Sound<Draft> sound)) {
            return OrderPages.missing(found);
        }
        Draft draft = sound.value();
        List<QuotedVersion> quoted = workshop.book()
                .read(reading -> reading.orders().quotations(draft.standing().name()));
        return draft.standing().state() == OrderState.QUOTED && !quoted.isEmpty()
                ? Answer.page(
                        "Does the customer order " + draft.order().name() + "?",
                        "sales/confirm.jte",
                        asked(draft, quoted.get(quoted.size() - 1), call.today()))
                : new Answer.Done(SalesRoom.ORDER + call.path("order"));
    }

    private static Page asked(Draft draft, QuotedVersion last, LocalDate today) {
        Offer offer = last.offer();
        Currency currency = Currency.getInstance(offer.currency());
        LocalDate order = draft.order().due();
        String due = draft.standing().due().isEmpty()
                ? order == null ? "" : order.toString()
                : draft.standing().due();
        return new Page(
                draft.order().name(),
                last.version(),
                List.of(
                        new Card.Fact("Customer", draft.customer()),
                        new Card.Fact("Version", last.version() + " of " + offer.on()),
                        new Card.Fact("Price before tax", KitFigures.money(currency, offer.net())),
                        new Card.Fact("To pay", KitFigures.money(currency, offer.total())),
                        new Card.Fact("Due", due.isEmpty() ? "no day is agreed" : due),
                        new Card.Fact(
                                "Lead time", offer.leadDays() + " days, until " + today.plusDays(offer.leadDays()))),
                due.isEmpty() ? "" : late(LocalDate.parse(due), today, offer.leadDays()),
                today.isAfter(offer.validUntil()) ? offer.validUntil().toString() : "");
    }

    /** What is wrong with a due day; empty where nothing is. */
    static String late(LocalDate due, LocalDate today, int leadDays) {
        LocalDate ready = today.plusDays(leadDays);
        if (due.isBefore(today)) {
            return "The day that it is due, " + due + ", is past.";
        }
        return due.isBefore(ready)
                ? "It is due on " + due + ", before its lead time ends on " + ready + ": " + leadDays
                        + " days from today."
                : "";
    }

    /** An open order is lost, one that is owed is cancelled: either with a reason, and nobody finds it among the others then. */
    private Answer givingUp(Call call) {
        return workshop.book().read(reading -> {
            Outcome<OrderStanding> found = OrderDesk.standing(reading, call.path("order"));
            if (!(found instanceof Outcome.Sound<OrderStanding> sound)) {
                return OrderPages.missing(found);
            }
            OrderStanding order = sound.value();
            boolean may = order.state().open() || order.state().owed();
            return may
                    ? Answer.page(
                            "Give " + order.name() + " up?",
                            "sales/give-up.jte",
                            new GivenUp(order.name(), to(order).written(), LeftOfOrder.of(reading, order.name())))
                    : new Answer.Done(SalesRoom.ORDER + order.name());
        });
    }

    private static OrderState to(OrderStanding order) {
        return order.state().open() ? OrderState.LOST : OrderState.CANCELLED;
    }

    private Answer giveUp(Call call) {
        Typed typed = new Typed(call);
        String why = typed.reason("reason", "Why");
        String name = call.path("order");
        return Acting.done(
                call,
                SalesRoom.ORDER + name,
                by -> typed.sound()
                        .then(ok -> workshop.book().read(reading -> OrderDesk.standing(reading, name)))
                        .then(order -> new OrderDesk(workshop.book(), by).move(name, to(order), why)),
                this::givingUp);
    }

    /**
     * An order that may be given up.
     *
     * @param to what it is then
     * @param left what was bought and made for it already
     */
    public record GivenUp(String number, String to, LeftOfOrder left) {}

    /** Freezes what the page showed: where another version was quoted meanwhile, it is looked at first. */
    private Answer confirm(Call call) {
        String order = call.path("order");
        Answer page = page(call);
        if (page instanceof Answer.Shown shown
                && shown.page() instanceof Page asked
                && !call.said("version").equals(String.valueOf(asked.version()))) {
            return shown.refusing(List.of("Found another version than the page that this came from; look at what"
                    + " version " + asked.version() + " says, then say it again."));
        }
        Outcome<?> done = new OrderDesk(workshop.book(), call.by()).confirm(order, null, call.said("reason"));
        if (done.faults().isEmpty()) {
            return new Answer.Done(SalesRoom.ORDER + order);
        }
        return page instanceof Answer.Shown shown ? shown.refused(done.faults()) : page;
    }

    /**
     * What is asked.
     *
     * @param late what is wrong with the due day; empty where nothing is
     * @param ranOut day until which the quotation was valid, where that is past; else empty
     */
    public record Page(String number, int version, List<Card.Fact> facts, String late, String ranOut) {}
}
