package boltlore.desk.sales;

import boltlore.asking.AskedHead;
import boltlore.book.OrderStanding;
import boltlore.book.db.Written;
import boltlore.book.orders.DraftDesk;
import boltlore.book.orders.DraftDesk.Draft;
import boltlore.desk.frame.Answer;
import boltlore.desk.frame.Call;
import boltlore.desk.frame.Room.Doors;
import boltlore.desk.frame.Workshop;
import boltlore.faults.Outcome;
import boltlore.order.Order;
import boltlore.order.OrderBuilder;
import java.util.List;
import java.util.function.Function;

/** What an open order says beside its choices, on a page of its own. */
public final class HeadPages {

    private final Workshop workshop;

    HeadPages(Workshop workshop) {
        this.workshop = workshop;
    }

    void open(Doors doors) {
        doors.look(SalesRoom.ORDER + "{order}/head", this::head);
        doors.act(SalesRoom.ORDER + "{order}/head", this::headSaid);
    }

    private Answer head(Call call) {
        Outcome<Draft> found = OrderPages.draft(workshop, call.path("order"));
        return found instanceof Outcome.Sound<Draft> sound ? head(sound.value()) : OrderPages.missing(found);
    }

    private Answer.Shown head(Draft draft) {
        Function<AskedHead, String> shown = head -> HeadForm.shown(head, draft.order());
        return Answer.page(
                draft.order().name() + ": customer and vehicle",
                "sales/head.jte",
                new HeadPage(
                        draft.order().name(),
                        draft.seen(),
                        draft.customer(),
                        shown.apply(AskedHead.BUILT),
                        shown.apply(AskedHead.CHASSIS),
                        shown.apply(AskedHead.DUE),
                        shown.apply(AskedHead.PARTNER),
                        shown.apply(AskedHead.DISCOUNT),
                        shown.apply(AskedHead.LANGUAGE),
                        List.copyOf(workshop.bench()
                                .catalogue()
                                .workshop()
                                .partners()
                                .keySet()),
                        List.copyOf(workshop.bench().catalogue().workshop().languages())));
    }

    /** What an order says beside its choices, each as it is typed. */
    public record HeadPage(
            String number,
            String seen,
            String customer,
            String built,
            String chassis,
            String due,
            String partner,
            String discount,
            String language,
            List<String> partners,
            List<String> languages) {}

    private Answer headSaid(Call call) {
        Outcome<Draft> found = OrderPages.draft(workshop, call.path("order"));
        if (!(found instanceof Outcome.Sound<Draft> sound)) {
            return OrderPages.missing(found);
        }
        Draft draft = sound.value();
        Order named = new OrderBuilder(draft.order()).customer(draft.customer()).build();
        Outcome<Written<OrderStanding>> done = new HeadForm(workshop.bench().catalogue())
                .said(call, named)
                .then(order -> kept(order, draft))
                .then(order -> new DraftDesk(workshop.book(), call.by()).change(call.said("seen"), order));
        return done.faults().isEmpty()
                ? new Answer.Done(SalesRoom.ORDER + draft.order().name())
                : head(draft).refused(done.faults());
    }

    /** A name that nobody has changed stays the person that it was. */
    private static Outcome<Order> kept(Order said, Draft draft) {
        return Outcome.sound(
                said.customer().equals(draft.customer())
                        ? new OrderBuilder(said)
                                .customer(draft.order().customer())
                                .build()
                        : said);
    }
}
