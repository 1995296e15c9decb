package boltlore.checking;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.CoatingSpec;
import boltlore.catalogue.Family;
import boltlore.catalogue.Feature;
import boltlore.catalogue.Line;
import boltlore.catalogue.Need;
import boltlore.catalogue.Part;
import boltlore.catalogue.Position;
import boltlore.measure.Digits;
import boltlore.measure.PositionName;
import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Threads, faces and earth points that stay bare: what stands at one position for another body or hand has the same ones, and a
 * coated part has as many threads as bolts go into it.
 */
record MasksAlike(Catalogue catalogue, Family family) {

    static Stream<Remark> remarks(Catalogue catalogue) {
        return catalogue.families().values().stream().flatMap(family -> {
            MasksAlike check = new MasksAlike(catalogue, family);
            return Stream.concat(
                    family.positions().stream().flatMap(check::alike),
                    family.positions().stream().flatMap(check::enough));
        });
    }

    private Stream<Remark> alike(Position position) {
        List<Part> coated = coated(position).toList();
        Set<String> all = coated.stream().flatMap(MasksAlike::named).collect(Collectors.toCollection(TreeSet::new));
        return coated.stream().flatMap(part -> {
            Set<String> lacks = new TreeSet<>(all);
            lacks.removeAll(named(part).collect(Collectors.toSet()));
            return lacks.isEmpty()
                    ? Stream.<Remark>empty()
                    : Stream.of(new Remark(
                            Said.part(part),
                            Check.MASKS,
                            "coated without " + String.join(", ", lacks),
                            "the same threads, faces and earth points as the other parts at " + position.name() + " of "
                                    + family.name(),
                            "Add them to its 'features', or the powder closes them; take them out of the others where"
                                    + " they have none"));
        });
    }

    private Stream<Part> coated(Position position) {
        return position.lines().stream()
                .map(Line::part)
                .distinct()
                .map(catalogue::part)
                .filter(part -> part.coat() != null);
    }

    private static Stream<String> named(Part part) {
        return features(part)
                .map(feature -> feature.treat().name().toLowerCase(Locale.ROOT) + " "
                        + feature.kind().name().toLowerCase(Locale.ROOT) + " " + feature.size())
                .distinct();
    }

    private static Stream<Feature> features(Part part) {
        CoatingSpec coat = part.coat();
        return coat == null ? Stream.of() : coat.features().stream();
    }

    /** Of what hangs on a coated part whose threads are named, and whose bolts bring no nut. */
    private Stream<Remark> enough(Position position) {
        PositionName under = position.under();
        Stream<Position> holders = Stream.concat(
                Stream.ofNullable(under).flatMap(name -> family.position(name).stream()),
                family.positions().stream()
                        .filter(other -> other.lines().stream()
                                .anyMatch(line -> line.carries().contains(position.name()))));
        List<Part> held = holders.distinct().flatMap(this::coated).toList();
        return position.lines().stream()
                .flatMap(line ->
                        needs(line).flatMap(need -> held.stream().flatMap(holder -> few(line, need, holder).stream())));
    }

    private Stream<Need> needs(Line line) {
        return Stream.concat(line.needs().stream(), catalogue.part(line.part()).needs().stream());
    }

    private Optional<Remark> few(Line line, Need need, Part holder) {
        Part bolt = catalogue.parts().get(need.part());
        if (bolt == null
                || bolt.fixing() == null
                || !bolt.fixing().isBolt()
                || !(need.ask() instanceof Need.Each each)) {
            return Optional.empty();
        }
        String thread = bolt.fixing().thread();
        BigDecimal threads = BigDecimal.valueOf(features(holder)
                .filter(feature ->
                        feature.kind() == Feature.Kind.THREAD && feature.size().equals(thread))
                .mapToInt(Feature::count)
                .sum());
        boolean nuts = bolt.needs().stream()
                .map(Need::part)
                .map(catalogue.parts()::get)
                .filter(Objects::nonNull)
                .anyMatch(with -> with.fixing() != null && with.fixing().isNut());
        return nuts || threads.signum() == 0 || each.quantity().compareTo(threads) <= 0
                ? Optional.empty()
                : Optional.of(new Remark(
                        Said.part(holder),
                        Check.MASKS,
                        Digits.plain(threads) + " threads " + thread + " kept bare",
                        Digits.plain(each.quantity()) + ", as many as bolts of " + Said.line(family, line)
                                + " go into it",
                        "Correct 'count' of the thread in its 'features', or the bolts of the line"));
    }
}
