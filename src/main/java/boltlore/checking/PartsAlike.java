package boltlore.checking;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.CoatingSpec;
import boltlore.catalogue.Customs;
import boltlore.catalogue.Family;
import boltlore.catalogue.Line;
import boltlore.catalogue.Need;
import boltlore.catalogue.Operation;
import boltlore.catalogue.Part;
import boltlore.catalogue.Position;
import boltlore.measure.PartNumber;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Parts that are one thing for several bodies, hands, sizes or families are made, coated, packed and bolted alike: those that
 * stand at one position, and those that have one name but for their numbers. One that is unlike all others is told.
 */
final class PartsAlike {

    /** Fewer than that may be two things, unless they have one name. */
    private static final int OTHERS = 2;

    /** A size or rating, and no part of another name: 'M10' is a name of its own. */
    private static final Pattern NUMBER = Pattern.compile("(?<![\\p{L}\\d.-])[0-9.]+");

    private record Trait(String key, Function<Part, String> of) {}

    private static final List<Trait> TRAITS = List.of(
            new Trait("source", part -> part.source().name()),
            new Trait("unit", Part::unit),
            new Trait("joined", part -> String.valueOf(part.structure().joined())),
            new Trait("stocked", part -> String.valueOf(part.structure().stocked())),
            new Trait("operations", PartsAlike::operations),
            new Trait("coat", PartsAlike::finish),
            new Trait("coat.hangPoints", part -> {
                CoatingSpec coat = part.coat();
                return coat == null ? "none" : coat.hangPoints() + "";
            }));

    /** Besides, at one position. */
    private static final List<Trait> AT_ONE_PLACE = List.of(
            new Trait("material", part -> String.valueOf(part.making().material())),
            new Trait(
                    "scrapPercent",
                    part -> part.scrapPercent().stripTrailingZeros().toPlainString()),
            new Trait("cautions", part -> part.cautions().stream().sorted().collect(Collectors.joining(", "))));

    /** Besides, by one name. */
    private static final List<Trait> BY_ONE_NAME = List.of(new Trait("customs.hs", part -> {
        Customs customs = part.customs();
        return customs == null ? "none" : customs.hs().replaceFirst("[.].*", "");
    }));

    private final Catalogue catalogue;

    private PartsAlike(Catalogue catalogue) {
        this.catalogue = catalogue;
    }

    static Stream<Remark> remarks(Catalogue catalogue) {
        PartsAlike check = new PartsAlike(catalogue);
        return Stream.concat(
                catalogue.families().values().stream()
                        .flatMap(family -> family.positions().stream()
                                .flatMap(position ->
                                        Stream.concat(check.at(family, position), check.bolted(family, position)))),
                check.named());
    }

    private Stream<Remark> at(Family family, Position position) {
        List<Part> parts = position.lines().stream()
                .map(Line::part)
                .distinct()
                .map(catalogue::part)
                .toList();
        String others = "the others at " + position.name() + " of " + family.name();
        return Stream.concat(TRAITS.stream(), AT_ONE_PLACE.stream())
                .flatMap(trait ->
                        odd(parts, trait.of(), OTHERS).flatMap(part -> Stream.of(remark(part, trait, parts, others))));
    }

    private Stream<Remark> named() {
        Map<String, List<Part>> byName = new TreeMap<>();
        catalogue
                .parts()
                .values()
                .forEach(part -> byName.computeIfAbsent(
                                NUMBER.matcher(part.name().english()).replaceAll(""), any -> new ArrayList<>())
                        .add(part));
        return byName.values().stream()
                .flatMap(parts -> Stream.concat(TRAITS.stream(), BY_ONE_NAME.stream())
                        .flatMap(trait -> odd(parts, trait.of(), trait.key().equals("customs.hs") ? OTHERS : 1)
                                .map(part -> remark(
                                        part,
                                        trait,
                                        parts,
                                        "other parts of its name, such as "
                                                + other(parts, part).number() + ","))));
    }

    /** Which kinds of bolts, nuts and washers a line brings with its part; how many may differ. */
    private Stream<Remark> bolted(Family family, Position position) {
        Function<Line, String> needs =
                line -> Stream.concat(line.needs().stream(), catalogue.part(line.part()).needs().stream())
                        .map(Need::part)
                        .map(PartNumber::text)
                        .distinct()
                        .sorted()
                        .collect(Collectors.joining(", "));
        return odd(position.lines(), needs, OTHERS)
                .map(line -> new Remark(
                        Said.line(family, line),
                        Check.UNLIKE_KIND,
                        "'needs' " + needs.apply(line),
                        needs.apply(other(position.lines(), line)) + ", as the other lines at " + position.name(),
                        "Look whether its bolts have another length, or are missing"));
    }

    /** The one that is unlike all others, which are like each other; of two the latter. */
    private static <T> Stream<T> odd(List<T> all, Function<T, String> trait, int others) {
        if (all.size() <= others) {
            return Stream.empty();
        }
        Map<String, List<T>> byTrait =
                all.stream().collect(Collectors.groupingBy(trait, TreeMap::new, Collectors.toList()));
        return byTrait.size() == 2
                ? byTrait.values().stream()
                        .filter(alone -> alone.size() == 1)
                        .flatMap(List::stream)
                        .max(Comparator.comparing(all::indexOf))
                        .stream()
                : Stream.empty();
    }

    private static <T> T other(List<T> all, T than) {
        return all.stream().filter(each -> !each.equals(than)).findFirst().orElse(than);
    }

    private static Remark remark(Part part, Trait trait, List<Part> all, String others) {
        return new Remark(
                Said.part(part),
                Check.UNLIKE_KIND,
                "'" + trait.key() + "' " + trait.of().apply(part),
                trait.of().apply(other(all, part)) + ", as " + others + " have it",
                "Correct it, or call the part otherwise where it is another thing");
    }

    private static String operations(Part part) {
        return part.making().operations().stream().map(Operation::operation).collect(Collectors.joining(", "));
    }

    private static String finish(Part part) {
        CoatingSpec coat = part.coat();
        return coat == null ? "none" : coat.role() == null ? "finish " + coat.finish() : "role " + coat.role();
    }
}
