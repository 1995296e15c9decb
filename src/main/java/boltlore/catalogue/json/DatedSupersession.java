package boltlore.catalogue.json;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Companion;
import boltlore.catalogue.Condition;
import boltlore.catalogue.Contained;
import boltlore.catalogue.EffectivityScale;
import boltlore.catalogue.Family;
import boltlore.catalogue.Line;
import boltlore.catalogue.Need;
import boltlore.catalogue.Part;
import boltlore.catalogue.Port;
import boltlore.catalogue.Upkeep;
import boltlore.measure.PartNumber;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Where a part gives way to another from some day or chassis number on, whatever brings the old one ends before: the lines that
 * name it or something that holds it, and the needs of a family.
 */
final class DatedSupersession {

    private final Catalogue catalogue;
    private final Reading reading;

    DatedSupersession(Catalogue catalogue, Reading reading) {
        this.catalogue = catalogue;
        this.reading = reading;
    }

    void check() {
        if (catalogue.parts().values().stream().anyMatch(DatedSupersession::isDated)) {
            catalogue.families().values().forEach(this::family);
        }
    }

    private static boolean isDated(Part part) {
        Upkeep.Successor successor = part.upkeep().replacedBy();
        return successor != null && !successor.since().isAlways();
    }

    private void family(Family family) {
        for (Line line : family.lines().toList()) {
            brought(line.part(), line.when(), line, family);
            needs(line.needs(), line.when(), family);
        }
        for (Companion companion : family.companions()) {
            needs(companion.needs(), Condition.ALWAYS, family);
        }
    }

    private void needs(List<Need> needs, Condition asker, Family family) {
        needs.forEach(need -> brought(need.part(), new Condition.All(List.of(asker, need.when())), need, family));
    }

    /** The part and all that it holds, needs or is closed with. */
    private void brought(PartNumber number, Condition when, Object user, Family family) {
        Set<PartNumber> met = new LinkedHashSet<>(List.of(number));
        Deque<PartNumber> open = new ArrayDeque<>(met);
        while (!open.isEmpty()) {
            Part part = catalogue.parts().get(open.pop());
            if (part != null) {
                after(part, when, user, family);
                beside(part).filter(met::add).forEach(open::add);
            }
        }
    }

    private static Stream<PartNumber> beside(Part part) {
        return Stream.of(
                        part.contains().stream().map(Contained::part),
                        part.needs().stream().map(Need::part),
                        part.ports().stream().map(Port::blank).flatMap(Stream::ofNullable))
                .flatMap(each -> each);
    }

    private void after(Part old, Condition when, Object user, Family family) {
        Upkeep.Successor successor = old.upkeep().replacedBy();
        if (successor == null || !isDated(old)) {
            return;
        }
        Stream.of(EffectivityScale.By.values())
                .filter(by -> !endsBefore(successor.since().first(by), by, when, family))
                .forEach(by -> fault(old, successor, by, user));
    }

    private void fault(Part old, Upkeep.Successor successor, EffectivityScale.By by, Object user) {
        boolean dated = by == EffectivityScale.By.PLACED;
        String since = dated
                ? "orders placed from " + successor.since().from()
                : "chassis from " + successor.since().fromChassis();
        reading.faults()
                .add(reading.sources()
                        .of(user)
                        .fault(
                                "'" + old.number() + "', which '" + successor.part() + "' supersedes for " + since,
                                "an end before that",
                                dated
                                        ? "End it with \"until\", and let '" + successor.part() + "' begin on that day."
                                        : "End it with \"untilChassis\", and let '" + successor.part()
                                                + "' begin with that number."));
    }

    /** Whether no order from there on can meet the condition, as far as its own conjuncts tell. */
    private static boolean endsBefore(@Nullable Integer from, EffectivityScale.By by, Condition when, Family family) {
        if (from == null) {
            return true;
        }
        return family.option(by.option())
                .map(option -> option.scale())
                .filter(scale -> allowed(when, scale).stream()
                        .allMatch(value -> scale.piece(value)
                                .map(EffectivityScale.Piece::last)
                                .filter(last -> last < from)
                                .isPresent()))
                .isPresent();
    }

    private static SortedSet<String> allowed(Condition when, EffectivityScale scale) {
        SortedSet<String> left = new TreeSet<>(scale.pieces().keySet());
        if (when instanceof Condition.Is is && is.option().equals(scale.by().option())) {
            left.retainAll(is.values());
        } else if (when instanceof Condition.All all) {
            all.conditions().forEach(each -> left.retainAll(allowed(each, scale)));
        }
        return left;
    }
}
