package boltlore.demo;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.catalogue.Blank;
import boltlore.catalogue.EnvelopeMm;
import boltlore.catalogue.Material;
import boltlore.catalogue.Part;
import java.math.BigDecimal;
import java.util.Collection;
import java.util.List;
import java.util.Objects;
import java.util.function.Predicate;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** Sheet has the mass and the area of a piece of metal of its size; bounds are the workshop's own, no source. */
@DisplayName("What the demo's parts weigh and where they are coated follows from their geometry")
class DemoGeometryTest {

    private static final Collection<Part> PARTS = Demo.catalogue().parts().values();

    /** Sheet coated on both sides has its edges besides, which are at most this much of it in a part that one can hold. */
    private static final double EDGES = 1.2;

    /** What the metal of a part has on both sides, were all of it as thin as its thinnest section. */
    private static double bothSidesM2(Part part, double massKg) {
        double density = aluminium(part) ? 2700 : 7850;
        return 2 * massKg / (density * part.coat().thinnestMm().doubleValue() / 1000) * EDGES;
    }

    private static boolean aluminium(Part part) {
        return Objects.toString(part.making().material(), "").startsWith("alu");
    }

    /** Both sides of an open tray of that outer size; a plate is one without walls. */
    private static double trayM2(EnvelopeMm size) {
        double bottom = (double) size.length() * size.width();
        double walls = 2.0 * (size.length() + size.width()) * size.height();
        return 2 * (bottom + walls) * EDGES / 1e6;
    }

    private static double areaM2(Part part) {
        return part.coat().areaM2().doubleValue();
    }

    private static List<String> those(Collection<Part> parts, Predicate<Part> which) {
        return parts.stream().filter(which).map(part -> part.number().text()).toList();
    }

    private static List<Part> coatedSheet() {
        return PARTS.stream()
                .filter(part -> part.coat() != null
                        && part.massKg() != null
                        && part.making().material() != null)
                .toList();
    }

    @Test
    void no_sheet_is_coated_on_more_than_an_open_tray_of_its_size_has() {
        assertThat(coatedSheet()).hasSizeGreaterThan(150);
        assertThat(those(
                        coatedSheet(), part -> areaM2(part) > trayM2(part.coat().envelope())))
                .isEmpty();
        EnvelopeMm lid = new EnvelopeMm(880, 434, 30);
        assertThat(1.21).as("a near miss, a lid given the area of another box").isGreaterThan(trayM2(lid));
    }

    @Test
    void no_sheet_is_coated_on_more_than_its_metal_has() {
        assertThat(those(
                        coatedSheet(),
                        part -> areaM2(part) > bothSidesM2(part, part.massKg().doubleValue())))
                .isEmpty();
        assertThat(those(
                        coatedSheet(),
                        part -> areaM2(part) > bothSidesM2(part, part.massKg().doubleValue() * 2 / 3)))
                .as("a near miss, each lighter by a third")
                .hasSameSizeAs(coatedSheet());
    }

    /** Developed length by the bend allowance of sheet-metal textbooks, as the cutting list has it; plates stay flat. */
    private static double blankKg(Part part) {
        Blank blank = part.making().blank();
        Material sheet = Demo.catalogue().materials().get(part.making().material());
        BigDecimal length = blank.bendsDegrees().isEmpty()
                ? blank.legsMm().get(0)
                : blank.developedMm(sheet.bending(), sheet.thicknessMm());
        return length.doubleValue()
                * blank.widthMm().doubleValue()
                * sheet.thicknessMm().doubleValue()
                * sheet.densityKgM3().doubleValue()
                / 1e9;
    }

    /** Openings for an inlet, a blower or a matrix take less than half. */
    private static boolean ofItsBlank(Part part, double massKg) {
        return massKg > blankKg(part) * 0.55 && massKg < blankKg(part) * 1.001;
    }

    @Test
    void sheet_weighs_its_blank_less_what_is_cut_out() {
        List<Part> blanks =
                PARTS.stream().filter(part -> part.making().blank() != null).toList();

        assertThat(blanks).hasSizeGreaterThan(190);
        assertThat(those(blanks, part -> !ofItsBlank(part, part.massKg().doubleValue())))
                .isEmpty();
        assertThat(those(blanks, part -> !ofItsBlank(part, part.massKg().doubleValue() * 2)))
                .as("a near miss, each twice as heavy")
                .hasSameSizeAs(blanks);
    }

    @Test
    void nothing_weighs_more_than_its_size_full_of_what_it_is_made_of() {
        assertThat(those(coatedSheet(), part -> part.massKg().doubleValue() > fullKg(part)))
                .isEmpty();
        assertThat(those(coatedSheet(), part -> part.massKg().doubleValue() * 100 > fullKg(part)))
                .as("a near miss, each with its decimal point two places off")
                .hasSameSizeAs(coatedSheet());
    }

    /** Half a gram more, for masses stand in whole ones. */
    private static double fullKg(Part part) {
        return part.coat().envelope().litres().doubleValue() * (aluminium(part) ? 2.7 : 7.85) + 0.0005;
    }
}
