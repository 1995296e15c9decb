package boltlore.catalogue.json;

import boltlore.catalogue.Capacity;
import boltlore.catalogue.Capacity.DaysOff;
import boltlore.catalogue.Capacity.KitWorked;
import boltlore.catalogue.Capacity.OpenHours;
import boltlore.catalogue.Capacity.WorkCentre;
import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Operation;
import boltlore.faults.Nearest;
import boltlore.json.KeyRule;
import boltlore.json.ObjectReader;
import boltlore.json.Range;
import boltlore.json.SourceLocation;
import boltlore.json.TextShape;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** capacity.json: work centres with their hours, and days off. */
final class CapacityFile {

    private static final int MOST_STATIONS = 500;
    private static final int MOST_TOGETHER = 20;
    private static final Range HOURS = Range.above(0, 24);

    /** Above 100 where people are faster than the minutes that the parts are planned with. */
    private static final Range EFFICIENCY = Range.above(0, 150);

    private static final KeyRule STATIONS_HAVE_HOURS = new KeyRule.Needs("stations", "hoursPerDay");
    private static final KeyRule HOURS_HAVE_STATIONS = new KeyRule.Needs("hoursPerDay", "stations");

    private final Reading reading;

    CapacityFile(Reading reading) {
        this.reading = reading;
    }

    Capacity read(ObjectReader reader) {
        return new Capacity(reader.objects("centres", this::centre), reader.findObjects("daysOff", this::daysOff));
    }

    private WorkCentre centre(ObjectReader reader) {
        WorkCentre centre = new WorkCentre(
                reading.named(reader, "centre", Kind.WORK_CENTRE),
                reading.wording(reader, "says"),
                operations(reader),
                kitWork(reader),
                open(reader));
        if (reader.sound() && centre.operations().isEmpty() && centre.kitWork().isEmpty()) {
            String expected = "'operations', 'assembles', 'tests', 'packs' or 'coats'";
            reader.fault("a centre without work", expected, "Say what is worked there.");
        }
        return reading.sources().put(centre, reader.spot("centre"));
    }

    /** Each at one centre only. */
    private Set<String> operations(ObjectReader reader) {
        return new LinkedHashSet<>(reader.findTexts("operations", TextShape.LINE, (operation, location) -> {
            reading.give(Kind.WORKED_OPERATION, operation, location);
            return operation;
        }));
    }

    /** Each at one centre only. */
    private Set<KitWorked> kitWork(ObjectReader reader) {
        Set<KitWorked> found = EnumSet.noneOf(KitWorked.class);
        for (KitWorked work : KitWorked.values()) {
            String key = work.name().toLowerCase(Locale.ROOT);
            if (reader.truth(key, false)) {
                reading.give(Kind.KIT_WORK, key, reader.spot(key));
                found.add(work);
            }
        }
        return found;
    }

    private static @Nullable OpenHours open(ObjectReader reader) {
        Integer stations = reader.findWhole("stations", 1, MOST_STATIONS);
        Integer together = reader.findWhole("peopleTogether", 1, MOST_TOGETHER);
        BigDecimal hours = reader.findDecimal("hoursPerDay", HOURS);
        BigDecimal efficiency = reader.findDecimal("efficiencyPercent", EFFICIENCY);
        for (KeyRule rule : List.of(STATIONS_HAVE_HOURS, HOURS_HAVE_STATIONS)) {
            if (reader.breaks(rule)) {
                reader.fault("only one of 'stations' and 'hoursPerDay'", "both or neither", "");
            }
        }
        return stations == null || hours == null
                ? null
                : new OpenHours(
                        stations,
                        together == null ? 1 : together,
                        hours,
                        efficiency == null ? BigDecimal.valueOf(100) : efficiency);
    }

    private DaysOff daysOff(ObjectReader reader) {
        LocalDate from = reader.date("from");
        LocalDate to = reader.findDate("to");
        if (to != null && to.isBefore(from)) {
            reader.faultAt("to", "a day before 'from'", "the last day off", "Check both.");
        }
        return new DaysOff(from, to == null ? from : to, reading.wording(reader, "says"));
    }

    /** Operations against those that parts are made with. */
    static void check(Catalogue catalogue, Reading reading) {
        Capacity capacity = catalogue.capacity();
        if (capacity == null) {
            return;
        }
        Set<String> known = catalogue.parts().values().stream()
                .flatMap(part -> part.making().operations().stream())
                .map(Operation::operation)
                .collect(Collectors.toCollection(TreeSet::new));
        for (WorkCentre centre : capacity.centres()) {
            SourceLocation location = reading.sources().of(centre);
            centre.operations().stream()
                    .filter(operation -> !known.contains(operation))
                    .forEach(operation -> reading.faults()
                            .add(location.fault(
                                    "'" + operation + "' at this centre",
                                    "an operation of some part",
                                    Nearest.advice(operation, known, "No part is made with it."))));
        }
    }
}
