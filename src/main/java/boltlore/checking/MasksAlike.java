package boltlore.checking;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.CoatingSpec;
import boltlore.catalogue.Family;
import boltlore.catalogue.Feature;
import boltlore.catalogue.Fixing;
import boltlore.catalogue.Line;
import boltlore.catalogue.Need;
import boltlore.catalogue.Part;
import boltlore.catalogue.Position;
import boltlore.catalogue.ThreadName;
import boltlore.measure.Digits;
import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
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

    /** Bolts of one thread that go into a coated part, from all that hangs on it, and the positions that bring them. */
    private record Bolted(BigDecimal bolts, boolean tapped, Set<String> positions) {

        Bolted and(Bolted other) {
            Set<String> all = new TreeSet<>(positions);
            all.addAll(other.positions());
            return new Bolted(bolts.add(other.bolts()), tapped || other.tapped(), all);
        }
    }

    /** Of a part whose threads are named, or whose joints go into tapped holes. */
    private Stream<Remark> enough(Position at) {
        return coated(at).flatMap(holder -> {
            Map<String, Bolted> byThread = new TreeMap<>();
            family.positions().stream()
                    .filter(position -> hangsOn(position, at, holder))
                    .forEach(position -> bolts(position)
                            .forEach((thread, most) -> byThread.merge(
                                    thread,
                                    new Bolted(
                                            most,
                                            tapped(position, thread),
                                            Set.of(position.name().text())),
                                    Bolted::and)));
            return byThread.entrySet().stream()
                    .flatMap(entry -> few(holder, entry.getKey(), entry.getValue()).stream());
        });
    }

    private static boolean hangsOn(Position position, Position at, Part holder) {
        return at.name().equals(position.under())
                || at.lines().stream()
                        .anyMatch(line -> line.part().equals(holder.number())
                                && line.carries().contains(position.name()));
    }

    /** By thread, the most that any line of the position brings without nuts. */
    private Map<String, BigDecimal> bolts(Position position) {
        Map<String, BigDecimal> most = new TreeMap<>();
        position.lines()
                .forEach(line -> needs(line).forEach(need -> {
                    Part bolt = catalogue.parts().get(need.part());
                    Fixing fixing = bolt == null ? null : bolt.fixing();
                    if (bolt != null
                            && fixing != null
                            && fixing.isBolt()
                            && need.ask() instanceof Need.Each each
                            && !nuts(bolt)) {
                        most.merge(fixing.thread(), each.quantity(), BigDecimal::max);
                    }
                }));
        return most;
    }

    private boolean nuts(Part bolt) {
        return bolt.needs().stream()
                .map(Need::part)
                .map(catalogue.parts()::get)
                .filter(Objects::nonNull)
                .anyMatch(with -> with.fixing() != null && with.fixing().isNut());
    }

    /** Whether joints.json says that bolts of the position go into a tapped hole of that thread, whatever holds it. */
    private boolean tapped(Position position, String thread) {
        return family.joints().stream()
                .anyMatch(facts -> position.name().equals(facts.position())
                        && facts.thread() != null
                        && ThreadName.mate(thread, facts.thread()));
    }

    private Stream<Need> needs(Line line) {
        return Stream.concat(line.needs().stream(), catalogue.part(line.part()).needs().stream());
    }

    private static Optional<Remark> few(Part holder, String thread, Bolted bolted) {
        BigDecimal threads = BigDecimal.valueOf(features(holder)
                .filter(feature ->
                        feature.kind() == Feature.Kind.THREAD && feature.size().equals(thread))
                .mapToInt(Feature::count)
                .sum());
        return (threads.signum() == 0 && !bolted.tapped()) || bolted.bolts().compareTo(threads) <= 0
                ? Optional.empty()
                : Optional.of(new Remark(
                        Said.part(holder),
                        Check.MASKS,
                        Digits.plain(threads) + " threads " + thread + " kept bare",
                        Digits.plain(bolted.bolts()) + ", as many as bolts of "
                                + String.join(" and ", bolted.positions()) + " go into it",
                        "Correct 'features' of the part, or the bolts of those positions, or 'thread' in joints.json"));
    }
}
