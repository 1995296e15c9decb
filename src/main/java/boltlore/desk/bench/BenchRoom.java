package boltlore.desk.bench;

import boltlore.book.OrderState;
import boltlore.book.db.Reading;
import boltlore.book.db.Shop.KeptRecord;
import boltlore.book.orders.KitsAtHand;
import boltlore.book.orders.OrderDesk;
import boltlore.desk.frame.Acting;
import boltlore.desk.frame.Answer;
import boltlore.desk.frame.Call;
import boltlore.desk.frame.OrderRow;
import boltlore.desk.frame.Role;
import boltlore.desk.frame.Room;
import boltlore.desk.frame.Stretch;
import boltlore.desk.frame.Told;
import boltlore.desk.frame.Typed;
import boltlore.desk.frame.Workshop;
import boltlore.json.TextShape;
import java.util.List;
import java.util.Optional;

/** The room that tests vehicles, packs crates and writes their papers. */
public final class BenchRoom implements Room {

    private static final List<OrderState> HERE = List.of(OrderState.ORDERED, OrderState.IN_WORK, OrderState.TESTED);

    private final Workshop workshop;
    private final TestPages testing;
    private final ShipPages shipping;

    public BenchRoom(Workshop workshop, KitsAtHand kits) {
        this.workshop = workshop;
        this.testing = new TestPages(workshop, kits);
        this.shipping = new ShipPages(workshop, kits);
    }

    @Override
    public Role role() {
        return Role.BENCH;
    }

    @Override
    public String path() {
        return "/bench";
    }

    @Override
    public String says() {
        return "Bench and shipping";
    }

    @Override
    public void open(Doors doors) {
        doors.look("/bench", this::today);
        doors.act("/bench/begin", this::begin);
        testing.open(doors);
        shipping.open(doors);
    }

    private Answer today(Call call) {
        return workshop.book()
                .read(reading -> Answer.page(
                        "To test and to ship",
                        "bench/today.jte",
                        new Today(
                                Told.of(reading, call),
                                OrderRow.stretch(workshop, reading, HERE, call, "/bench?")
                                        .map(order -> row(reading, order)))));
    }

    private static Row row(Reading reading, OrderRow order) {
        Optional<KeptRecord> last = lastTest(reading, order.number());
        return new Row(
                order,
                reading.packing().picked(order.number()).isPresent() ? "picked" : "not picked",
                last.map(record -> record.passed() ? "passed" : "NOT passed").orElse("not tested"),
                reading.packing()
                        .packed(order.number())
                        .map(packed -> packed.crates() == 1 ? "in 1 crate" : "in " + packed.crates() + " crates")
                        .orElse("not packed"),
                order.state().equals(OrderState.ORDERED.written()));
    }

    static Optional<KeptRecord> lastTest(Reading reading, String order) {
        return reading.shop().records(order).stream()
                .filter(record -> record.of().equals(TestPages.TEST))
                .reduce((earlier, later) -> later);
    }

    private Answer begin(Call call) {
        Typed typed = new Typed(call);
        String order = typed.text("order", "Order", TextShape.ORDER_NAME);
        return Acting.done(
                call,
                "/bench",
                by -> typed.sound().then(ok -> new OrderDesk(workshop.book(), by).move(order, OrderState.IN_WORK, "")),
                this::today);
    }

    /** Orders that are owed, with how far they are. */
    public record Today(List<String> told, Stretch<Row> orders) {}

    /**
     * An order, and how far it is.
     *
     * @param toBegin whether nobody works on it yet
     */
    public record Row(OrderRow order, String picked, String tested, String packed, boolean toBegin) {}
}
