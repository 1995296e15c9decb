package boltlore.checking;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Contained;
import boltlore.catalogue.Need;
import boltlore.catalogue.Part;
import boltlore.catalogue.PartKind;
import boltlore.catalogue.Tracked;
import boltlore.measure.Digits;
import boltlore.measure.PartNumber;
import java.math.BigDecimal;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;

/** What the house says of a kind of parts is true of each of its parts: their cautions, what stores write down, and how many of
 * another kind they take. */
final class KindsKept {

    private final Catalogue catalogue;

    private KindsKept(Catalogue catalogue) {
        this.catalogue = catalogue;
    }

    static Stream<Remark> remarks(Catalogue catalogue) {
        KindsKept kept = new KindsKept(catalogue);
        return catalogue.parts().values().stream()
                .flatMap(part -> catalogue.house().kinds().values().stream()
                        .filter(kind -> kind.covers(part))
                        .flatMap(kind -> Stream.of(
                                        cautions(part, kind), tracked(part, kind).stream(), kept.takes(part, kind))
                                .flatMap(remarks -> remarks)));
    }

    /** A serial number tells more than a lot. */
    private static Optional<Remark> tracked(Part part, PartKind kind) {
        Tracked asked = kind.tracked();
        return asked == null || part.tracked() == Tracked.SERIAL || part.tracked() == asked
                ? Optional.empty()
                : Optional.of(new Remark(
                        Said.part(part),
                        Check.TRACKED,
                        part.tracked() == null ? "no 'tracked'" : "'tracked' by " + written(part.tracked()),
                        "by " + written(asked) + ", as every " + said(kind) + " is by house.json",
                        "Add it: without it no recall finds the kits that have a bad one"));
    }

    static String written(Tracked tracked) {
        return tracked.name().toLowerCase(Locale.ROOT);
    }

    private static Stream<Remark> cautions(Part part, PartKind kind) {
        return kind.cautions().stream()
                .filter(caution -> !part.cautions().contains(caution))
                .map(caution -> new Remark(
                        Said.part(part),
                        Check.KIND_CAUTION,
                        "no caution '" + caution + "'",
                        "that caution, which every " + said(kind) + " has by house.json",
                        "Add it to the part's cautions, so that it stands on the sheets"));
    }

    private Stream<Remark> takes(Part part, PartKind kind) {
        return kind.takes().stream().flatMap(takes -> {
            PartKind other = Objects.requireNonNull(catalogue.house().kinds().get(takes.kind()));
            BigDecimal found = held(part, other);
            return found.compareTo(BigDecimal.valueOf(takes.quantity())) == 0
                    ? Stream.empty()
                    : Stream.of(new Remark(
                            Said.part(part),
                            Check.KIND_TAKES,
                            Digits.plain(found) + " x " + said(other) + " under 'contains' and 'needs'",
                            takes.quantity() + ", as every " + said(kind) + " takes by house.json",
                            "Correct the quantity, or the kinds of the part"));
        });
    }

    private BigDecimal held(Part part, PartKind other) {
        Stream<BigDecimal> inside = part.contains().stream()
                .filter(child -> other.covers(of(child.part())))
                .map(Contained::quantity);
        Stream<BigDecimal> asked = part.needs().stream()
                .filter(need -> other.covers(of(need.part())))
                .map(KindsKept::asked);
        return Stream.concat(inside, asked).reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    private static BigDecimal asked(Need need) {
        return need.ask() instanceof Need.Each each ? each.quantity() : ((Need.AtJoint) need.ask()).atLeast();
    }

    private Part of(PartNumber number) {
        return catalogue.part(number);
    }

    private static String said(PartKind kind) {
        return kind.says().in("en");
    }
}
