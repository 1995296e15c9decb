package boltlore.checking;

import static boltlore.sketch.PartSketch.bought;
import static boltlore.sketch.PartSketch.made;
import static org.assertj.core.api.Assertions.assertThat;

import boltlore.catalogue.Joined;
import boltlore.catalogue.Making;
import boltlore.sketch.CatalogueSketch;
import boltlore.sketch.PartSketch;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** 0.1 m² of 3 mm steel sheet, coated on both sides: 7850 × 0.1 / 2 × 0.003 = 1.1775 kg. */
class CoatedMassTest {

    private static final String REMARK = "part P-1: mass against coated area";

    @ParameterizedTest
    @CsvSource({"0.588, true", "0.589, false", "1.178, false", "2.355, false", "2.356, true", "11.775, true"})
    void sheet_steel_weighs_what_its_area_says_within_a_factor_of_two(String massKg, boolean doubtful) {
        assertThat(Remarked.in(made("P-1").coat("chassis", "0.1").massKg(massKg))
                        .contains(REMARK))
                .isEqualTo(doubtful);
    }

    @Test
    @DisplayName("Aluminium of the same area weighs a third: 0.405 kg is right, steel's mass is not")
    void takes_the_materials_density() {
        CatalogueSketch aluminium = new CatalogueSketch().material("alu-3", "2700", "3");
        assertThat(Remarked.in(aluminium.part(aluminium("0.405")))).isEmpty();
        assertThat(Remarked.in(aluminium.part(aluminium("1.178")))).containsExactly(REMARK);
    }

    @Test
    void a_welded_assembly_takes_the_density_of_what_is_in_it() {
        PartSketch welded = made("P-1")
                .joined(Joined.WELDED)
                .cautions("welding")
                .contains("P-2", "1")
                .coat("chassis", "0.1");
        CatalogueSketch catalogue =
                new CatalogueSketch().material("alu-3", "2700", "3").part(without(welded));
        assertThat(Remarked.in(catalogue.part(plain("P-2", "0.405")))).isEmpty();
        assertThat(Remarked.in(catalogue.part(plain("P-2", "1.178")))).containsExactly(REMARK);
    }

    @Test
    void what_is_bought_or_not_coated_is_not_weighed_up() {
        assertThat(Remarked.in(bought("P-1").coat("chassis", "0.1").massKg("50").cautions("lift-gear")))
                .isEmpty();
        assertThat(Remarked.in(made("P-1").massKg("50").cautions("lift-gear"))).isEmpty();
    }

    private static PartSketch aluminium(String massKg) {
        return plain("P-1", massKg).coat("chassis", "0.1");
    }

    private static PartSketch plain(String number, String massKg) {
        Making steel = made(number).draw().making();
        return made(number)
                .making(new Making(steel.drawing(), "alu-3", List.of(), steel.operations()))
                .massKg(massKg);
    }

    private static PartSketch without(PartSketch part) {
        Making steel = part.draw().making();
        return part.making(new Making(steel.drawing(), null, List.of(), steel.operations()));
    }
}
