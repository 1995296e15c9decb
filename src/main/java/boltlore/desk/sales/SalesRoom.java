package boltlore.desk.sales;

import boltlore.book.Entry;
import boltlore.book.OrderHappening;
import boltlore.book.OrderStanding;
import boltlore.book.OrderState;
import boltlore.book.db.DoneBefore;
import boltlore.book.db.Written;
import boltlore.book.orders.DraftDesk;
import boltlore.book.orders.KitsAtHand;
import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Family;
import boltlore.choices.Choices;
import boltlore.desk.frame.Answer;
import boltlore.desk.frame.Call;
import boltlore.desk.frame.OrderRow;
import boltlore.desk.frame.Role;
import boltlore.desk.frame.Room;
import boltlore.desk.frame.Stretch;
import boltlore.desk.frame.Typed;
import boltlore.desk.frame.Workshop;
import boltlore.faults.Fault;
import boltlore.faults.Outcome;
import boltlore.order.Order;
import boltlore.order.OrderBuilder;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/** The room that talks with customers: orders from the first question to the confirmed quotation. */
public final class SalesRoom implements Room {

    static final String ORDER = "/sales/order/";

    private static final int MOST_TOGETHER = 20;

    private final Workshop workshop;
    private final OrderPages orders;
    private final ChangePages changes;

    public SalesRoom(Workshop workshop, KitsAtHand kits) {
        this.workshop = workshop;
        this.changes = new ChangePages(workshop, kits);
        this.orders = new OrderPages(workshop);
    }

    @Override
    public Role role() {
        return Role.SALES;
    }

    @Override
    public String path() {
        return "/sales";
    }

    @Override
    public String says() {
        return "Sales";
    }

    @Override
    public void open(Doors all) {
        Doors doors = landing(all);
        doors.look("/sales", this::today);
        doors.look("/sales/new", this::blank);
        doors.act("/sales/new", this::begin);
        orders.open(doors);
        changes.open(doors);
        new ComparePages(workshop).open(doors);
    }

    /** The same form sent again lands where it did the first time: at its order, or at the one that it has begun. */
    private Doors landing(Doors doors) {
        return new Doors() {
            @Override
            public void look(String path, Function<Call, Answer> answer) {
                doors.look(path, answer);
            }

            @Override
            public void act(String path, Function<Call, Answer> answer) {
                doors.act(path, call -> {
                    try {
                        workshop.book().read(reading -> {
                            reading.notDone(call.by());
                            return true;
                        });
                        return answer.apply(call);
                    } catch (DoneBefore before) {
                        Answer.Done landed = landed(before.entry());
                        return before.changed() ? new Answer.SentAlready(before.first(), landed.path()) : landed;
                    }
                });
            }
        };
    }

    private Answer.Done landed(long entry) {
        return workshop.book().read(reading -> {
            List<Entry> since = reading.journal().after(entry - 1, MOST_TOGETHER);
            return since.stream()
                    .takeWhile(each -> each.stamp().equals(since.get(0).stamp()))
                    .filter(each -> each.subject().what().equals(OrderHappening.WHAT))
                    .findFirst()
                    .map(each -> new Answer.Done(ORDER + each.subject().name()))
                    .orElseGet(() -> new Answer.Done("/sales"));
        });
    }

    private Answer today(Call call) {
        String wanted = call.said("order");
        boolean found = !wanted.isEmpty()
                && workshop.book()
                        .read(reading -> reading.orders().find(wanted))
                        .isPresent();
        if (found) {
            return new Answer.Done(ORDER + wanted);
        }
        List<OrderState> open = OrderState.ALL.stream()
                .filter(state -> state.open() || state.owed())
                .toList();
        Answer.Shown page = Answer.page(
                "Orders",
                "sales/today.jte",
                new Today(workshop.book().read(reading -> OrderRow.stretch(workshop, reading, open, call, "/sales?"))));
        return wanted.isEmpty()
                ? page
                : page.refused(
                        List.of(Typed.at("order", Fault.of("", "no order '" + wanted + "'", "the number of one", ""))));
    }

    /** All orders that are not shipped, lost or cancelled. */
    public record Today(Stretch<OrderRow> orders) {}

    private Answer.Shown blank(Call call) {
        Catalogue catalogue = workshop.bench().catalogue();
        List<Card.Fact> families = catalogue.families().values().stream()
                .map(family -> new Card.Fact(family.name(), family.says().english()))
                .toList();
        return Answer.page(
                "A new order",
                "sales/new.jte",
                new Blank(
                        OrderPages.nextNumber(workshop),
                        families,
                        List.copyOf(catalogue.workshop().partners().keySet())));
    }

    /**
     * What is asked first: the customer, and the base vehicle.
     *
     * @param families name and words of each
     */
    public record Blank(String number, List<Card.Fact> families, List<String> partners) {}

    private Answer begin(Call call) {
        Family family = workshop.bench().catalogue().families().get(call.said("family"));
        if (family == null) {
            return blank(call).refused(List.of(Typed.at("family", Fault.of("Kit", "nothing", "which kit it is", ""))));
        }
        Order empty = new OrderBuilder(Choices.of(family, Map.of()))
                .placed(call.today())
                .build();
        Outcome<Written<OrderStanding>> begun = new HeadForm(workshop.bench().catalogue())
                .said(call, empty)
                .then(order -> new DraftDesk(workshop.book(), call.by()).begin(order));
        return begun instanceof Outcome.Sound<Written<OrderStanding>> sound
                ? new Answer.Done(ORDER + sound.value().value().name())
                : blank(call).refused(begun.faults());
    }
}
