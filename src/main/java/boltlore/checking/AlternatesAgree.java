package boltlore.checking;

import boltlore.bill.Masses;
import boltlore.catalogue.Catalogue;
import boltlore.catalogue.CoatingSpec;
import boltlore.catalogue.Fixing;
import boltlore.catalogue.Part;
import boltlore.catalogue.Port;
import boltlore.catalogue.Upkeep;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** What stores may pick in a part's place is counted, weighed, tightened, plugged in and coated as the part is. */
final class AlternatesAgree {

    /** Share by which masses may differ, so that weight statement and crates hold: workshop's own value. */
    private static final BigDecimal MASS_SHARE = new BigDecimal("0.05");

    private AlternatesAgree() {}

    static Stream<Remark> remarks(Catalogue catalogue) {
        return catalogue.parts().values().stream()
                .flatMap(part -> part.upkeep().alternates().stream()
                        .filter(alternate -> catalogue.parts().containsKey(alternate.part()))
                        .flatMap(alternate -> remark(part, alternate, catalogue)));
    }

    private static Stream<Remark> remark(Part part, Upkeep.Alternate alternate, Catalogue catalogue) {
        List<String> differences = differences(part, catalogue.part(alternate.part()), catalogue);
        return differences.isEmpty()
                ? Stream.empty()
                : Stream.of(new Remark(
                        Said.part(part),
                        Check.ALTERNATE,
                        "alternate " + alternate.part() + ": other " + String.join(", ", differences),
                        "an alternate that is like the part in unit, mass (within 5 %), thread, class, torque, length,"
                                + " connectors, coating and hand",
                        "Check the two parts, or take the alternate out"));
    }

    private static List<String> differences(Part part, Part other, Catalogue catalogue) {
        List<String> differences = new ArrayList<>();
        differs("unit", part, other, Part::unit, differences);
        if (!weighAlike(Masses.eachKg(part, catalogue::part), Masses.eachKg(other, catalogue::part))) {
            differences.add("mass");
        }
        differs("thread", part, other, of -> ofFixing(of, Fixing::thread), differences);
        differs("property class", part, other, of -> ofFixing(of, Fixing::propertyClass), differences);
        differs("torque", part, other, of -> plain(ofFixing(of, Fixing::torqueNm)), differences);
        differs("length of the bolt", part, other, of -> plain(ofFixing(of, Fixing::lengthMm)), differences);
        differs("length", part, other, Part::lengthMm, differences);
        differs("connectors", part, other, AlternatesAgree::ports, differences);
        differs("coating", part, other, AlternatesAgree::coating, differences);
        differs("hand", part, other, Part::handed, differences);
        return differences;
    }

    private static void differs(
            String what, Part part, Part other, Function<Part, @Nullable Object> of, List<String> differences) {
        if (!Objects.equals(of.apply(part), of.apply(other))) {
            differences.add(what);
        }
    }

    private static boolean weighAlike(BigDecimal one, BigDecimal other) {
        return one.subtract(other).abs().compareTo(one.multiply(MASS_SHARE)) <= 0;
    }

    private static <T> @Nullable T ofFixing(Part part, Function<Fixing, @Nullable T> fact) {
        Fixing fixing = part.fixing();
        return fixing == null ? null : fact.apply(fixing);
    }

    private static @Nullable BigDecimal plain(@Nullable BigDecimal number) {
        return number == null ? null : number.stripTrailingZeros();
    }

    /** Kind and mates of each; what a maker calls its connectors does not matter. */
    private static List<List<Object>> ports(Part part) {
        return part.ports().stream()
                .map(AlternatesAgree::port)
                .sorted((one, other) -> one.toString().compareTo(other.toString()))
                .toList();
    }

    private static List<Object> port(Port port) {
        return List.of(port.kind(), Set.copyOf(port.mates()).stream().sorted().collect(Collectors.toList()));
    }

    private static @Nullable List<String> coating(Part part) {
        CoatingSpec coat = part.coat();
        return coat == null ? null : List.of(Objects.toString(coat.role(), ""), Objects.toString(coat.finish(), ""));
    }
}
