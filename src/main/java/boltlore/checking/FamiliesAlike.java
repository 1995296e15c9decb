package boltlore.checking;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Driving;
import boltlore.catalogue.Electrics;
import boltlore.catalogue.EndOfLine;
import boltlore.catalogue.Family;
import boltlore.measure.Digits;
import boltlore.measure.Wording;
import java.lang.reflect.RecordComponent;
import java.math.BigDecimal;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * What two families have alike says the same in both: a test that is made in the same words has the same limit, an instrument of
 * one name the same scale, a fuse or drive unit of one number the same figures, a position of one name the same stage and bag. A
 * slip stands in one of them only; families that differ in more than a few are not built alike, and nothing is told of them.
 */
final class FamiliesAlike {

    /** What may differ: where and when, and words that stand beside figures. */
    private static final Set<String> ELSEWHERE = Set.of(
            "when",
            "at",
            "earthPoints",
            "source",
            "tests",
            "says",
            "name",
            "asks",
            "values",
            "usual",
            "builtFrom",
            "feeds",
            "because");

    private static final Set<String> OF_POSITIONS = Set.of("subSystem", "stage", "bag", "under", "fill");

    /** Where more than one in so many differ, the families are not built alike in this; workshop's own value. */
    private static final int FEW = 20;

    /** One thing of a family, known in another by its key. */
    private record Twin(String kind, String about, String key, Record of) {

        static Twin of(Family family, String kind, Object name, Object key, Record of) {
            return new Twin(kind, kind + " " + family.name() + "/" + name, kind + " " + key, of);
        }

        boolean judges(RecordComponent component) {
            return kind.equals("position")
                    ? OF_POSITIONS.contains(component.getName())
                    : !ELSEWHERE.contains(component.getName());
        }
    }

    /** What is compared, by kind and component, and the remark where it is unlike. */
    private record Compared(String what, @Nullable Remark unlike) {}

    private FamiliesAlike() {}

    static Stream<Remark> remarks(Catalogue catalogue) {
        Map<String, Twin> first = new TreeMap<>();
        Map<String, List<Compared>> all = catalogue.families().values().stream()
                .flatMap(FamiliesAlike::twins)
                .flatMap(twin -> {
                    Twin known = first.putIfAbsent(twin.key(), twin);
                    return known == null ? Stream.<Compared>empty() : compared(known, twin);
                })
                .collect(Collectors.groupingBy(Compared::what, TreeMap::new, Collectors.toList()));
        return all.values().stream().flatMap(FamiliesAlike::few);
    }

    private static Stream<Remark> few(List<Compared> compared) {
        List<Remark> unlike = compared.stream()
                .flatMap(each -> Stream.ofNullable(each.unlike()))
                .toList();
        return unlike.size() > Math.max(1, compared.size() / FEW) ? Stream.empty() : unlike.stream();
    }

    private static Stream<Twin> twins(Family family) {
        return Stream.of(ofTests(family), ofElectrics(family), ofDriving(family), ofKits(family))
                .flatMap(twins -> twins);
    }

    private static Stream<Twin> ofTests(Family family) {
        EndOfLine tests = family.endOfLine();
        return Stream.of(
                        tests.instruments().values().stream()
                                .map(each -> Twin.of(family, "instrument", each.name(), each.says(), each)),
                        tests.groups().stream()
                                .map(each -> Twin.of(family, "group", each.name(), words(each.says()), each)),
                        tests.groups().stream()
                                .flatMap(group -> group.tests().stream())
                                .map(each ->
                                        Twin.of(family, "test", each.name(), each.says() + words(each.method()), each)),
                        tests.labels().stream().map(each -> Twin.of(family, "label", each.name(), each.name(), each)),
                        tests.sections().stream()
                                .map(each ->
                                        Twin.of(family, "section", each.number(), each.number() + each.says(), each)))
                .flatMap(twins -> twins);
    }

