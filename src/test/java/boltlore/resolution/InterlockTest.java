package boltlore.resolution;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.catalogue.Catalogue;
import boltlore.choices.Choices;
import boltlore.faults.Outcome;
import boltlore.order.LeftOut;
import boltlore.resolution.rules.RuleResolver;
import boltlore.sketch.CatalogueSketch;
import boltlore.sketch.PartSketch;
import boltlore.sketch.PositionSketch;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Each piece of a mate and each blank closes one port that names it. */
class InterlockTest {

    private static final String BOX = "BOX";
    private static final String CABLE = "CABLE";
    private static final String PLUG = "PLUG";

    /** Boxes with a port that the cable mates with and the plug closes. */
    private static CatalogueSketch boxes(int many) {
        return new CatalogueSketch()
                .part(PartSketch.bought(BOX).port("out", PLUG, CABLE))
                .part(PartSketch.bought(CABLE))
                .part(PartSketch.bought(PLUG))
                .position(PositionSketch.at("boxes").line("boxes", BOX, String.valueOf(many)));
    }

    private static CatalogueSketch with(CatalogueSketch sketch, String part, int many) {
        return sketch.position(PositionSketch.at("at-" + part).line("line-" + part, part, String.valueOf(many)));
    }

    private static List<Finding> open(CatalogueSketch sketch) {
        Catalogue catalogue = sketch.draw();
        Choices choices = Choices.of(catalogue.family(CatalogueSketch.FAMILY), Map.of());
        Outcome<Resolution> outcome = new RuleResolver(catalogue).resolve(choices, new LeftOut.Undecided());
        return ((Outcome.Sound<Resolution>) outcome)
                .value().findings().stream()
                        .filter(finding -> finding.kind() == FindingKind.INTERLOCK_OPEN)
                        .toList();
    }

    private static Finding at(String port) {
        return new Finding(FindingKind.INTERLOCK_OPEN, port, PLUG);
    }

    @Test
    void two_boxes_one_cable_and_one_plug_are_closed() {
        assertThat(open(with(with(boxes(2), CABLE, 1), PLUG, 1))).isEmpty();
    }

    @Test
    void two_boxes_and_one_cable_leave_a_port_open() {
        assertThat(open(with(boxes(2), CABLE, 1))).containsExactly(at("BOX/out"));
    }

    @Test
    void a_plug_is_used_once_between_ports_of_two_kinds() {
        CatalogueSketch sketch = boxes(1).part(PartSketch.bought("DRIVE").port("in", PLUG));

        assertThat(open(with(with(sketch, "DRIVE", 1), PLUG, 1))).containsExactly(at("BOX/out"), at("DRIVE/in"));
    }

    @Test
    void a_port_with_a_mate_of_its_own_is_not_blamed_for_another_that_has_none() {
        CatalogueSketch sketch = boxes(1).part(PartSketch.bought("DRIVE").port("in", PLUG));

        assertThat(open(with(with(sketch, "DRIVE", 1), CABLE, 1))).containsExactly(at("DRIVE/in"));
    }

    @Test
    void a_mate_that_two_ports_name_goes_to_the_one_that_nothing_else_closes() {
        CatalogueSketch sketch = boxes(1).part(PartSketch.bought("DRIVE").port("in", "", CABLE));

        assertThat(open(with(with(with(sketch, "DRIVE", 1), CABLE, 1), PLUG, 1)))
                .isEmpty();
    }
}
