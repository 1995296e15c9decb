package boltlore.checking;

import boltlore.bill.Masses;
import boltlore.catalogue.Catalogue;
import boltlore.catalogue.CoatingSpec;
import boltlore.catalogue.Cut;
import boltlore.catalogue.Material;
import boltlore.catalogue.Part;
import boltlore.catalogue.Source;
import boltlore.measure.Digits;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A made part's coated area, section and mass must be those of one piece of metal: mass = density × area / 2 × mean
 * thickness, for sheet is coated on both sides.
 *
 * <p>They may differ by a factor of two. A closed tube is coated on its outside only and so weighs up to twice as much
 * for its area; a part that is thin but for a few thick pads weighs little more than half, for the middle of thinnest and
 * thickest is above its mean. A slip of the decimal point, or pounds for kilograms, is beyond two.
 */
final class CoatedMass {

    private static final BigDecimal FACTOR = BigDecimal.valueOf(2);
    private static final BigDecimal MM_PER_M = BigDecimal.valueOf(1000);
    private static final BigDecimal STEEL_KG_M3 = BigDecimal.valueOf(7850);

    private final Catalogue catalogue;

    private CoatedMass(Catalogue catalogue) {
        this.catalogue = catalogue;
    }

    static Stream<Remark> remarks(Catalogue catalogue) {
        CoatedMass check = new CoatedMass(catalogue);
        return catalogue.parts().values().stream()
                .filter(part -> part.source() == Source.MAKE)
                .flatMap(part -> check.of(part).stream());
    }

    private Optional<Remark> of(Part part) {
        CoatingSpec coat = part.coat();
        if (coat == null) {
            return Optional.empty();
        }
        BigDecimal expected = expectedKg(part, coat);
        BigDecimal mass = Masses.eachKg(part, catalogue::part);
        boolean agree = mass.compareTo(expected.multiply(FACTOR)) <= 0
                && mass.multiply(FACTOR).compareTo(expected) >= 0;
        return agree
                ? Optional.empty()
                : Optional.of(new Remark(
                        Said.part(part),
                        Check.MASS_AGAINST_AREA,
                        Said.kg(mass) + " with " + Digits.plain(coat.areaM2()) + " m² coated",
                        "about " + Said.kg(expected) + " for that area and section, within a factor of 2",
                        "Check the coated area (both sides of sheet), the section and the mass"));
    }

    private BigDecimal expectedKg(Part part, CoatingSpec coat) {
        Optional<Material> material = material(part);
        BigDecimal density = material.map(Material::densityKgM3).orElse(STEEL_KG_M3);
        BigDecimal meanMm =
                coat.thinnestMm().add(coat.thickestMm()).divide(BigDecimal.valueOf(2), MathContext.DECIMAL128);
        return density.multiply(coat.areaM2())
                .multiply(meanMm)
                .divide(MM_PER_M.multiply(BigDecimal.valueOf(2)), MathContext.DECIMAL128);
    }

    /** What it is made of first, or the first of what is in it where that says so. */
    private Optional<Material> material(Part part) {
        Optional<Material> own = own(catalogue, part).findFirst();
        return own.isPresent()
                ? own
                : part.contains().stream()
                        .flatMap(child -> material(catalogue.part(child.part())).stream())
                        .findFirst();
    }

    /** What a part itself is made of: its sheet, and what it is cut from. */
    static Stream<Material> own(Catalogue catalogue, Part part) {
        return Stream.concat(
                        Stream.ofNullable(part.making().material()),
                        part.making().cuts().stream().map(Cut::material))
                .flatMap(name -> Stream.ofNullable(catalogue.materials().get(name)));
    }
}