    private static Stream<Twin> ofElectrics(Family family) {
        Electrics electrics = family.electrics();
        return Stream.of(
                        electrics.fuses().stream()
                                .map(each ->
                                        Twin.of(family, "fuse", each.name(), each.part() + " " + each.amps(), each)),
                        electrics.branches().stream()
                                .map(each -> Twin.of(family, "branch", each.name(), each.name(), each)),
                        electrics.leads().stream()
                                .map(each -> Twin.of(family, "public lead", each.part(), each.part(), each)),
                        electrics.inlets().stream()
                                .map(each -> Twin.of(family, "inlet", said(each.when()), each.when(), each)),
                        electrics.chargers().stream()
                                .map(each -> Twin.of(family, "charger", said(each.when()), each.when(), each)),
                        electrics.outlets().stream()
                                .map(each -> Twin.of(family, "outlet", said(each.when()), each.residual(), each)))
                .flatMap(twins -> twins);
    }

    private static Stream<Twin> ofDriving(Family family) {
        Driving driving = family.driving();
        return Stream.of(
                        driving.driveUnits().stream()
                                .map(each -> Twin.of(family, "drive unit", each.part(), each.part(), each)),
                        driving.cooling().coolants().stream()
                                .map(each -> Twin.of(family, "coolant", each.name(), each.name(), each)),
                        driving.mounting().shocks().stream()
                                .map(each -> Twin.of(family, "shock", each.name(), each.name(), each)))
                .flatMap(twins -> twins);
    }

    private static Stream<Twin> ofKits(Family family) {
        return Stream.of(
                        family.positions().stream()
                                .map(each -> Twin.of(family, "position", each.name(), each.name(), each)),
                        family.options().stream()
                                .map(each -> Twin.of(family, "option", each.name(), each.name(), each)),
                        family.options().stream()
                                .flatMap(option -> option.values().stream()
                                        .map(each -> Twin.of(
                                                family,
                                                "value",
                                                option.name() + "/" + each.value(),
                                                option.name() + "=" + each.value(),
                                                each))))
                .flatMap(twins -> twins);
    }

    /** Numbers aside: a slip in one of them leaves the text the same. */
    private static String words(Wording text) {
        return text.english().replaceAll("\\d+", "#");
    }

    private static Stream<Compared> compared(Twin known, Twin twin) {
        return Stream.of(twin.of().getClass().getRecordComponents())
                .filter(twin::judges)
                .map(component -> new Compared(
                        twin.kind() + " " + component.getName(),
                        unlike(known, twin, component).orElse(null)));
    }

    private static Optional<Remark> unlike(Twin known, Twin twin, RecordComponent component) {
        Object one = RecordValues.of(known.of(), component);
        Object other = RecordValues.of(twin.of(), component);
        return alike(one, other)
                ? Optional.empty()
                : Optional.of(new Remark(
                        twin.about(),
                        Check.UNLIKE_FAMILY,
                        "'" + component.getName() + "' " + said(other),
                        said(one) + ", as " + known.about() + " has it",
                        "Correct one of them; where they really differ, call them otherwise"));
    }

    private static boolean alike(@Nullable Object one, @Nullable Object other) {
        return (one instanceof BigDecimal number && other instanceof BigDecimal figure)
                ? number.compareTo(figure) == 0
                : Objects.equals(one, other);
    }

    private static String said(@Nullable Object value) {
        if (value instanceof BigDecimal number) {
            return Digits.plain(number);
        }
        if (value instanceof Collection<?> all) {
            return all.isEmpty()
                    ? "none"
                    : String.join(", ", all.stream().map(FamiliesAlike::said).toList());
        }
        if (value instanceof Wording text) {
            return "'" + text.byLanguage() + "'";
        }
        if (value instanceof Record record) {
            return String.join(
                    " ",
                    Stream.of(record.getClass().getRecordComponents())
                            .map(component -> component.getName() + " " + said(RecordValues.of(record, component)))
                            .toList());
        }
        return value == null ? "none" : value.toString();
    }
}
