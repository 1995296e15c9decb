package boltlore.desk.sales;

import boltlore.book.QuotedVersion;
import boltlore.book.db.Written;
import boltlore.book.orders.DraftDesk;
import boltlore.book.orders.DraftDesk.Draft;
import boltlore.book.orders.OrderDesk;
import boltlore.choices.Choices;
import boltlore.choosing.ChoiceState;
import boltlore.desk.frame.Answer;
import boltlore.desk.frame.Call;
import boltlore.desk.frame.Workshop;
import boltlore.faults.Fault;
import boltlore.faults.Outcome;
import boltlore.order.Order;
import boltlore.order.OrderBuilder;
import java.util.List;

/** A draft becomes a version of its quotation, and says again what a version says. */
final class QuotePages {

    private final Workshop workshop;
    private final Choosings choosings;
    private final OrderPages orders;

    QuotePages(Workshop workshop, Choosings choosings, OrderPages orders) {
        this.workshop = workshop;
        this.choosings = choosings;
        this.orders = orders;
    }

    /** The draft says again what was quoted last, for whom it is for now. */
    Outcome<Order> asQuoted(Call call, Draft draft) {
        return workshop.book().read(reading -> {
            List<QuotedVersion> quoted =
                    reading.orders().quotations(draft.order().name());
            if (quoted.isEmpty()) {
                return Outcome.faulty(Fault.of("", "no quotation", "one of this order", ""));
            }
            String content = quoted.get(quoted.size() - 1).stands().order();
            return workshop.bench()
                    .order(draft.order().name(), reading.contents().of(content))
                    .then(order -> Outcome.sound(new OrderBuilder(order)
                            .customer(draft.order().customer())
                            .build()));
        });
    }

    /** Every forced value is taken down first, so that what is quoted is the whole order. */
    Answer quote(Call call) {
        Outcome<Draft> found = OrderPages.draft(workshop, call.path("order"));
        if (!(found instanceof Outcome.Sound<Draft> sound)) {
            return OrderPages.missing(found);
        }
        Order order = sound.value().order();
        Outcome<Choices> whole = choosings.with(
                order,
                call.today(),
                choosing -> choosing.chooser().standing(order.choices()) instanceof ChoiceState.Sound standing
                        ? whole(order, choosing, standing)
                        : Outcome.faulty(Fault.of("", "choices that do not stand together", "an order", "")));
        Outcome<Written<QuotedVersion>> quoted = whole.then(
                        choices -> new DraftDesk(workshop.book(), call.by().further("whole"))
                                .change(call.said("seen"), order.withChoices(choices)))
                .then(same -> new OrderDesk(workshop.book(), call.by())
                        .quote(order.name(), workshop.bench(), new OrderDesk.Asked(null, null), ""));
        return orders.finished(call, quoted);
    }

    /** What must be said beside the choices is said before it is promised. */
    private static Outcome<Choices> whole(Order order, Choosings.Choosing choosing, ChoiceState.Sound standing) {
        List<Card.Want> wants = standing.questions().isEmpty() ? CardWants.of(order, choosing, standing) : List.of();
        return wants.isEmpty()
                ? Outcome.sound(standing.withForced())
                : Outcome.faulty(wants.stream()
                        .map(want -> Fault.of("", "no answer to: " + want.asks(), "one before it is quoted", ""))
                        .toList());
    }
}
