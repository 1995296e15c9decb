package boltlore.checking;

import static boltlore.sketch.PartSketch.bought;
import static boltlore.sketch.PartSketch.made;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AssemblyMassTest {

    @ParameterizedTest
    @CsvSource({"1.89, true", "1.90, false", "2.10, false", "2.11, true"})
    void the_scale_and_the_parts_agree_within_5_percent(String weighedKg, boolean doubtful) {
        List<String> remarks = Remarked.in(
                made("A-1").contains("P-1", "2").weighedKg(weighedKg),
                bought("P-1").massKg("1.000"));
        assertThat(remarks.contains("part A-1: rolled-up mass against the scale"))
                .isEqualTo(doubtful);
    }

    @Test
    void a_child_that_outweighs_its_assembly_is_named_even_within_the_5_percent() {
        assertThat(Remarked.in(
                        made("A-1").contains("P-1", "1").weighedKg("0.99"),
                        bought("P-1").massKg("1.000")))
                .containsExactly("part A-1: child heavier than its assembly");
    }

    @Test
    void a_child_may_be_all_of_its_assembly() {
        assertThat(Remarked.in(
                        made("A-1").contains("P-1", "1").weighedKg("1.000"),
                        bought("P-1").massKg("1.000")))
                .isEmpty();
    }
}
