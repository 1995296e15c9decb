package boltlore.choosing;

import static boltlore.sketch.PositionSketch.is;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Condition;
import boltlore.catalogue.Family;
import boltlore.catalogue.Fill;
import boltlore.choices.Choices;
import boltlore.logic.Deadline;
import boltlore.measure.OptionName;
import boltlore.resolution.Finding;
import boltlore.resolution.FindingKind;
import boltlore.resolution.rules.RuleResolver;
import boltlore.sketch.CatalogueSketch;
import boltlore.sketch.PartSketch;
import boltlore.sketch.PositionSketch;
import java.util.List;
import java.util.Map;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.Test;

/** Kits with a finding that stops them are passed over by what stops them, not one by one. */
class StoppedKitsTest {

    private static final String[] OPTIONS = {"a", "b", "c", "d", "e", "f", "g", "h", "i"};

    /** Nine options with dear and cheap values that all have a part, and one whose cheap value leaves a hole. */
    private static Catalogue halfStopped() {
        CatalogueSketch sketch =
                new CatalogueSketch().part(PartSketch.bought("DEAR").cost("5.00"));
        for (String option : OPTIONS) {
            sketch.option(option, "no", "yes")
                    .position(PositionSketch.at("at-" + option).line("line-" + option, "DEAR", "1", is(option, "yes")));
        }
        return sketch.option("seat", "none", "one")
                .position(PositionSketch.at("seat").fill(Fill.ONE).line("seat", "DEAR", "100", is("seat", "one")))
                .draw();
    }

    private static Family family(Catalogue catalogue) {
        return catalogue.family(CatalogueSketch.FAMILY);
    }

    private static BestKits kits(Catalogue catalogue, Deadline deadline) {
        return new BestKits(new RuleResolver(catalogue), family(catalogue), deadline);
    }

    @Test
    void the_cheapest_sound_kit_is_found_behind_512_cheaper_ones_that_one_finding_stops() {
        Catalogue catalogue = halfStopped();

        BestKit kit = kits(catalogue, Deadline.NONE)
                .best(Aim.CHEAPEST, Choices.of(family(catalogue), Map.of()))
                .orElseThrow();

        assertThat(kit.choices().value(new OptionName("seat"))).contains("one");
        assertThat(kit.passedOver()).containsExactly(new Finding(FindingKind.HOLE, "seat"));
    }

    @Test
    void each_kit_stops_only_where_every_kit_does() {
        Catalogue catalogue = halfStopped();
        Choices none = Choices.of(family(catalogue), Map.of(new OptionName("seat"), "none"));
        Choices one = Choices.of(family(catalogue), Map.of(new OptionName("seat"), "one"));

        assertThat(kits(catalogue, Deadline.NONE).best(Aim.CHEAPEST, none)).isEmpty();
        assertThat(kits(catalogue, Deadline.NONE).best(Aim.CHEAPEST, one)).isPresent();
    }

    @Test
    void what_is_as_good_names_no_kit_that_stops() {
        Catalogue catalogue = new CatalogueSketch()
                .part(PartSketch.bought("SEAT").cost("1.00"))
                .option("seat", "left", "right", "none")
                .option("floor", "low", "high")
                .position(PositionSketch.at("seat")
                        .fill(Fill.ONE)
                        .line("left", "SEAT", "1", is("seat", "left"))
                        .line("right", "SEAT", "1", is("seat", "right"))
                        .line(
                                "again",
                                "SEAT",
                                "0",
                                new Condition.All(List.of(is("seat", "right"), is("floor", "high")))))
                .draw();

        BestKit kit = kits(catalogue, Deadline.NONE)
                .best(Aim.CHEAPEST, Choices.of(family(catalogue), Map.of(new OptionName("floor"), "high")))
                .orElseThrow();

        assertThat(kit.choices().value(new OptionName("seat"))).contains("left");
        assertThat(kit.ties()).isEmpty();
    }

    @Test
    void a_search_that_has_no_time_says_so_and_finds_again_when_it_has() {
        Catalogue catalogue = halfStopped();
        AtomicLong now = new AtomicLong();
        Deadline deadline = Deadline.in(10, now::get);
        BestKits kits = kits(catalogue, deadline);
        Choices choices = Choices.of(family(catalogue), Map.of());
        now.set(1_000);

        assertThatThrownBy(() -> kits.best(Aim.CHEAPEST, choices)).isInstanceOf(Deadline.Passed.class);
        deadline.begin();
        assertThat(kits.best(Aim.CHEAPEST, choices)).isPresent();
    }
}
