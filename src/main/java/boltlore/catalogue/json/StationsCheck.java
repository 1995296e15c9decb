package boltlore.catalogue.json;

import boltlore.catalogue.Aboard;
import boltlore.catalogue.Chassis;
import boltlore.catalogue.Donor;
import boltlore.catalogue.Family;
import boltlore.catalogue.Option;
import boltlore.catalogue.OptionValue;
import boltlore.catalogue.Part;
import boltlore.catalogue.Removed;
import boltlore.catalogue.Role;
import boltlore.catalogue.Station;
import boltlore.catalogue.Weights;
import boltlore.faults.Nearest;
import boltlore.measure.PartNumber;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** Stations lie in the car, eras are eras of the family, and no more comes off than there is. */
final class StationsCheck {

    private static final List<String> NOT_LIQUID = List.of("each", "set", "m");

    private final Family family;
    private final Donor donor;
    private final Reading reading;

    private StationsCheck(Family family, Donor donor, Reading reading) {
        this.family = family;
        this.donor = donor;
        this.reading = reading;
    }

    /** Without a donor vehicle, or with one that could not be read, there is nothing to compare with. */
    static void check(Family family, Reading reading) {
        oneDriver(family, reading);
        Donor donor = family.donor();
        if (donor != null && reading.sources().know(donor)) {
            StationsCheck check = new StationsCheck(family, donor, reading);
            check.eras();
            check.window();
            check.removed();
        }
    }

    /** A share by volume is one of litres, by mass of kilograms. */
    static void concentrates(Family family, Map<PartNumber, Part> parts, Reading reading) {
        family.weights().concentrates().keySet().stream()
                .filter(number -> parts.containsKey(number)
                        && NOT_LIQUID.contains(parts.get(number).unit()))
                .forEach(number -> fault(
                        reading,
                        number,
                        "'" + number + "', which is counted neither in litres nor in kilograms",
                        "a liquid with unit 'l' or 'kg'",
                        ""));
    }

    private static void oneDriver(Family family, Reading reading) {
        family.weights().aboard().stream()
                .filter(aboard -> aboard.who() == Aboard.Who.DRIVER)
                .skip(1)
                .forEach(again -> fault(reading, again, "a second driver", "one driver", "Make it a passenger."));
    }

    private void eras() {
        List<String> known = family.inRole(Role.ERA).map(Option::values).orElse(List.of()).stream()
                .map(OptionValue::value)
                .toList();
        donor.eras().forEach((era, chassis) -> {
            if (!known.contains(era)) {
                String expected = known.isEmpty() ? "no eras, as no option is in role 'era'" : "a value of that option";
                fault(reading, chassis, "era '" + era + "'", expected, Nearest.advice(era, known, ""));
            }
        });
    }

    /** The car reaches half a wheelbase ahead of the front axle and three quarters of one behind the rear axle. */
    private void window() {
        int wheelbaseMm = chassis().mapToInt(Chassis::wheelbaseMm).max().orElse(0);
        int aheadMm = -wheelbaseMm / 2;
        int behindMm = wheelbaseMm * 7 / 4;
        stations(family.weights())
                .filter(station -> station.behindFrontMm() < aheadMm || station.behindFrontMm() > behindMm)
                .forEach(station -> fault(
                        reading,
                        station,
                        "a station " + station.behindFrontMm() + " mm behind the front axle, which is outside the car",
                        "a station from " + aheadMm + " to " + behindMm + " mm, half a wheelbase ahead of the front"
                                + " axle to three quarters behind the rear one",
                        "Measure from the front axle; ahead of it is below 0."));
    }

    private Stream<Chassis> chassis() {
        return Stream.concat(Stream.of(donor.usual()), donor.eras().values().stream());
    }

    private static Stream<Station> stations(Weights weights) {
        return Stream.of(
                        weights.removed().stream().map(Removed::at),
                        weights.aboard().stream().map(Aboard::at),
                        weights.positions().values().stream(),
                        weights.subSystems().values().stream())
                .flatMap(all -> all);
    }

    private void removed() {
        BigDecimal all = family.weights().removed().stream()
                .filter(removed -> removed.when().isAlways())
                .map(Removed::massKg)
                .reduce(BigDecimal.ZERO, BigDecimal::add);
        chassis()
                .filter(each -> all.compareTo(each.massKg()) >= 0)
                .findFirst()
                .ifPresent(each -> fault(
                        reading,
                        each,
                        "a base vehicle of " + each.massKg().toPlainString() + " kg, of which " + all.toPlainString()
                                + " kg come off",
                        "something that is left of it",
                        "Check the masses under 'removed' in weights.json."));
    }

    private static void fault(Reading reading, Object record, String found, String expected, String advice) {
        reading.faults().add(reading.sources().of(record).fault(found, expected, advice));
    }
}
