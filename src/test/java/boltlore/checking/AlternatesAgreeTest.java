package boltlore.checking;

import static boltlore.sketch.PartSketch.bolt;
import static boltlore.sketch.PartSketch.bought;
import static boltlore.sketch.PartSketch.made;
import static org.assertj.core.api.Assertions.assertThat;

import boltlore.catalogue.Document;
import boltlore.measure.Wording;
import java.util.Map;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("What may be picked in a part's place")
class AlternatesAgreeTest {

    private static final String UNLIKE = "part P-1: alternate unlike its part";

    @Test
    void weighs_the_same_within_5_per_cent() {
        assertThat(Remarked.in(
                        bought("P-1").massKg("1.000").or("P-2"), bought("P-2").massKg("1.050")))
                .isEmpty();
        assertThat(Remarked.in(
                        bought("P-1").massKg("1.000").or("P-2"), bought("P-2").massKg("1.051")))
                .containsExactly(UNLIKE);
    }

    @Test
    void has_the_same_thread_and_torque() {
        assertThat(Remarked.in(bolt("P-1", "M8", "24.6").or("P-2"), bolt("P-2", "M8", "24.6")))
                .isEmpty();
        assertThat(Remarked.in(bolt("P-1", "M8", "24.6").or("P-2"), bolt("P-2", "M10", "48")))
                .contains(UNLIKE);
        assertThat(Remarked.in(bolt("P-1", "M8", "24.6").or("P-2"), bolt("P-2", "M8", null)))
                .contains(UNLIKE);
    }

    @Test
    void has_connectors_that_mate_with_the_same_parts_whatever_they_are_called() {
        assertThat(Remarked.in(
                        bought("P-1").port("main", "", "P-3").or("P-2").cautions("high-voltage"),
                        bought("P-2").port("x1", "", "P-3").cautions("high-voltage"),
                        bought("P-3")))
                .isEmpty();
        assertThat(Remarked.in(
                        bought("P-1").port("main", "", "P-3").or("P-2").cautions("high-voltage"),
                        bought("P-2"),
                        bought("P-3")))
                .containsExactly(UNLIKE);
    }

    @Test
    void is_counted_in_the_same_unit() {
        assertThat(Remarked.in(bought("P-1").unit("m").or("P-2"), bought("P-2").unit("m")))
                .isEmpty();
        assertThat(Remarked.in(bought("P-1").unit("m").or("P-2"), bought("P-2")))
                .containsExactly(UNLIKE);
    }

    @Test
    void a_drawing_is_filed_in_the_issue_that_is_made() {
        assertThat(Remarked.in(made("A-1").document(drawing("1")))).isEmpty();
        assertThat(Remarked.in(made("A-1").document(drawing("2")))).containsExactly("part A-1: drawing in two issues");
    }

    private static Document drawing(String issue) {
        return new Document(
                Document.Kind.DRAWING, null, "D-A-1", issue, new Wording(Map.of("en", "Drawing", "de", "Z")));
    }
}
