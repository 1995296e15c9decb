package boltlore.checking;

import static boltlore.sketch.PartSketch.bolt;
import static boltlore.sketch.PartSketch.bought;
import static boltlore.sketch.PositionSketch.at;
import static boltlore.sketch.PositionSketch.atJoint;
import static boltlore.sketch.PositionSketch.each;
import static org.assertj.core.api.Assertions.assertThat;

import boltlore.catalogue.Condition;
import boltlore.catalogue.Fixing;
import boltlore.catalogue.Need;
import boltlore.checkvalues.CheckRow;
import boltlore.checkvalues.CheckTable;
import boltlore.measure.PartNumber;
import boltlore.sketch.CatalogueSketch;
import boltlore.sketch.PartSketch;
import boltlore.sketch.PositionSketch;
import java.math.BigDecimal;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class HolesForFixingsTest {

    private static final String SIZE = "line van/bracket: no hole for the fixing";
    private static final String COUNT = "line van/bracket: fewer holes than fixings";

    static Stream<CheckRow> holes() {
        return CheckTable.rows(
                "metric-holes.csv", "MH-01", "MH-02", "MH-03", "MH-04", "MH-05", "MH-06", "MH-07", "MH-08", "MH-09");
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("holes")
    @DisplayName("Tapping drill and clearance holes are the published ones")
    void published_holes(CheckRow row) {
        MetricHoles holes = MetricHoles.forThread(row.text("thread")).orElseThrow();
        assertThat(holes.tapped()).isEqualByComparingTo(row.number("tapping_drill_mm"));
        assertThat(holes.fine()).isEqualByComparingTo(row.number("clearance_fine_mm"));
        assertThat(holes.coarse()).isEqualByComparingTo(row.number("clearance_coarse_mm"));
    }

    @ParameterizedTest
    @CsvSource({"6.8, false", "8, true", "8.3, true", "8.4, false", "9, false", "10, false", "10.1, true"})
    void an_M8_bolt_wants_a_clearance_hole_or_its_tapped_hole(String holeMm, boolean doubtful) {
        List<String> remarks = bracket(part().holes(holeMm, 4), each("FX-M8", "4"));
        assertThat(remarks).isEqualTo(doubtful ? List.of(SIZE) : List.of());
    }

    @Test
    void a_fine_thread_goes_through_the_same_clearance_hole() {
        assertThat(bracket(part().holes("9", 4), each("FX-M8F", "4"))).isEmpty();
    }

    @Test
    void there_are_no_more_bolts_than_holes_of_their_size() {
        PartSketch part = part().holes("9", 4).holes("6.6", 2);
        assertThat(bracket(part, each("FX-M8", "4"))).isEmpty();
        assertThat(bracket(part, each("FX-M8", "5"))).containsExactly(COUNT);
    }

    @Test
    void a_nut_sits_on_its_bolt_and_takes_no_hole_of_its_own() {
        assertThat(bracket(part().holes("9", 4), each("FX-M8", "4"), each("FX-N8", "4")))
                .isEmpty();
    }

    @Test
    void the_bolts_of_a_joint_are_counted_too() {
        assertThat(bracket(part().holes("9", 4), atJoint("sill", "FX-M8", "4"))).isEmpty();
        assertThat(bracket(part().holes("9", 4), atJoint("sill", "FX-M8", "5"))).containsExactly(COUNT);
    }

    @Test
    void bolts_that_exclude_each_other_are_not_added() {
        assertThat(bracket(part().holes("9", 4), sometimes("early"), sometimes("late")))
                .isEmpty();
    }

    @Test
    void a_part_that_gives_no_holes_is_taken_as_it_is() {
        assertThat(bracket(part(), each("FX-M8", "4"))).isEmpty();
    }

    private static Need sometimes(String era) {
        Condition when = PositionSketch.is("era", era);
        return new Need(new PartNumber("FX-M8"), new Need.Each(new BigDecimal("3")), when, "It is fixed so.");
    }

    private static PartSketch part() {
        return bought("BR-1");
    }

    private static List<String> bracket(PartSketch part, Need... needs) {
        PartSketch nut = bought("FX-N8").fixing(new Fixing("M8", null, "8", null, null, null));
        return Remarked.in(new CatalogueSketch()
                .option("era", "early", "late")
                .part(part)
                .part(bolt("FX-M8", "M8", "24.6"))
                .part(bolt("FX-M8F", "M8x1", "26.1"))
                .part(nut)
                .position(at("bracket").line("bracket", "BR-1", "1", needs)));
    }
}
