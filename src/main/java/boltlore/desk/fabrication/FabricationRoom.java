package boltlore.desk.fabrication;

import boltlore.desk.frame.Answer;
import boltlore.desk.frame.Call;
import boltlore.desk.frame.Role;
import boltlore.desk.frame.Room;
import boltlore.desk.frame.Workshop;
import java.util.List;

/** The room that cuts, welds and coats. */
public final class FabricationRoom implements Room {

    private final Workshop workshop;

    public FabricationRoom(Workshop workshop) {
        this.workshop = workshop;
    }

    @Override
    public Role role() {
        return Role.FABRICATION;
    }

    @Override
    public String path() {
        return "/fabrication";
    }

    @Override
    public String says() {
        return "Fabrication";
    }

    @Override
    public void open(Doors doors) {
        doors.look("/fabrication", this::today);
    }

    private Answer today(Call call) {
        List<Row> rows = workshop.book()
                .read(reading -> reading.shop().pieces(List.of(), "").stream()
                        .map(piece -> new Row(
                                piece.piece(),
                                piece.order(),
                                piece.part(),
                                piece.finish(),
                                piece.state().written(),
                                piece.load()))
                        .toList());
        return Answer.page("Pieces to coat", "fabrication/today.jte", new Today(rows));
    }

    /** All pieces that the coating shop has or waits for. */
    public record Today(List<Row> pieces) {}

    /** One piece. */
    public record Row(String piece, String order, String part, String finish, String state, String load) {}
}
