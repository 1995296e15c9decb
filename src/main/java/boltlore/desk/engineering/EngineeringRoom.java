package boltlore.desk.engineering;

import boltlore.desk.frame.Answer;
import boltlore.desk.frame.Call;
import boltlore.desk.frame.Role;
import boltlore.desk.frame.Room;
import boltlore.desk.frame.Workshop;
import java.util.List;

/** The room that looks after the catalogue: its parts, where they are used, and whether every order is sound. */
public final class EngineeringRoom implements Room {

    private final Workshop workshop;

    public EngineeringRoom(Workshop workshop) {
        this.workshop = workshop;
    }

    @Override
    public Role role() {
        return Role.ENGINEER;
    }

    @Override
    public String path() {
        return "/engineering";
    }

    @Override
    public String says() {
        return "Engineering";
    }

    @Override
    public void open(Doors doors) {
        doors.look("/engineering", this::today);
    }

    private Answer today(Call call) {
        List<Row> rows = workshop.bench().catalogue().parts().values().stream()
                .map(part -> new Row(
                        part.number().text(), part.revision(), part.name().english()))
                .toList();
        return Answer.page("Parts", "engineering/today.jte", new Today(rows));
    }

    /** All parts of the catalogue. */
    public record Today(List<Row> parts) {}

    /** One part. */
    public record Row(String number, String revision, String name) {}
}
