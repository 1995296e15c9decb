package boltlore.checking;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.CoatingSpec;
import boltlore.catalogue.Contained;
import boltlore.catalogue.Cut;
import boltlore.catalogue.Handed;
import boltlore.catalogue.Hole;
import boltlore.catalogue.Part;
import boltlore.measure.PartNumber;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** A part that is the mirror image of another has its size, mass, area, holes and pieces, and the other hand of its pair. */
final class MirrorImages {

    private MirrorImages() {}

    static Stream<Remark> remarks(Catalogue catalogue) {
        return catalogue.parts().values().stream()
                .flatMap(part -> Stream.ofNullable(part.geometry().mirrorOf())
                        .map(catalogue.parts()::get)
                        .filter(Objects::nonNull)
                        .flatMap(other -> of(catalogue, part, other).stream()));
    }

    private static List<Remark> of(Catalogue catalogue, Part part, Part other) {
        List<String> differ = new ArrayList<>();
        differ(differ, "mass", mass(part), mass(other));
        differ(differ, "coat", area(part), area(other));
        differ(differ, "holes", holes(part), holes(other));
        differ(differ, "blank", part.making().blank(), other.making().blank());
        differ(differ, "material", part.making().material(), other.making().material());
        differ(differ, "pieces", pieces(part), pieces(other));
        differ(differ, "size", part.geometry().size(), other.geometry().size());
        differ(differ, "length", part.lengthMm(), other.lengthMm());
        differ(differ, "contents", contents(catalogue, part), contents(catalogue, other));
        List<Remark> remarks = new ArrayList<>();
        if (!differ.isEmpty()) {
            remarks.add(new Remark(
                    Said.part(part),
                    Check.MIRROR,
                    "another " + String.join(", ", differ) + " than " + other.number(),
                    "the same, for it is its mirror image",
                    "Correct one of the two, or take 'mirrorOf' out"));
        }
        if (!otherHand(part.handed(), other.handed())) {
            remarks.add(new Remark(
                    Said.part(part),
                    Check.MIRROR,
                    "hand " + said(part.handed()) + ", and " + other.number() + " has " + said(other.handed()),
                    "the other hand of the same pair",
                    "Correct 'hand' or 'pair' of one of the two"));
        }
        return remarks;
    }

    private static void differ(List<String> differ, String what, @Nullable Object left, @Nullable Object right) {
        if (!Objects.equals(left, right)) {
            differ.add(what);
        }
    }

    private static @Nullable BigDecimal mass(Part part) {
        return part.massKg() == null ? null : part.massKg().stripTrailingZeros();
    }

    /** Area, sections, features and size, which do not depend on the hand. */
    private static @Nullable CoatingSpec area(Part part) {
        return part.coat();
    }

    private static Map<BigDecimal, Integer> holes(Part part) {
        Map<BigDecimal, Integer> holes = new TreeMap<>();
        for (Hole hole : part.holes()) {
            holes.merge(hole.diameterMm(), hole.count(), Integer::sum);
        }
        return holes;
    }

    /** A slanted end is slanted the other way, or the piece is turned over: only the size of the angles counts. */
    private static List<String> pieces(Part part) {
        return part.making().cuts().stream().map(MirrorImages::piece).sorted().toList();
    }

    private static String piece(Cut cut) {
        String angles = String.join(
                "/",
                cut.endAngles().stream()
                        .map(angle -> angle.abs().stripTrailingZeros())
                        .sorted()
                        .map(BigDecimal::toPlainString)
                        .toList());
        return cut.material() + " " + cut.lengthMm().stripTrailingZeros().toPlainString() + " × " + cut.count() + " "
                + angles;
    }

    /** A child or its mirror image. */
    private static List<String> contents(Catalogue catalogue, Part part) {
        return part.contains().stream()
                .sorted(Comparator.comparing(child -> first(catalogue, child)))
                .map(child -> first(catalogue, child) + " × "
                        + child.quantity().stripTrailingZeros().toPlainString())
                .toList();
    }

    private static PartNumber first(Catalogue catalogue, Contained child) {
        PartNumber mirror = catalogue.part(child.part()).geometry().mirrorOf();
        return mirror == null ? child.part() : mirror;
    }

    private static boolean otherHand(@Nullable Handed one, @Nullable Handed other) {
        return one != null && other != null && one.pair().equals(other.pair()) && one.hand() != other.hand();
    }

    private static String said(@Nullable Handed handed) {
        return handed == null ? "none" : handed.hand().name().toLowerCase(Locale.ROOT) + " of '" + handed.pair() + "'";
    }
}
