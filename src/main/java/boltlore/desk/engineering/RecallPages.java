package boltlore.desk.engineering;

import boltlore.book.Recalled;
import boltlore.book.db.AsBuilt;
import boltlore.book.db.Reading;
import boltlore.desk.frame.Answer;
import boltlore.desk.frame.Call;
import boltlore.desk.frame.Room.Doors;
import boltlore.desk.frame.Typed;
import boltlore.desk.frame.Workshop;
import java.util.List;

/** Which kits hold a lot, a serial number, a heat, a part or a drawing, whose they are and where they stand. */
public final class RecallPages {

    private final Workshop workshop;

    RecallPages(Workshop workshop) {
        this.workshop = workshop;
    }

    void open(Doors doors) {
        doors.look("/engineering/recall", this::recall);
    }

    private Answer recall(Call call) {
        Typed typed = new Typed(call);
        AsBuilt.Asked asked = new AsBuilt.Asked(
                typed.line("part", "Part"),
                typed.line("revision", "Revision"),
                typed.line("drawing", "Drawing"),
                typed.line("issue", "Issue"),
                typed.line("serial", "Serial number"),
                typed.line("lot", "Lot"),
                typed.line("heat", "Heat"));
        String chassis = typed.line("chassis", "Chassis number");
        boolean any =
                !(asked.part() + asked.drawing() + asked.serial() + asked.lot() + asked.heat() + chassis).isEmpty();
        return workshop.book().read(reading -> {
            List<Kit> found = typed.sound().faults().isEmpty() && any
                    ? chassis.isEmpty() ? kits(reading, reading.asBuilt().holding(asked)) : vehicle(reading, chassis)
                    : List.of();
            return Answer.page("Recall", "engineering/recall.jte", new Recall(any, count(found), found))
                    .refused(typed.sound().faults());
        });
    }

    private static String count(List<Kit> kits) {
        long count = kits.stream().map(Kit::order).distinct().count();
        return count == 1 ? "1 kit" : count + " kits";
    }

    static List<Kit> kits(Reading reading, List<Recalled> found) {
        return found.stream()
                .map(each -> new Kit(
                        each.order(),
                        each.state().written(),
                        reading.persons().shown(each.customer()),
                        each.chassis(),
                        each.part() + " rev. " + each.revision(),
                        each.says() + (each.out() ? ", taken out since" : "")))
                .toList();
    }

    /** All that went into the kits of one vehicle. */
    private static List<Kit> vehicle(Reading reading, String chassis) {
        return reading.asBuilt().ofChassis(chassis).stream()
                .flatMap(order -> reading.orders().find(order).stream())
                .flatMap(order -> reading.asBuilt().parts(order.name()).stream()
                        .map(part -> new Kit(
                                order.name(),
                                order.state().written(),
                                reading.persons().shown(order.customer()),
                                chassis,
                                part.part() + " rev. " + part.revision(),
                                part.says() + (part.out() > 0 ? ", taken out since" : ""))))
                .toList();
    }

    /**
     * What was asked for and found.
     *
     * @param asked whether anything was
     */
    public record Recall(boolean asked, String count, List<Kit> kits) {}

    /** A kit that holds it. */
    public record Kit(String order, String state, String customer, String chassis, String part, String says) {}
}
