package boltlore.cli;

import boltlore.book.OrderStanding;
import boltlore.book.Recalled;
import boltlore.book.db.AsBuilt;
import boltlore.book.db.Place;
import boltlore.book.db.Reading;
import boltlore.book.orders.AsBuiltRecord;
import boltlore.book.orders.OrderDesk;
import boltlore.faults.Fault;
import boltlore.faults.Outcome;
import boltlore.json.JsonOut;
import boltlore.json.TextShape;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Which kits hold something, and all of one vehicle. */
@Command(
        name = "recall",
        description =
                "Say which kits hold a lot, a serial number, a heat, a part or a drawing, whose they are and where"
                        + " they stand; or all of one chassis number.")
final class RecallCommand extends BookCommand {

    @Option(names = "--part", paramLabel = "PART", description = "The part, as designed or as fitted.")
    private String part = "";

    @Option(names = "--revision", paramLabel = "REV", description = "In this revision only.")
    private String revision = "";

    @Option(names = "--drawing", paramLabel = "NUMBER", description = "Parts made to this drawing.")
    private String drawing = "";

    @Option(names = "--issue", paramLabel = "ISSUE", description = "In this issue of the drawing only.")
    private String issue = "";

    @Option(names = "--serial", paramLabel = "NUMBER", description = "This serial number.")
    private String serial = "";

    @Option(names = "--lot", paramLabel = "LOT", description = "Parts of this lot.")
    private String lot = "";

    @Option(names = "--heat", paramLabel = "HEAT", description = "Parts of this heat.")
    private String heat = "";

    @Option(names = "--chassis", paramLabel = "NUMBER", description = "All of the vehicle with this chassis number.")
    private String chassis = "";

    @Override
    Outcome<Integer> answer(Screen screen, Place place) {
        return sound().then(asked -> inBook(
                place,
                book -> book.read(
                        reading -> chassis.isEmpty() ? holding(screen, reading, asked) : vehicle(screen, reading))));
    }

    private Outcome<AsBuilt.Asked> sound() {
        Map<String, String> said = new LinkedHashMap<>();
        said.put("--part", part);
        said.put("--revision", revision);
        said.put("--drawing", drawing);
        said.put("--issue", issue);
        said.put("--serial", serial);
        said.put("--lot", lot);
        said.put("--heat", heat);
        said.put("--chassis", chassis);
        List<Fault> faults = new ArrayList<>();
        said.forEach((option, text) -> {
            if (!text.isEmpty()) {
                faults.addAll(Said.text(option, text, TextShape.LINE).faults());
            }
        });
        if (part.isEmpty()
                && drawing.isEmpty()
                && serial.isEmpty()
                && lot.isEmpty()
                && heat.isEmpty()
                && chassis.isEmpty()) {
            faults.add(
                    Fault.of("", "nothing to look for", "--part, --drawing, --serial, --lot, --heat or --chassis", ""));
        }
        return faults.isEmpty()
                ? Outcome.sound(new AsBuilt.Asked(part, revision, drawing, issue, serial, lot, heat))
                : Outcome.faulty(faults);
    }

    private Outcome<Integer> holding(Screen screen, Reading reading, AsBuilt.Asked asked) {
        List<Recalled> found = reading.asBuilt().holding(asked);
        answer(
                screen,
                found,
                all -> JsonOut.list(all, each -> each.json(reading.persons().shown(each.customer()))),
                all -> {
                    all.forEach(each -> screen.wrapped(0, line(reading, each)));
                    long kits = all.stream().map(Recalled::order).distinct().count();
                    screen.wrapped(0, kits == 1 ? "1 kit." : kits + " kits.");
                    reading.asBuilt().inStores(asked).forEach(each -> screen.wrapped(0, "In no kit: " + each + "."));
                    if (!part.isEmpty() && !reading.asBuilt().knowsPart(part)) {
                        screen.wrapped(
                                0, "No such part: no kit, store or purchase order of the book has '" + part + "'.");
                    }
                });
        return Outcome.sound(Exit.OK);
    }

    private static String line(Reading reading, Recalled each) {
        return each.order() + ", " + each.state().written() + ", "
                + reading.persons().shown(each.customer())
                + (each.chassis().isEmpty() ? "" : ", chassis " + each.chassis()) + ": " + each.part()
                + (each.revision().isEmpty() ? "" : " rev. " + each.revision()) + ", " + each.says()
                + (each.out() ? ", taken out since" : "");
    }

    private Outcome<Integer> vehicle(Screen screen, Reading reading) {
        List<String> orders = reading.asBuilt().ofChassis(chassis);
        if (orders.isEmpty()) {
            return Outcome.faulty(
                    Fault.of("--chassis", "'" + chassis + "'", "the chassis number of a vehicle in the book", ""));
        }
        return Outcome.all(orders.stream()
                        .map(name -> OrderDesk.standing(reading, name))
                        .toList())
                .then(standings -> {
                    List<AsBuiltRecord> records = standings.stream()
                            .map(standing -> AsBuiltRecord.of(reading, standing))
                            .toList();
                    answer(
                            screen,
                            records,
                            all -> JsonOut.list(all, AsBuiltRecord::json),
                            all -> all.forEach(record -> {
                                OrderStanding order = record.order();
                                screen.heading(OrderCommand.line(order) + ", "
                                        + reading.persons().shown(order.customer()));
                                record.parts().forEach(each -> screen.wrapped(2, BuiltCommand.line(each)));
                                record.notes()
                                        .forEach(note ->
                                                screen.wrapped(2, note.what() + ", " + note.of() + ": " + note.says()));
                                record.readings().forEach(each -> screen.wrapped(2, each.toString()));
                                record.differences().forEach(each -> screen.wrapped(2, each));
                            }));
                    return Outcome.sound(Exit.OK);
                });
    }
}
