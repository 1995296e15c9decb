package boltlore.checking;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.EnvelopeMm;
import boltlore.catalogue.Family;
import boltlore.catalogue.Fits;
import boltlore.catalogue.Line;
import boltlore.catalogue.Part;
import boltlore.catalogue.Position;
import boltlore.measure.Digits;
import boltlore.measure.PartNumber;
import boltlore.measure.PositionName;
import java.math.BigDecimal;
import java.util.HashSet;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Every number above one, and every length, volume or mass, follows from something: a quantity of fits.json, the joins of ports, a
 * route, the circuit that a coolant fills, the box that a seal goes around. What follows from nothing is typed wrong unseen. A family
 * that names no quantity in fits.json has not begun with them and is not asked.
 */
final class CountsFollow {

    private static final String EACH = "each";
    private static final String METRE = "m";

    /** A seal goes around its box once, and laps or butts: up to 15 % more; common practice, no source. */
    private static final BigDecimal LAPS = new BigDecimal("1.15");

    private static final int KILO = 3;

    private final Catalogue catalogue;
    private final Family family;
    private final Together together;
    private final Set<PositionName> positions = new HashSet<>();
    private final Set<PartNumber> parts = new HashSet<>();

    private CountsFollow(Catalogue catalogue, Family family) {
        this.catalogue = catalogue;
        this.family = family;
        this.together = new Together(family);
        Fits fits = family.fits();
        fits.quantities().stream()
                .flatMap(follows -> Stream.concat(follows.of().stream(), follows.from().stream()))
                .map(Fits.Share::counted)
                .forEach(this::counted);
        fits.boxes().forEach(box -> positions.add(box.holds()));
        fits.straps().forEach(strap -> positions.add(strap.position()));
        fits.runs().stream().flatMap(run -> run.steps().stream()).forEach(this::joined);
        family.driving().cooling().circuits().stream()
                .map(circuit -> circuit.fitted().coolantAt())
                .filter(Objects::nonNull)
                .forEach(positions::add);
    }

    private void counted(Fits.Counted counted) {
        if (counted instanceof Fits.Pieces at) {
            positions.add(at.position());
        } else if (counted instanceof Fits.Metres at) {
            positions.add(at.position());
        } else if (counted instanceof Fits.PartsInKit of) {
            parts.add(of.part());
        }
    }

    /** Pieces with ports are joined piece by piece; what is laid by the metre is cut to any length. */
    private void joined(Fits.Step step) {
        family.position(step.position())
                .filter(position -> position.lines().stream()
                        .allMatch(line -> catalogue.part(line.part()).unit().equals(EACH)))
                .ifPresent(position -> positions.add(position.name()));
    }

    static Stream<Remark> remarks(Catalogue catalogue) {
        return catalogue.families().values().stream().flatMap(family -> {
            CountsFollow check = new CountsFollow(catalogue, family);
            Stream<Remark> open = family.fits().quantities().isEmpty()
                    ? Stream.of()
                    : family.positions().stream().flatMap(check::open);
            return Stream.concat(open, family.positions().stream().flatMap(check::seals));
        });
    }

    private Stream<Remark> open(Position position) {
        return position.lines().stream()
                .filter(line -> !positions.contains(position.name()) && !parts.contains(line.part()))
                .filter(line -> !single(line)
                        && !routed(position, line)
                        && around(position, line).isEmpty())
                .map(line -> new Remark(
                        Said.line(family, line),
                        Check.COUNT_OPEN,
                        amount(line) + " of " + line.part() + ", and nothing says from what that follows",
                        "a quantity in fits.json that counts it, or for what is laid by the metre a route",
                        "Say under 'quantities' what so many are for, so that a wrong number is told"));
    }

    private boolean single(Line line) {
        return unit(line).equals(EACH) && line.quantity().compareTo(BigDecimal.ONE) == 0;
    }

    private boolean routed(Position position, Line line) {
        return unit(line).equals(METRE) && !position.routes().isEmpty();
    }

    private String unit(Line line) {
        return catalogue.part(line.part()).unit();
    }

    private String amount(Line line) {
        return Digits.plain(line.quantity()) + " " + unit(line);
    }

    /** The box that a seal lies on. */
    private Optional<Position> around(Position position, Line line) {
        PositionName under = position.under();
        return under == null
                        || !unit(line).equals(METRE)
                        || !position.routes().isEmpty()
                        || family.fits().boxes().stream()
                                .noneMatch(box -> box.position().equals(under))
                ? Optional.empty()
                : family.position(under);
    }

    private Stream<Remark> seals(Position position) {
        return position.lines().stream()
                .flatMap(line -> around(position, line).stream()
                        .flatMap(box -> box.lines().stream())
                        .filter(box -> together.canHold(line.when(), box.when()))
                        .flatMap(box -> seal(line, catalogue.part(box.part())).stream()));
    }

    private Optional<Remark> seal(Line line, Part box) {
        EnvelopeMm inner = box.geometry().inner();
        if (inner == null) {
            return Optional.empty();
        }
        BigDecimal least =
                BigDecimal.valueOf(2L * (inner.length() + inner.width())).movePointLeft(KILO);
        BigDecimal most = least.multiply(LAPS);
        return line.quantity().compareTo(least) >= 0 && line.quantity().compareTo(most) <= 0
                ? Optional.empty()
                : Optional.of(
                        new Remark(
                                Said.line(family, line),
                                Check.SEAL,
                                amount(line) + " of " + line.part() + " around " + box.number(),
                                Digits.upTo(least, 2) + " to " + Digits.upTo(most, 2)
                                        + " m, once around the inside of the box and its laps",
                                "Correct the quantity, the box's 'innerMm', or give the position a route if it lies elsewhere"));
    }
}
