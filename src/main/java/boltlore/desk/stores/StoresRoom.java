package boltlore.desk.stores;

import boltlore.desk.frame.Answer;
import boltlore.desk.frame.Call;
import boltlore.desk.frame.Role;
import boltlore.desk.frame.Room;
import boltlore.desk.frame.Workshop;
import java.util.List;

/** The room that keeps parts: what lies where, what is short, what comes in and goes out. */
public final class StoresRoom implements Room {

    private final Workshop workshop;

    public StoresRoom(Workshop workshop) {
        this.workshop = workshop;
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
    }

    private Answer today(Call call) {
        List<Row> rows = workshop.book()
                .read(reading -> reading.stock().all().stream()
                        .map(row -> new Row(
                                row.held().bin(),
                                row.held().part(),
                                row.held().finish(),
                                row.held().lot(),
                                row.held().serial(),
                                row.quantity().toPlainString()))
                        .toList());
        return Answer.page("What lies where", "stores/today.jte", new Today(rows));
    }

    /** What the book says lies in the stores. */
    public record Today(List<Row> rows) {}

    /** One part at one place. */
    public record Row(String bin, String part, String finish, String lot, String serial, String quantity) {}
}
