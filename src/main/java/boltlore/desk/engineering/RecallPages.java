package boltlore.desk.engineering;

import boltlore.book.Recalled;
import boltlore.book.db.AsBuilt;
import boltlore.book.db.Reading;
import boltlore.desk.frame.Answer;
import boltlore.desk.frame.Call;
import boltlore.desk.frame.Names;
import boltlore.desk.frame.Room.Doors;
import boltlore.desk.frame.Typed;
import boltlore.desk.frame.Workshop;
import java.util.List;
import java.util.stream.Stream;

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
            return Answer.page(
                            "Recall",
                            "engineering/recall.jte",
                            new Recall(workshop.names(), any, count(found), found, stores(reading, typed, any, asked)))
                    .refused(typed.sound().faults());
        });
    }

    /** What is in no kit; and that there is no such part, which is not the same as that no kit holds it. */
    private List<String> stores(Reading reading, Typed typed, boolean any, AsBuilt.Asked asked) {
        if (!any || !typed.sound().faults().isEmpty()) {
            return List.of();
        }
        boolean known = asked.part().isEmpty()
                || reading.asBuilt().knowsPart(asked.part())
                || workshop.bench().catalogue().parts().keySet().stream()
                        .anyMatch(part -> part.text().equalsIgnoreCase(asked.part()));
        if (!known) {
            typed.fault(
                    "part",
                    "Part",
                    "'" + asked.part() + "'",
                    "a part of the catalogue or of a kit; there is no such part");
        }
        boolean named = !(asked.part() + asked.serial() + asked.lot() + asked.heat()).isEmpty();
        return named ? reading.asBuilt().inStores(asked) : List.of();
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
                .flatMap(order -> reading.asBuilt().parts(order.name()).isEmpty()
                        ? Stream.of(new Kit(
                                order.name(),
                                order.state().written(),
                                reading.persons().shown(order.customer()),
                                chassis,
                                "",
                                "an order of this vehicle, of which nothing is written down as fitted"))
                        : reading.asBuilt().parts(order.name()).stream()
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
     * @param stores what of it is in no kit
     */
    public record Recall(Names names, boolean asked, String count, List<Kit> kits, List<String> stores) {}

    /** A kit that holds it. */
    public record Kit(String order, String state, String customer, String chassis, String part, String says) {}
}
