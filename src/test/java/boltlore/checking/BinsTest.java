package boltlore.checking;

import static boltlore.sketch.PartSketch.bought;
import static org.assertj.core.api.Assertions.assertThat;

import boltlore.sketch.CatalogueSketch;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BinsTest {

    @Test
    void two_parts_do_not_share_a_bin() {
        assertThat(Remarked.in(bought("P-1").bin("F-01-01-A-01"), bought("P-2").bin("F-01-01-A-01")))
                .containsExactly("bin F-01-01-A-01: two parts in one bin");
        assertThat(Remarked.in(bought("P-1").bin("F-01-01-A-01"), bought("P-2").bin("F-01-01-A-02")))
                .isEmpty();
    }

    @Test
    void parts_without_a_bin_share_none() {
        assertThat(Remarked.in(bought("P-1"), bought("P-2"))).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"C-11-01-A-01, false", "C-12-01-A-01, true", "C-00-01-A-01, false"})
    void a_bay_lies_within_the_measured_aisle(String bin, boolean doubtful) {
        assertThat(Remarked.in(new CatalogueSketch().layout().part(bought("P-1").bin(bin))))
                .isEqualTo(doubtful ? List.of("part P-1: bin beyond the measured aisles") : List.of());
    }

    @ParameterizedTest
    @CsvSource({"C-01-01-A-01, false", "X-01-01-A-01, true", "C-01-01-A, true", "shelf, true"})
    void a_bin_lies_in_an_aisle_that_is_walked(String bin, boolean doubtful) {
        assertThat(Remarked.in(bought("P-1").bin(bin)))
                .isEqualTo(doubtful ? List.of("part P-1: bin in no aisle of the workshop") : List.of());
    }
}
