package boltlore.desk.stores;

import boltlore.book.ChangeState;
import boltlore.book.OrderChange;
import boltlore.book.OrderState;
import boltlore.book.db.Needs;
import boltlore.book.db.Reading;
import boltlore.book.orders.KitsAtHand;
import boltlore.desk.frame.Answer;
import boltlore.desk.frame.Call;
import boltlore.desk.frame.OrderRow;
import boltlore.desk.frame.Role;
import boltlore.desk.frame.Room;
import boltlore.desk.frame.Stretch;
import boltlore.desk.frame.Told;
import boltlore.desk.frame.Workshop;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** The room that keeps parts: what lies where, what is short, what comes in and goes out. */
public final class StoresRoom implements Room {

    private static final List<OrderState> OWED =
            OrderState.ALL.stream().filter(OrderState::owed).toList();

    private static final int MOST_DUE = 20;

    private final Workshop workshop;
    private final KitsAtHand kits;
    private final PickPages picking;
    private final LinePages lines;
    private final GoodsPages goods;
    private final ShortPages lacking;
    private final PurchasePages purchases;
    private final UndoPages undoing;

    public StoresRoom(Workshop workshop, KitsAtHand kits) {
        this.workshop = workshop;
        this.kits = kits;
        this.picking = new PickPages(workshop, kits);
        this.lines = new LinePages(workshop, picking);
        this.goods = new GoodsPages(workshop);
        this.lacking = new ShortPages(workshop, kits);
        this.purchases = new PurchasePages(workshop, lacking);
        this.undoing = new UndoPages(workshop, kits);
    }

    @Override
    public Role role() {
        return Role.STORES;
    }

    @Override
    public String path() {
        return "/stores";
    }

    @Override
    public String says() {
        return "Stores";
    }

    @Override
    public void open(Doors doors) {
        doors.look("/stores", this::today);
        picking.open(doors);
        new ScanPages(workshop, kits, picking).open(doors);
        lines.open(doors);
        goods.open(doors);
        new ReceivePages(workshop).open(doors);
        lacking.open(doors);
        purchases.open(doors);
        undoing.open(doors);
    }

    private Answer today(Call call) {
        return workshop.book()
                .read(reading -> Answer.page(
                        "Stores today",
                        "stores/today.jte",
                        new Today(
                                Told.of(reading, call),
                                OrderRow.stretch(workshop, reading, OWED, call, "/stores?")
                                        .map(order -> toPick(reading, order)),
                                afterShipping(reading),
                                changes(reading),
                                DueIn.all(reading, call.today()).stream()
                                        .limit(MOST_DUE)
                                        .toList())));
    }

    /** What is sent after kits that have left. */
    private static List<After> afterShipping(Reading reading) {
        Map<String, Long> byOrder = reading.needs().afterShipping().stream()
                .collect(Collectors.groupingBy(Needs.Open::order, TreeMap::new, Collectors.counting()));
        return byOrder.entrySet().stream()
                .map(each -> new After(each.getKey(), parts(Math.toIntExact(each.getValue()))))
                .toList();
    }

    /** Accepted changes of which something may have to be undone: parts that are sent after a kit undo nothing. */
    private static List<After> changes(Reading reading) {
        return reading.changes().in(ChangeState.ACCEPTED).stream()
                .filter(change -> !change.asker().equals(OrderChange.SERVICE))
                .map(change -> new After(change.order(), String.valueOf(change.number())))
                .toList();
    }

    private static ToPick toPick(Reading reading, OrderRow order) {
        int open = (int) reading.needs().of(order.number()).stream()
                .map(need -> need.part() + " " + need.finish())
                .distinct()
                .count();
        boolean complete = reading.packing().picked(order.number()).isPresent();
        String stands = complete
                ? open == 0 ? "picked" : "called complete, " + parts(open) + " still to come"
                : open == 0 ? "all picked, to be called complete" : parts(open) + " to pick";
        return new ToPick(order, stands, reading.stock().shortOf(order.number()).size(), !complete);
    }

    private static String parts(int count) {
        return count == 1 ? "1 part" : count + " parts";
    }

    /** What the stores have to do. */
    public record Today(
            List<String> told, Stretch<ToPick> orders, List<After> after, List<After> changes, List<DueIn> due) {}

    /** An order that has left, and what is sent after it; or that is changed, and by which change. */
    public record After(String order, String says) {}

    /**
     * An order that is owed.
     *
     * @param stands how far its picking is, in words
     * @param missing lines of which the bin held too little
     * @param open whether there is something to do
     */
    public record ToPick(OrderRow order, String stands, int missing, boolean open) {}
}
