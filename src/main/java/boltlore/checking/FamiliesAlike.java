package boltlore.checking;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Family;
import boltlore.measure.Digits;
import boltlore.measure.Wording;
import java.lang.reflect.RecordComponent;
import java.math.BigDecimal;
import java.util.Collection;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * What two families have alike says the same in both: a test that is made in the same words has the same limit, an instrument of
 * one name the same scale, a fuse or drive unit of one number the same figures. A slip stands in one of them only.
 */
final class FamiliesAlike {

    /** What may differ: where and when, and words that stand beside figures. */
    private static final Set<String> ELSEWHERE =
            Set.of("when", "at", "earthPoints", "source", "tests", "says", "name", "driven");

    /** One thing of a family, known in another by its key. */
    private record Twin(String about, String key, Record of) {}

    private FamiliesAlike() {}

    static Stream<Remark> remarks(Catalogue catalogue) {
        Map<String, Twin> first = new TreeMap<>();
        return catalogue.families().values().stream()
                .flatMap(FamiliesAlike::twins)
                .flatMap(twin -> {
                    Twin known = first.putIfAbsent(twin.key(), twin);
                    return known == null ? Stream.<Remark>empty() : unlike(known, twin);
                });
    }

    private static Stream<Twin> twins(Family family) {
        String in = family.name() + "/";
        return Stream.of(
                        family.endOfLine().instruments().values().stream()
                                .map(each ->
                                        new Twin("instrument " + in + each.name(), "instrument " + each.says(), each)),
                        family.endOfLine().groups().stream()
                                .map(each ->
                                        new Twin("group " + in + each.name(), "group " + words(each.says()), each)),
                        family.endOfLine().groups().stream()
                                .flatMap(group -> group.tests().stream())
                                .map(each -> new Twin(
                                        "test " + in + each.name(),
                                        "test " + each.says() + words(each.method()),
                                        each)),
                        family.electrics().fuses().stream()
                                .map(each -> new Twin(
                                        "fuse " + in + each.name(), "fuse " + each.part() + each.amps(), each)),
                        family.electrics().packs().stream()
                                .map(each -> new Twin(
                                        "pack " + in + each.name(), "pack " + each.module() + each.says(), each)),
                        family.driving().driveUnits().stream()
                                .map(each ->
                                        new Twin("drive unit " + in + each.part(), "drive unit " + each.part(), each)),
                        family.driving().cooling().coolants().stream()
                                .map(each -> new Twin("coolant " + in + each.name(), "coolant " + each.name(), each)),
                        family.driving().mounting().shocks().stream()
                                .map(each -> new Twin("shock " + in + each.name(), "shock " + each.name(), each)))
                .flatMap(twins -> twins);
    }

    /** Numbers aside: a slip in one of them leaves the text the same. */
    private static String words(Wording text) {
        return text.english().replaceAll("\\d+", "#");
    }

    private static Stream<Remark> unlike(Twin known, Twin twin) {
        return Stream.of(twin.of().getClass().getRecordComponents())
                .filter(component -> !ELSEWHERE.contains(component.getName()))
                .flatMap(component -> unlike(known, twin, component));
    }

    private static Stream<Remark> unlike(Twin known, Twin twin, RecordComponent component) {
        Object one = RecordValues.of(known.of(), component);
        Object other = RecordValues.of(twin.of(), component);
        return alike(one, other)
                ? Stream.empty()
                : Stream.of(new Remark(
                        twin.about(),
                        Check.UNLIKE_FAMILY,
                        "'" + component.getName() + "' " + said(other),
                        said(one) + ", as " + known.about() + " has it",
                        "Correct one of them; where they really differ, call them otherwise"));
    }

    private static boolean alike(@Nullable Object one, @Nullable Object other) {
        return one instanceof BigDecimal number && other instanceof BigDecimal figure
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
