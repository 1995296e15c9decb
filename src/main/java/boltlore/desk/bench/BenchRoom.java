package boltlore.desk.bench;

import boltlore.book.OrderState;
import boltlore.desk.frame.Answer;
import boltlore.desk.frame.Call;
import boltlore.desk.frame.OrderRow;
import boltlore.desk.frame.Role;
import boltlore.desk.frame.Room;
import boltlore.desk.frame.Workshop;
import java.util.List;

/** The room that tests vehicles, packs crates and writes their papers. */
public final class BenchRoom implements Room {

    private final Workshop workshop;

    public BenchRoom(Workshop workshop) {
        this.workshop = workshop;
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
    }

    private Answer today(Call call) {
        List<OrderState> here = List.of(OrderState.IN_WORK, OrderState.TESTED);
        return Answer.page(
                "To test and to ship",
                "bench/today.jte",
                new Today(workshop.book().read(reading -> OrderRow.list(reading, here, call.today()))));
    }

    /** Orders in work and tested ones. */
    public record Today(List<OrderRow> orders) {}
}
