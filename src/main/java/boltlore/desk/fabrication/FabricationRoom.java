package boltlore.desk.fabrication;

import boltlore.book.OrderState;
import boltlore.book.ShopHappening.Coat;
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

/** The room that cuts, welds and coats. */
public final class FabricationRoom implements Room {

    private static final List<OrderState> OWED =
            OrderState.ALL.stream().filter(OrderState::owed).toList();

    private final Workshop workshop;
    private final CutPages cutting;
    private final CoatPages coating;
    private final FilmPages film;

    public FabricationRoom(Workshop workshop, KitsAtHand kits) {
        this.workshop = workshop;
        this.cutting = new CutPages(workshop, kits);
        this.coating = new CoatPages(workshop, kits);
        this.film = new FilmPages(workshop, kits);
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
        cutting.open(doors);
        coating.open(doors);
        film.open(doors);
    }

    private Answer today(Call call) {
        return workshop.book()
                .read(reading -> Answer.page(
                        "Fabrication today",
                        "fabrication/today.jte",
                        new Today(
                                Told.of(reading, call),
                                OrderRow.stretch(workshop, reading, OWED, call, "/fabrication?")
                                        .map(order -> new Owed(
                                                order,
                                                counted(reading.shop().pieces(List.of(), order.number()).stream()
                                                        .collect(Collectors.groupingBy(
                                                                piece -> piece.state(),
                                                                TreeMap::new,
                                                                Collectors.counting()))),
                                                !reading.shop()
                                                        .records(order.number())
                                                        .isEmpty())),
                                reading.shop().counts().entrySet().stream()
                                        .map(finish -> new Finish(
                                                workshop.names().finish(finish.getKey()), counted(finish.getValue())))
                                        .toList())));
    }

    /** '3 waiting, 2 hung'; says so where nothing is queued. */
    private static String counted(Map<Coat, ? extends Number> counts) {
        return counts.isEmpty()
                ? "not queued"
                : counts.entrySet().stream()
                        .map(each -> each.getValue() + " " + each.getKey().written())
                        .collect(Collectors.joining(", "));
    }

    /** What the room has to do. */
    public record Today(List<String> told, Stretch<Owed> orders, List<Finish> finishes) {}

    /** An order that is owed, with how far its coating is. */
    public record Owed(OrderRow order, String coating, boolean recorded) {}

    /** How many pieces of a finish stand where, of those with which something is to be done. */
    public record Finish(String finish, String counts) {}
}
