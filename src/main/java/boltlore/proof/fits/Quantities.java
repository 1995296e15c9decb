package boltlore.proof.fits;

import boltlore.catalogue.Condition;
import boltlore.catalogue.Fits;
import boltlore.catalogue.Hole;
import boltlore.catalogue.Line;
import boltlore.catalogue.Port;
import boltlore.logic.Any;
import boltlore.logic.Term;
import boltlore.measure.LineName;
import boltlore.measure.PositionName;
import boltlore.proof.KitView;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Quantities that follow from others, and do not in some order. */
final class Quantities {

    private static final int KILO = 3;

    private final KitView kit;

    private Quantities(KitView kit) {
        this.kit = kit;
    }

    /** Of bolts and the like that hold drive unit or battery. */
    static List<FitFinding.Possible> safety(KitView kit) {
        return findings(kit, true, FitFinding.SAFETY_QUANTITY_DOES_NOT_FOLLOW);
    }

    static List<FitFinding.Possible> others(KitView kit) {
        return findings(kit, false, FitFinding.QUANTITY_DOES_NOT_FOLLOW);
    }

    private static List<FitFinding.Possible> findings(KitView kit, boolean safety, FitFinding kind) {
        Quantities quantities = new Quantities(kit);
        return kit.family().fits().quantities().stream()
                .filter(follows -> follows.safety() == safety)
                .map(follows -> quantities.finding(follows, kind))
                .toList();
    }

    private FitFinding.Possible finding(Fits.Follows follows, FitFinding kind) {
        return kind.when(
                kit.sums().differ(sum(follows.of()), sum(follows.from())),
                follows.name(),
                "",
                Stream.concat(follows.of().stream(), follows.from().stream())
                        .flatMap(share -> lines(share.counted()))
                        .distinct()
                        .toList(),
                "what",
                follows.name(),
                "because",
                follows.because());
    }

    private List<Term> sum(List<Fits.Share> shares) {
        return shares.stream()
                .flatMap(share -> terms(share.counted())
                        .map(term -> new Term(term.quantity().multiply(share.each()), term.when())))
                .toList();
    }

    private Stream<Term> terms(Fits.Counted counted) {
        if (counted instanceof Fits.Pieces at) {
            return at(at.position(), Line::quantity);
        }
        if (counted instanceof Fits.Metres at) {
            return at(at.position(), this::metres);
        }
        if (counted instanceof Fits.Holes at) {
            return at(at.position(), line -> line.quantity().multiply(holes(line, at.diameterMm())));
        }
        return counted instanceof Fits.PartsInKit of
                ? kit.parts().terms(of.part()).stream()
                : joins((Fits.JoinsMade) counted);
    }

    private Stream<Term> at(PositionName position, Function<Line, BigDecimal> many) {
        return kit.kit().position(position).lines().stream()
                .map(line -> new Term(many.apply(line), kit.kit().in(line.name())));
    }

    /** What is issued by the metre lies there in its quantity, anything else in its length. */
    private BigDecimal metres(Line line) {
        Integer lengthMm = kit.catalogue().part(line.part()).lengthMm();
        return lengthMm == null
                ? line.quantity()
                : line.quantity().multiply(BigDecimal.valueOf(lengthMm).movePointLeft(KILO));
    }

    private BigDecimal holes(Line line, BigDecimal diameterMm) {
        return BigDecimal.valueOf(kit.catalogue().part(line.part()).holes().stream()
                .filter(hole -> hole.diameterMm().compareTo(diameterMm) == 0)
                .mapToInt(Hole::count)
                .sum());
    }

    /** One for each two ports that are joined. */
    private Stream<Term> joins(Fits.JoinsMade made) {
        List<Term> terms = new ArrayList<>();
        for (Join join : Join.once(kit)) {
            List<Condition> when = join.ends(kit)
                    .filter(Join.Ends::fit)
                    .filter(ends -> isOf(made, ends.out()))
                    .map(Join.Ends::when)
                    .toList();
            terms.add(new Term(BigDecimal.ONE, Any.of(when)));
        }
        return terms.stream().filter(term -> !term.when().equals(Any.NEVER));
    }

    private static boolean isOf(Fits.JoinsMade made, @Nullable Port port) {
        if (port == null || port.joint() == null || !port.kind().equals(made.kind())) {
            return false;
        }
        BigDecimal bore = port.joint().boreMm();
        return made.boreMm() == null || (bore != null && bore.compareTo(made.boreMm()) == 0);
    }

    private Stream<LineName> lines(Fits.Counted counted) {
        if (counted instanceof Fits.Pieces at) {
            return names(at.position());
        }
        if (counted instanceof Fits.Metres at) {
            return names(at.position());
        }
        return counted instanceof Fits.Holes at ? names(at.position()) : Stream.empty();
    }

    private Stream<LineName> names(PositionName position) {
        return kit.kit().position(position).lines().stream().map(Line::name);
    }
}
