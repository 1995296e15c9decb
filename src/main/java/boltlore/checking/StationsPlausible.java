package boltlore.checking;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Chassis;
import boltlore.catalogue.Donor;
import boltlore.catalogue.Family;
import boltlore.catalogue.Fits;
import boltlore.catalogue.Line;
import boltlore.catalogue.Part;
import boltlore.catalogue.Position;
import boltlore.catalogue.Station;
import boltlore.measure.PositionName;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * A station that lies in the vehicle and still cannot be: far from what holds it up, a digit short of its neighbours', a
 * shaft's flange behind the vehicle. What runs from place to place has its station somewhere between.
 */
final class StationsPlausible {

    /** Of the wheelbase, between a part and what holds it; workshop's own value, check before use. */
    private static final int LARGEST_SHARE = 4;

    /** A tenth is a digit left out, give or take what is rounded. */
    private static final int TENFOLD = 10;

    private static final int FROM_MM = 50;

    private final Catalogue catalogue;
    private final Family family;
    private final int wheelbaseMm;

    private StationsPlausible(Catalogue catalogue, Family family, int wheelbaseMm) {
        this.catalogue = catalogue;
        this.family = family;
        this.wheelbaseMm = wheelbaseMm;
    }

    static Stream<Remark> remarks(Catalogue catalogue) {
        return catalogue.families().values().stream().flatMap(family -> {
            Donor donor = family.donor();
            if (donor == null) {
                return Stream.empty();
            }
            int wheelbaseMm = Stream.concat(Stream.of(donor.usual()), donor.eras().values().stream())
                    .mapToInt(Chassis::wheelbaseMm)
                    .max()
                    .orElse(0);
            StationsPlausible check = new StationsPlausible(catalogue, family, wheelbaseMm);
            return Stream.of(check.far(), check.tenth(), check.flanges()).flatMap(remarks -> remarks);
        });
    }

    private Stream<Remark> far() {
        return family.positions().stream()
                .flatMap(position -> held(position).flatMap(other -> far(position, other).stream()));
    }

    /** What it hangs on, and what its lines carry. */
    private Stream<Position> held(Position position) {
        Stream<PositionName> carried = position.lines().stream().flatMap(line -> line.carries().stream());
        return Stream.concat(Stream.ofNullable(position.under()), carried)
                .distinct()
                .flatMap(name -> family.position(name).stream());
    }

    private Optional<Remark> far(Position one, Position other) {
        Station here = family.weights().of(one);
        Station there = family.weights().of(other);
        if (here == null || there == null || runs(one) || runs(other)) {
            return Optional.empty();
        }
        int apartMm = Math.abs(here.behindFrontMm() - there.behindFrontMm());
        return apartMm * LARGEST_SHARE <= wheelbaseMm
                ? Optional.empty()
                : Optional.of(new Remark(
                        said(one),
                        Check.STATION,
                        "a station of " + here.behindFrontMm() + " mm, and of " + there.behindFrontMm() + " mm for "
                                + other.name() + ", which it hangs on or carries",
                        "stations at most " + wheelbaseMm / LARGEST_SHARE + " mm apart, a quarter of the wheelbase",
                        "Measure both again, or give the position a station of its own in weights.json"));
    }

    /** A cable, hose or loom. */
    private boolean runs(Position position) {
        return !position.routes().isEmpty()
                || position.lines().stream()
                        .map(Line::part)
                        .map(catalogue::part)
                        .anyMatch(part -> part.lengthMm() != null || part.unit().equals("m") || plugs(part));
    }

    /** A loom has connectors at its ends and hangs on what it leads to. */
    private static boolean plugs(Part part) {
        return part.name().english().toLowerCase(Locale.ROOT).contains("loom");
    }

    private Stream<Remark> tenth() {
        return family.positions().stream()
                .filter(family.weights()::measured)
                .flatMap(position -> tenfold(position).stream());
    }

    private Optional<Remark> tenfold(Position position) {
        Station own = family.weights().positions().get(position.name());
        if (own == null || Math.abs(own.behindFrontMm()) < FROM_MM) {
            return Optional.empty();
        }
        List<Position> beside = family.positions().stream()
                .filter(family.weights()::measured)
                .filter(other -> other.subSystem().equals(position.subSystem()) && !other.equals(position))
                .toList();
        boolean lonely = beside.stream().noneMatch(other -> differ(own, other) < FROM_MM);
        return beside.stream()
                .filter(other ->
                        lonely && isTenfold(own, family.weights().positions().get(other.name())))
                .findFirst()
                .map(other -> new Remark(
                        said(position),
                        Check.STATION,
                        "a station of " + own.behindFrontMm() + " mm",
                        "about " + own.behindFrontMm() * TENFOLD + " mm, as " + other.name() + " beside it",
                        "Look whether a digit was left out in weights.json"));
    }

    private int differ(Station own, Position other) {
        Station station = family.weights().positions().get(other.name());
        return station == null ? Integer.MAX_VALUE : Math.abs(station.behindFrontMm() - own.behindFrontMm());
    }

    private static boolean isTenfold(Station own, @Nullable Station other) {
        return other != null && Math.abs(own.behindFrontMm() * TENFOLD - other.behindFrontMm()) <= TENFOLD;
    }

    /** A shaft lies between the axles, or little beyond the driven one. */
    private Stream<Remark> flanges() {
        return family.fits().shafts().stream()
                .flatMap(shaft -> Stream.concat(shaft.from().stream(), shaft.to().stream())
                        .map(Fits.Flange::stationMm)
                        .filter(station -> station < -wheelbaseMm / LARGEST_SHARE
                                || station > wheelbaseMm + wheelbaseMm / LARGEST_SHARE)
                        .map(station -> new Remark(
                                "position " + family.name() + "/" + shaft.position(),
                                Check.STATION,
                                "a flange " + station + " mm behind the front axle",
                                "one within a quarter of the wheelbase of " + wheelbaseMm
                                        + " mm ahead of the front axle" + " and behind the rear one",
                                "Measure from the front axle; correct 'shafts' in fits.json")));
    }

    private String said(Position position) {
        return "position " + family.name() + "/" + position.name();
    }
}
