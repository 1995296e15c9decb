package boltlore.proof.fits;

import boltlore.catalogue.CoatingSpec;
import boltlore.catalogue.Condition;
import boltlore.catalogue.Feature;
import boltlore.catalogue.Fits;
import boltlore.catalogue.Line;
import boltlore.catalogue.Position;
import boltlore.logic.All;
import boltlore.logic.Any;
import boltlore.logic.Term;
import boltlore.measure.PartNumber;
import boltlore.measure.PositionName;
import boltlore.proof.KitView;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Earth straps and what they join: a coat insulates, so that the face under a lug is masked. A strap that hangs on nothing, or
 * of which nobody says what it joins, earths nothing.
 */
final class EarthStraps {

    private EarthStraps() {}

    static List<FitFinding.Possible> coated(KitView kit) {
        List<FitFinding.Possible> all = new ArrayList<>();
        for (Fits.Strap strap : kit.family().fits().straps()) {
            for (PositionName end : strap.ends()) {
                kit.kit().position(end).lines().stream()
                        .filter(line -> isCoated(kit, line))
                        .forEach(line -> all.add(coated(kit, strap, line)));
            }
        }
        return all.stream().distinct().toList();
    }

    private static boolean isCoated(KitView kit, Line line) {
        CoatingSpec coat = kit.catalogue().part(line.part()).coat();
        return coat != null
                && coat.features().stream()
                        .noneMatch(feature -> feature.kind() == Feature.Kind.EARTH
                                && feature.treat() == Feature.Treat.MASKED
                                && feature.count() > 0);
    }

    private static FitFinding.Possible coated(KitView kit, Fits.Strap strap, Line line) {
        return FitFinding.EARTH_FACE_COATED.when(
                All.of(there(kit, strap), kit.kit().in(line.name())),
                line.name().text(),
                strap.position().text(),
                List.of(line.name()),
                "strap",
                Broken.said(kit, strap.position()),
                "part",
                BoxContents.named(kit, line.part()));
    }

    private static Condition there(KitView kit, Fits.Strap strap) {
        return All.of(kit.kit().unfolded(strap.when()), kit.kit().filled(strap.position()));
    }

    static List<FitFinding.Possible> loose(KitView kit) {
        List<FitFinding.Possible> all = new ArrayList<>();
        for (Fits.Strap strap : kit.family().fits().straps()) {
            for (PositionName end : strap.ends()) {
                all.add(FitFinding.EARTH_STRAP_LOOSE.when(
                        All.of(there(kit, strap), Any.but(kit.kit().filled(end))),
                        strap.position().text(),
                        end.text(),
                        List.of(),
                        "strap",
                        Broken.said(kit, strap.position()),
                        "position",
                        Broken.said(kit, end)));
            }
        }
        return all.stream().distinct().toList();
    }

    /** Wherever a part stands that is such a strap at some position, each piece of it is said. */
    static List<FitFinding.Possible> unnamed(KitView kit) {
        List<Fits.Strap> straps = kit.family().fits().straps();
        Set<PartNumber> parts = straps.stream()
                .flatMap(strap -> kit.kit().position(strap.position()).lines().stream())
                .map(Line::part)
                .collect(Collectors.toSet());
        return kit.family().positions().stream()
                .filter(position -> position.lines().stream().map(Line::part).anyMatch(parts::contains))
                .map(position -> unnamed(kit, position, straps))
                .toList();
    }

    private static FitFinding.Possible unnamed(KitView kit, Position position, List<Fits.Strap> straps) {
        List<Term> pieces = position.lines().stream()
                .map(line -> new Term(line.quantity(), kit.kit().in(line.name())))
                .toList();
        List<Term> said = straps.stream()
                .filter(strap -> strap.position().equals(position.name()))
                .map(strap -> new Term(BigDecimal.ONE, there(kit, strap)))
                .toList();
        return FitFinding.EARTH_STRAPS_NOT_NAMED.when(
                kit.sums().differ(pieces, said),
                position.name().text(),
                "",
                position.lines().stream().map(Line::name).toList(),
                "strap",
                Broken.said(kit, position.name()));
    }
}
