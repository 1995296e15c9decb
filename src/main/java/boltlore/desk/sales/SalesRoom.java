package boltlore.desk.sales;

import boltlore.book.OrderState;
import boltlore.desk.frame.Answer;
import boltlore.desk.frame.Call;
import boltlore.desk.frame.OrderRow;
import boltlore.desk.frame.Role;
import boltlore.desk.frame.Room;
import boltlore.desk.frame.Workshop;
import java.util.List;

/** The room that talks with customers: orders from the first question to the confirmed quotation. */
public final class SalesRoom implements Room {

    private final Workshop workshop;

    public SalesRoom(Workshop workshop) {
        this.workshop = workshop;
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
}
