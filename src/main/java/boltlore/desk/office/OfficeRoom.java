package boltlore.desk.office;

import boltlore.book.OrderState;
import boltlore.desk.frame.Answer;
import boltlore.desk.frame.Call;
import boltlore.desk.frame.OrderRow;
import boltlore.desk.frame.Role;
import boltlore.desk.frame.Room;
import boltlore.desk.frame.Workshop;
import java.util.List;

/** The room that owns the day: what is due, late, short and waiting, and what the month has earned. */
public final class OfficeRoom implements Room {

    private final Workshop workshop;

    public OfficeRoom(Workshop workshop) {
        this.workshop = workshop;
    }

    @Override
    public Role role() {
        return Role.OWNER;
    }

    @Override
    public String path() {
        return "/office";
    }

    @Override
    public String says() {
        return "Office";
    }

    @Override
    public void open(Doors doors) {
        doors.look("/office", this::today);
    }

    private Answer today(Call call) {
        List<OrderState> owed = OrderState.ALL.stream().filter(OrderState::owed).toList();
        return Answer.page(
                "This morning",
                "office/today.jte",
                new Today(workshop.book().read(reading -> OrderRow.list(reading, owed, call.today()))));
    }

    /** What the workshop owes. */
    public record Today(List<OrderRow> owed) {}
}
