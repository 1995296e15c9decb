package boltlore.desk.sales;

import boltlore.book.OrderStanding;
import boltlore.book.OrderState;
import boltlore.book.db.Written;
import boltlore.book.orders.DraftDesk;
import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Family;
import boltlore.choices.Choices;
import boltlore.desk.frame.Answer;
import boltlore.desk.frame.Call;
import boltlore.desk.frame.OrderRow;
import boltlore.desk.frame.Role;
import boltlore.desk.frame.Room;
import boltlore.desk.frame.Sentences;
import boltlore.desk.frame.Workshop;
import boltlore.faults.Outcome;
import boltlore.order.Order;
import boltlore.order.OrderBuilder;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The room that talks with customers: orders from the first question to the confirmed quotation. */
public final class SalesRoom implements Room {

    static final String ORDER = "/sales/order/";

    private static final Pattern NUMBERED = Pattern.compile("(.*?)(\\d{1,9})");

    private final Workshop workshop;
    private final OrderPages orders;

    public SalesRoom(Workshop workshop) {
        this.workshop = workshop;
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
    public void open(Doors doors) {
        doors.look("/sales", this::today);
        doors.look("/sales/new", this::blank);
        doors.act("/sales/new", this::begin);
        orders.open(doors);
        new ComparePages(workshop).open(doors);
    }

    private Answer today(Call call) {
        List<OrderState> open = OrderState.ALL.stream()
                .filter(state -> state.open() || state.owed())
                .toList();
        return Answer.page(
                "Orders",
                "sales/today.jte",
                new Today(workshop.book().read(reading -> OrderRow.list(reading, open, call.today()))));
    }

    /** All orders that are not shipped, lost or cancelled. */
    public record Today(List<OrderRow> orders) {}

    private Answer.Shown blank(Call call) {
        Catalogue catalogue = workshop.bench().catalogue();
        List<Card.Fact> families = catalogue.families().values().stream()
                .map(family -> new Card.Fact(family.name(), family.says().english()))
                .toList();
        return Answer.page(
                "A new order",
                "sales/new.jte",
                new Blank(
                        nextNumber(),
                        families,
                        List.copyOf(catalogue.workshop().partners().keySet())));
    }

    /**
     * What is asked first: the customer, and the base vehicle.
     *
     * @param families name and words of each
     */
    public record Blank(String number, List<Card.Fact> families, List<String> partners) {}

    /** One more than the highest of those that are counted like the newest orders here. */
    private String nextNumber() {
        List<String> all = workshop.book().read(OrderRow::numbers);
        String best = "";
        for (String name : all) {
            Matcher matcher = NUMBERED.matcher(name);
            boolean longer = matcher.matches()
                    && (name.length() > best.length() || (name.length() == best.length() && name.compareTo(best) > 0));
            best = longer ? name : best;
        }
        Matcher last = NUMBERED.matcher(best);
        if (!last.matches()) {
            return "";
        }
        String digits = String.valueOf(Integer.parseInt(last.group(2)) + 1);
        int zeros = Math.max(0, last.group(2).length() - digits.length());
        return last.group(1) + "0".repeat(zeros) + digits;
    }

    private Answer begin(Call call) {
        Family family = workshop.bench().catalogue().families().get(call.said("family"));
        if (family == null) {
            return blank(call).refusing(List.of("Say which kit it is."));
        }
        Order empty = new OrderBuilder(Choices.of(family, Map.of()))
                .placed(call.today())
                .build();
        Outcome<Written<OrderStanding>> begun = new HeadForm(workshop.bench().catalogue())
                .said(call, empty)
                .then(order -> new DraftDesk(workshop.book(), call.by()).begin(order));
        return begun instanceof Outcome.Sound<Written<OrderStanding>> sound
                ? new Answer.Done(ORDER + sound.value().value().name())
                : blank(call).refusing(Sentences.of(begun.faults()));
    }
}
