package boltlore.checking;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Family;
import boltlore.catalogue.JointFacts;
import boltlore.measure.Digits;
import java.lang.reflect.RecordComponent;
import java.math.BigDecimal;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * What two families call by one name is of one order of magnitude in both: mounts, joints, what comes off, who sits in it,
 * capacitors, circuits of coolant. A slip of the point stands in one of them only.
 */
final class FamiliesNear {

    /** Vehicles that one workshop converts differ by less in what they have alike; workshop's own value, check before use. */
    private static final BigDecimal FACTOR = new BigDecimal("2.5");

    /** Stations lie on both sides of the front axle, so that no factor tells anything; counts are told elsewhere. */
    private static final Set<String> BESIDE =
            Set.of("behindFrontMm", "count", "interfaces", "inSeries", "inParallel", "alike");

    private record Twin(String about, String key, Record of) {}

    private FamiliesNear() {}

    static Stream<Remark> remarks(Catalogue catalogue) {
        Map<String, Twin> first = new TreeMap<>();
        return catalogue.families().values().stream()
                .flatMap(FamiliesNear::twins)
                .flatMap(twin -> {
                    Twin known = first.putIfAbsent(twin.key(), twin);
                    return known == null ? Stream.<Remark>empty() : far(known, twin, known.of(), twin.of());
                });
    }

    private static Stream<Twin> twins(Family family) {
        String in = family.name() + "/";
        return Stream.of(
                        family.electrics().capacitors().stream()
                                .map(each ->
                                        new Twin("capacitor " + in + each.name(), "capacitor " + each.name(), each)),
                        family.weights().removed().stream()
                                .map(each -> new Twin("removed " + in + each.name(), "removed " + each.name(), each)),
                        family.weights().aboard().stream()
                                .map(each -> new Twin("load " + in + each.name(), "load " + each.name(), each)),
                        family.driving().mounting().mounts().stream()
                                .map(each -> new Twin("mount " + in + each.name(), "mount " + each.name(), each)),
                        family.driving().cooling().circuits().stream()
                                .map(each -> new Twin("circuit " + in + each.name(), "circuit " + each.name(), each)),
                        family.driving().braking().vacuums().stream()
                                .limit(1)
                                .map(each -> new Twin("vacuum of family " + family.name(), "vacuum", each)),
                        Stream.ofNullable(family.donor())
                                .map(donor -> new Twin("family " + family.name(), "donor", donor.usual())),
                        family.joints().stream().flatMap(each -> joint(in, each)))
                .flatMap(twins -> twins);
    }

    private static Stream<Twin> joint(String in, JointFacts facts) {
        String name =
                facts.position() == null ? facts.joint() : facts.position().text();
        return Stream.of(new Twin("joint " + in + name, "joint " + name, facts));
    }

    /** Records within records are gone into, lists are not: nobody knows which of them go together. */
    private static Stream<Remark> far(Twin known, Twin twin, Record one, Record other) {
        return one.getClass() == other.getClass()
                ? Stream.of(one.getClass().getRecordComponents())
                        .filter(component -> !BESIDE.contains(component.getName()))
                        .flatMap(component -> far(known, twin, component, one, other))
                : Stream.empty();
    }

    private static Stream<Remark> far(Twin known, Twin twin, RecordComponent component, Record one, Record other) {
        Object here = RecordValues.of(one, component);
        Object there = RecordValues.of(other, component);
        if (here instanceof Record owner && there instanceof Record beside) {
            return far(known, twin, owner, beside);
        }
        BigDecimal first = number(here);
        BigDecimal second = number(there);
        return first == null || second == null || near(first, second)
                ? Stream.empty()
                : Stream.of(new Remark(
                        twin.about(),
                        Check.UNLIKE_FAMILY,
                        "'" + component.getName() + "' " + Digits.plain(second),
                        "within a factor of " + FACTOR + " of " + Digits.plain(first) + ", as " + known.about()
                                + " has it",
                        "Look at the point of both; where they really differ so much, call them otherwise"));
    }

    private static @Nullable BigDecimal number(@Nullable Object value) {
        return value instanceof Number number ? new BigDecimal(Objects.toString(number)) : null;
    }

    private static boolean near(BigDecimal one, BigDecimal other) {
        return one.signum() <= 0
                || other.signum() <= 0
                || one.max(other).compareTo(one.min(other).multiply(FACTOR)) <= 0;
    }
}
