package boltlore.checking;

import static boltlore.sketch.PartSketch.bought;
import static org.assertj.core.api.Assertions.assertThat;

import boltlore.catalogue.CoatedWhere;
import boltlore.catalogue.CoatingSpec;
import boltlore.catalogue.PowderCoat;
import boltlore.sketch.CatalogueSketch;
import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CoatingGivenTest {

    @ParameterizedTest
    @CsvSource({"0, true", "1, false"})
    void a_coated_part_hangs_somewhere(int hangPoints, boolean doubtful) {
        BigDecimal one = BigDecimal.ONE;
        CoatingSpec coat = new CoatingSpec("chassis", null, one, one, one, List.of(), hangPoints, null);
        assertThat(Remarked.in(bought("P-1").coat(coat)))
                .isEqualTo(doubtful ? List.of("part P-1: coated, but nowhere to hang it") : List.of());
    }

    @ParameterizedTest
    @CsvSource({"60, 80, 100, false", "80, 80, 80, false", "81, 80, 100, true", "60, 80, 79, true", "0, 80, 100, true"})
    void the_film_to_aim_for_lies_between_least_and_most(int min, int target, int max, boolean doubtful) {
        assertThat(finish(min, target, max, 180, 15))
                .isEqualTo(doubtful ? List.of("finish odd: film out of order") : List.of());
    }

    @ParameterizedTest
    @CsvSource({
        "180, 15, false",
        "140, 4, false",
        "230, 45, false",
        "139, 15, true",
        "231, 15, true",
        "180, 3, true",
        "180, 46, true"
    })
    void powder_cures_at_a_heat_and_in_a_time_that_an_oven_can_keep(int metalC, int minutes, boolean doubtful) {
        assertThat(finish(60, 80, 100, metalC, minutes))
                .isEqualTo(doubtful ? List.of("finish odd: cure out of reach") : List.of());
    }

    private static List<String> finish(int min, int target, int max, int metalC, int minutes) {
        PowderCoat coat = new PowderCoat(
                "PB-ODD", new BigDecimal("1.5"), min, target, max, metalC, minutes, new BigDecimal("60"));
        return Remarked.in(new CatalogueSketch().finish("odd", new CoatedWhere.OwnOven("own"), coat));
    }
}
