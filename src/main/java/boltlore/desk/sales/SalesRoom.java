package boltlore.desk.sales;

import boltlore.book.Entry;
import boltlore.book.OrderHappening;
import boltlore.book.OrderStanding;
import boltlore.book.OrderState;
import boltlore.book.db.DoneBefore;
import boltlore.book.db.Reading;
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
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/** The room that talks with customers: orders from the first question to the confirmed quotation. */
public final class SalesRoom implements Room {

    static final String ORDER = "/sales/order/";

    private static final String FOUND = "/sales?order=";

    private static final List<String> STATES =
            OrderState.ALL.stream().map(OrderState::written).toList();

    private static final int MOST_TOGETHER = 20;
    private static final int MOST_FOUND = 40;

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
        return workshop.book().read(reading -> {
            Optional<String> numbered = reading.orders()
                    .find(wanted)
                    .map(OrderStanding::name)
                    .or(() -> reading.orders().alike(wanted));
            if (numbered.isPresent()) {
                return new Answer.Done(ORDER + numbered.get());
            }
            List<OrderRow> found =
                    wanted.isEmpty() ? List.of() : OrderRow.found(workshop, reading, wanted, call.today());
            Stretch<OrderRow> orders = wanted.isEmpty()
                    ? inState(reading, call)
                    : Stretch.of(found, call, MOST_FOUND, FOUND + coded(wanted));
            return Answer.page("Orders", "sales/today.jte", new Today(orders, wanted, call.said("state"), STATES));
        });
    }

    private static String coded(String words) {
        return URLEncoder.encode(words, StandardCharsets.UTF_8);
    }

    /** What is in hand, or all in one state. */
    private Stretch<OrderRow> inState(Reading reading, Call call) {
        String said = call.said("state");
        List<OrderState> states = OrderState.ALL.stream()
                .filter(state -> said.isEmpty()
                        ? state.open() || state.owed()
                        : state.written().equals(said))
                .toList();
        return OrderRow.stretch(workshop, reading, states, call, "/sales?state=" + coded(said));
    }

    /**
     * Orders to go on with: those that are not shipped, lost or cancelled, those in one state, or those that words name.
     *
     * @param found the words that name them, or empty
     * @param state that was asked for, or empty
     */
    public record Today(Stretch<OrderRow> orders, String found, String state, List<String> states) {}

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
