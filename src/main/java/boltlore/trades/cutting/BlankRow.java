package boltlore.trades.cutting;

import boltlore.catalogue.Bending;
import boltlore.catalogue.Blank;
import boltlore.catalogue.Material;
import boltlore.catalogue.Part;
import java.math.BigDecimal;
import java.util.List;
import java.util.Objects;

/**
 * Blanks of one part from one sheet.
 *
 * @param orders which need it, with how many, as '2 for BL-1001'
 * @param count of all orders together
 */
public record BlankRow(Part part, Material material, List<String> orders, int count) {

    public Blank blank() {
        return Objects.requireNonNull(part.making().blank());
    }

    public BigDecimal thicknessMm() {
        return Objects.requireNonNull(material.thicknessMm());
    }

    /** Length before bending in mm. */
    public BigDecimal developedMm() {
        Bending bending = material.bending();
        return bending == null ? blank().legsMm().get(0) : blank().developedMm(bending, thicknessMm());
    }

    /** Of one blank in kg, before anything is cut out of it. */
    public BigDecimal eachKg() {
        return developedMm()
                .multiply(blank().widthMm())
                .multiply(thicknessMm())
                .multiply(material.densityKgM3())
                .movePointLeft(9);
    }
}
