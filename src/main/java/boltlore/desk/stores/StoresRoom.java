package boltlore.desk.stores;

import boltlore.book.OrderState;
import boltlore.book.db.Reading;
import boltlore.book.orders.KitsAtHand;
import boltlore.desk.frame.Answer;
import boltlore.desk.frame.Call;
import boltlore.desk.frame.OrderRow;
import boltlore.desk.frame.Role;
import boltlore.desk.frame.Room;
import boltlore.desk.frame.Told;
import boltlore.desk.frame.Workshop;
import java.util.List;

/** The room that keeps parts: what lies where, what is short, what comes in and goes out. */
public final class StoresRoom implements Room {

    private static final List<OrderState> OWED =
            OrderState.ALL.stream().filter(OrderState::owed).toList();

    private final Workshop workshop;
    private final PickPages picking;
    private final LinePages lines;
    private final GoodsPages goods;
    private final ShortPages lacking;

    public StoresRoom(Workshop workshop, KitsAtHand kits) {
        this.workshop = workshop;
        this.picking = new PickPages(workshop, kits);
        this.lines = new LinePages(workshop, picking);
        this.goods = new GoodsPages(workshop);
        this.lacking = new ShortPages(workshop, kits);
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
        lines.open(doors);
        goods.open(doors);
        lacking.open(doors);
    }

    private Answer today(Call call) {
        return workshop.book()
                .read(reading -> Answer.page(
                        "Stores today",
                        "stores/today.jte",
                        new Today(
                                Told.of(reading, call),
                                OrderRow.list(reading, OWED, call.today()).stream()
                                        .map(order -> toPick(reading, order))
                                        .toList(),
                                DueIn.all(reading, call.today()))));
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
    public record Today(List<String> told, List<ToPick> orders, List<DueIn> due) {}

    /**
     * An order that is owed.
     *
     * @param stands how far its picking is, in words
     * @param missing lines of which the bin held too little
     * @param open whether there is something to do
     */
    public record ToPick(OrderRow order, String stands, int missing, boolean open) {}
}
