package boltlore.checking;

import boltlore.bill.Masses;
import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Contained;
import boltlore.catalogue.Part;
import java.math.BigDecimal;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** An assembly on the scale weighs what its parts weigh together, within 5 % for welds, film and tolerances. */
final class AssemblyMass {

    private static final BigDecimal TOLERANCE = new BigDecimal("0.05");

    private AssemblyMass() {}

    static Stream<Remark> remarks(Catalogue catalogue) {
        return catalogue.parts().values().stream()
                .flatMap(part -> check(part, part.structure().weighedKg(), catalogue));
    }

    private static Stream<Remark> check(Part part, @Nullable BigDecimal weighedKg, Catalogue catalogue) {
        if (weighedKg == null) {
            return Stream.empty();
        }
        return Stream.concat(
                againstScale(part, weighedKg, Masses.eachKg(part, catalogue::part)),
                part.contains().stream().flatMap(child -> heavier(part, weighedKg, child, catalogue)));
    }

    private static Stream<Remark> againstScale(Part part, BigDecimal weighedKg, BigDecimal rolledUpKg) {
        BigDecimal off = weighedKg.subtract(rolledUpKg).abs();
        return off.compareTo(rolledUpKg.multiply(TOLERANCE)) <= 0
                ? Stream.empty()
                : Stream.of(new Remark(
                        Said.part(part),
                        Check.MASS_AGAINST_SCALE,
                        Said.kg(weighedKg) + " on the scale",
                        Said.kg(rolledUpKg) + " by its parts, within 5 %",
                        "Look for a child that is missing, or whose mass or quantity is wrong"));
    }

    private static Stream<Remark> heavier(Part part, BigDecimal weighedKg, Contained child, Catalogue catalogue) {
        BigDecimal childKg =
                Masses.eachKg(catalogue.part(child.part()), catalogue::part).multiply(child.quantity());
        return childKg.compareTo(weighedKg) <= 0
                ? Stream.empty()
                : Stream.of(new Remark(
                        Said.part(part),
                        Check.CHILD_HEAVIER,
                        child.part() + " in it weighs " + Said.kg(childKg),
                        "at most the " + Said.kg(weighedKg) + " of the whole",
                        "Check the child's mass and quantity"));
    }
}
