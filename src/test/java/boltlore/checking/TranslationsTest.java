package boltlore.checking;

import static boltlore.sketch.PartSketch.bought;
import static boltlore.sketch.PositionSketch.at;
import static org.assertj.core.api.Assertions.assertThat;

import boltlore.measure.Wording;
import boltlore.sketch.CatalogueSketch;
import boltlore.trades.costing.PriceBookSketch;
import java.util.Map;
import org.junit.jupiter.api.Test;

class TranslationsTest {

    @Test
    void what_goes_to_customers_is_in_each_language_of_the_workshop() {
        CatalogueSketch catalogue = new CatalogueSketch()
                .languages("en", "de")
                .option("air", "fitted")
                .part(bought("P-1"))
                .part(bought("P-2").named("de", "Teil 2"))
                .position(at("heater").line("heater", "P-1", "1"));
        assertThat(Remarked.in(catalogue))
                .contains(
                        "part P-1: not translated",
                        "position van/heater: not translated",
                        "value van/air/fitted: not translated",
                        "finish black: not translated",
                        "fit stage front: not translated",
                        "caution lithium: not translated",
                        "family van: not translated")
                .doesNotContain("part P-2: not translated");
    }

    @Test
    void once_bags_are_named_none_goes_by_its_code() {
        CatalogueSketch catalogue = new CatalogueSketch()
                .part(bought("P-1"))
                .position(at("heater").bag("front-1").line("heater", "P-1", "1"))
                .position(at("blower").bag("front-2").line("blower", "P-1", "1"));
        assertThat(Remarked.in(catalogue)).isEmpty();
        assertThat(Remarked.in(catalogue.bag("front-1", "Front, first")))
                .containsExactly("bag front-2: not translated");
        assertThat(Remarked.in(catalogue.bag("front-2", "Front, second"))).isEmpty();
    }

    @Test
    void an_empty_translation_is_none() {
        assertThat(Remarked.in(new CatalogueSketch()
                        .languages("en", "de")
                        .part(bought("P-1").named("de", " "))))
                .contains("part P-1: not translated");
    }

    @Test
    void english_alone_needs_nothing() {
        assertThat(Remarked.in(bought("P-1"))).isEmpty();
    }

    @Test
    void quotations_are_translated_too() {
        Wording both = new Wording(Map.of("en", "Fitting.", "de", "Einbau."));
        assertThat(Remarked.in(excluding(Wording.english("Fitting."))))
                .contains("what quotations exclude: not translated");
        assertThat(Remarked.in(excluding(both))).doesNotContain("what quotations exclude: not translated");
    }

    private static CatalogueSketch excluding(Wording says) {
        return new CatalogueSketch()
                .languages("en", "de")
                .part(bought("P-1"))
                .prices(new PriceBookSketch().excluding(says).book());
    }
}
