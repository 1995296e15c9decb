package boltlore.checking;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Family;
import boltlore.catalogue.Line;
import boltlore.catalogue.Part;
import boltlore.catalogue.Position;
import boltlore.catalogue.Route;
import boltlore.measure.PartNumber;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** A cable or hose is long enough, and not too long, in each case of its route in which it can be called for. */
final class CableRoutes {

    private final Family family;
    private final Map<PartNumber, Part> parts;
    private final Together together;

    private CableRoutes(Catalogue catalogue, Family family) {
        this.family = family;
        this.parts = catalogue.parts();
        this.together = new Together(family);
    }

    static Stream<Remark> remarks(Catalogue catalogue) {
        return catalogue.families().values().stream().flatMap(family -> {
            CableRoutes check = new CableRoutes(catalogue, family);
            return family.positions().stream().flatMap(check::of);
        });
    }

    private Stream<Remark> of(Position position) {
        return position.routes().stream()
                .flatMap(route -> position.lines().stream().flatMap(line -> of(position, route, line).stream()));
    }

    private Optional<Remark> of(Position position, Route route, Line line) {
        Part part = parts.get(line.part());
        Integer lengthMm = part == null ? null : lengthMm(part, line);
        if (lengthMm == null || route.fits(lengthMm) || !together.canHold(line.when(), route.when())) {
            return Optional.empty();
        }
        return Optional.of(remark(position, route, line, lengthMm));
    }

    /** Its own, or as much as is laid of what is sold by the metre. */
    private static @Nullable Integer lengthMm(Part part, Line line) {
        return part.lengthMm() == null && part.unit().equals("m")
                ? Integer.valueOf(line.quantity().movePointRight(3).intValue())
                : part.lengthMm();
    }

    private Remark remark(Position position, Route route, Line line, int lengthMm) {
        int longest = route.needsMm() + route.slackMm();
        return new Remark(
                Said.line(family, line),
                Check.CABLE_LENGTH,
                line.part() + " is " + lengthMm + " mm long",
                route.needsMm() + " to " + longest + " mm on the route of " + position.name(),
                "Check its length, or let the line and the route ask for the same choices");
    }
}
