package boltlore.checking;

import boltlore.catalogue.Buying;
import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Drawing;
import boltlore.catalogue.Family;
import boltlore.catalogue.Part;
import boltlore.catalogue.Placeholder;
import boltlore.catalogue.Position;
import boltlore.catalogue.Source;
import boltlore.measure.PartNumber;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What stands for one thing stands for no other: a supplier's order code, a drawing. And what stands at one position for another
 * body or hand is written down alike by stores.
 */
final class OneThingOneName {

    private OneThingOneName() {}

    static Stream<Remark> remarks(Catalogue catalogue) {
        return Stream.of(
                        orderCodes(catalogue),
                        drawings(catalogue),
                        catalogue.families().values().stream().flatMap(family -> tracked(catalogue, family)))
                .flatMap(remarks -> remarks);
    }

    private static Stream<Remark> orderCodes(Catalogue catalogue) {
        Map<String, List<Part>> byCode = new TreeMap<>();
        catalogue
                .parts()
                .values()
                .forEach(part -> codes(part)
                        .forEach(code -> byCode.computeIfAbsent(code, any -> new ArrayList<>())
                                .add(part)));
        return byCode.entrySet().stream()
                .filter(entry -> entry.getValue().size() > 1)
                .map(entry -> new Remark(
                        Said.part(entry.getValue().get(1)),
                        Check.ORDER_CODE,
                        "order code " + entry.getKey() + ", which "
                                + entry.getValue().get(0).number() + " has, too",
                        "a code of its own: a supplier sends one thing by one code",
                        "Look both up in the supplier's list; where both are one thing, give it one number"));
    }

    private static Stream<String> codes(Part part) {
        Buying buying = part.buying();
        if (buying == null) {
            return Stream.empty();
        }
        Stream<String> offers = buying.offers().stream().map(offer -> offer.orderCode() + " of " + offer.supplier());
        return Stream.concat(Stream.of(buying.orderCode() + " of " + buying.supplier()), offers)
                .filter(code -> !code.startsWith(" of ") && !Placeholder.isText(code))
                .distinct();
    }

    /** One drawing for several lengths is one thing; parts that are called otherwise are not. */
    private static Stream<Remark> drawings(Catalogue catalogue) {
        Map<String, List<Part>> byNumber = new TreeMap<>();
        for (Part part : catalogue.parts().values()) {
            Drawing drawing = part.making().drawing();
            if (drawing != null) {
                byNumber.computeIfAbsent(drawing.number(), any -> new ArrayList<>())
                        .add(part);
            }
        }
        return byNumber.entrySet().stream()
                .flatMap(entry -> entry.getValue().stream()
                        .filter(part -> !alike(entry.getValue().get(0), part))
                        .map(part -> new Remark(
                                Said.part(part),
                                Check.DRAWING_SHARED,
                                "drawing " + entry.getKey() + ", which "
                                        + entry.getValue().get(0).number() + " is made to, too",
                                "a drawing of its own: they are called otherwise, and are no mirror images",
                                "Correct the number of the drawing, or call both alike where they are one thing in several"
                                        + " lengths")));
    }

    private static boolean alike(Part one, Part other) {
        return called(one).equals(called(other)) || mirrored(one, other) || mirrored(other, one);
    }

    private static String called(Part part) {
        return part.name().english().replaceAll("[0-9.]+", "");
    }

    private static boolean mirrored(Part one, Part other) {
        return other.number().equals(one.geometry().mirrorOf());
    }

    /** Where all others at a position are tracked, two at least, one that is not has lost it. */
    private static Stream<Remark> tracked(Catalogue catalogue, Family family) {
        return family.positions().stream().flatMap(position -> {
            Map<Source, List<Part>> bySource = position.lines().stream()
                    .map(line -> line.part())
                    .distinct()
                    .map(catalogue::part)
                    .collect(Collectors.groupingBy(Part::source, TreeMap::new, Collectors.toList()));
            return bySource.values().stream().flatMap(parts -> tracked(position, parts));
        });
    }

    private static Stream<Remark> tracked(Position position, List<Part> parts) {
        List<Part> without =
                parts.stream().filter(part -> part.tracked() == null).toList();
        return without.size() == 1 && parts.size() > 1
                ? without.stream()
                        .map(part -> new Remark(
                                Said.part(part),
                                Check.TRACKED,
                                "no 'tracked'",
                                "by lot or serial number, as " + others(parts, part) + " at position "
                                        + position.name(),
                                "Add it: without it no recall finds the kits that have a bad one"))
                : Stream.empty();
    }

    private static String others(List<Part> parts, Part part) {
        return parts.stream()
                .filter(other -> !other.equals(part))
                .map(Part::number)
                .map(PartNumber::text)
                .filter(Objects::nonNull)
                .collect(Collectors.joining(", "));
    }
}
