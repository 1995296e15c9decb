package boltlore.resolution.rules;

import static boltlore.resolution.rules.Named.byPart;
import static boltlore.resolution.rules.Named.line;
import static boltlore.trial.TrialLine.line;
import static boltlore.trial.TrialPart.part;
import static boltlore.trial.TrialPosition.position;
import static org.assertj.core.api.Assertions.assertThat;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Condition;
import boltlore.catalogue.Feature;
import boltlore.catalogue.Fill;
import boltlore.catalogue.FinishRule;
import boltlore.faults.Outcome;
import boltlore.order.LeftOut;
import boltlore.resolution.Finding;
import boltlore.resolution.FindingKind;
import boltlore.resolution.Reason;
import boltlore.resolution.Resolution;
import boltlore.resolution.Way;
import boltlore.trial.Say;
import boltlore.trial.Trial;
import boltlore.trial.TrialWorkshop;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

/** A compressor on a bracket; without the compressor the bracket can be left out, and with it all that hung on it. */
class WithdrawalTest {

    private static final Feature BARE_THREAD = new Feature(Feature.Kind.THREAD, "M12", 2, Feature.Treat.MASKED);

    private static final Catalogue CATALOGUE = new Trial()
            .option("cooled", "yes", "no")
            .role("frame", new FinishRule.Fixed("black"))
            .finish(TrialWorkshop.ownFinish("black"))
            .caution("oven", "coating")
            .caution("lift-two", "picking")
            .part(part("CO"))
            .part(part("BR")
                    .coatedAs("frame", BARE_THREAD)
                    .caution("lift-two")
                    .contains("PLATE", "1")
                    .needs(Say.each("BOLT", "4"))
                    .bin(""))
            .part(part("PLATE"))
            .part(part("BOLT").needs(Say.each("WASHER", "2")))
            .part(part("WASHER").bin(""))
            .part(part("SHIM"))
            .position(position("compressor")
                    .due(Say.is("cooled", "yes"))
                    .heldBy("bracket")
                    .line(line("compressor", "CO").when(Say.is("cooled", "yes"))))
            .position(position("bracket")
                    .fill(Fill.FREE)
                    .line(line("bracket", "BR")
                            .carries("compressor")
                            .needs(Say.each("SHIM", "1"))
                            .expects(Say.expectPart("CO", "1", Condition.ALWAYS))))
            .catalogue();

    private static Resolution.Resolved resolve(String cooled, LeftOut leftOut) {
        Outcome<Resolution> outcome =
                new RuleResolver(CATALOGUE).resolve(Trial.choose(CATALOGUE, "cooled", cooled), leftOut);
        assertThat(outcome.faults()).isEmpty();
        return (Resolution.Resolved) ((Outcome.Sound<Resolution>) outcome).value();
    }

    @Nested
    class An_unused_bracket_that_nobody_has_decided_on {

        private final Resolution.Resolved kept = resolve("no", new LeftOut.Undecided());

        @Test
        void is_in_with_its_part_its_children_and_its_companions() {
            assertThat(kept.kit().lines()).containsExactly(line("bracket"));
            assertThat(kept.kit().quantities().keySet())
                    .containsExactly(
                            Named.part("BOLT"),
                            Named.part("BR"),
                            Named.part("PLATE"),
                            Named.part("SHIM"),
                            Named.part("WASHER"));
            assertThat(kept.kit().reasons())
                    .contains(
                            new Reason(byPart("BOLT"), Way.NEEDS, Named.part("WASHER")),
                            new Reason(byPart("BR"), Way.CONTAINS, Named.part("PLATE")));
        }

        @Test
        void brings_its_findings_finish_and_cautions() {
            assertThat(kept.findings())
                    .containsExactlyInAnyOrder(
                            new Finding(FindingKind.UNUSED, "bracket"),
                            new Finding(FindingKind.COMPANION_MISSING, "CO", "bracket"),
                            new Finding(FindingKind.NO_MASK, "BR", "thread M12"),
                            new Finding(FindingKind.LEAF_WITHOUT_BIN, "BR"),
                            new Finding(FindingKind.LEAF_WITHOUT_BIN, "WASHER"));
            assertThat(kept.kit().finishes()).containsOnlyKeys(Named.part("BR"));
            assertThat(kept.kit().cautions()).containsOnlyKeys("coating", "picking");
        }
    }

    @Nested
    class An_unused_bracket_that_is_left_out {

        private final Resolution.Resolved without = resolve("no", new LeftOut.AllUnused());

        @Test
        void takes_its_part_its_children_and_its_companions_with_it() {
            assertThat(without.kit().lines()).isEmpty();
            assertThat(without.kit().quantities()).isEmpty();
            assertThat(without.kit().reasons()).isEmpty();
            assertThat(without.kit().unused()).isEmpty();
        }

        @Test
        void takes_its_findings_finish_and_cautions_with_it_and_is_told() {
            assertThat(without.findings()).containsExactly(new Finding(FindingKind.LEFT_OUT, "bracket"));
            assertThat(without.kit().finishes()).isEmpty();
            assertThat(without.kit().cautions()).isEmpty();
        }

        @Test
        void leaves_its_position_filled_so_that_it_is_no_hole() {
            assertThat(without.kit().filled()).containsExactly(Named.position("bracket"));
        }

        @Test
        void comes_to_the_same_by_name() {
            LeftOut byName = new LeftOut.These(new TreeSet<>(Set.of(line("bracket"))));

            assertThat(resolve("no", byName)).isEqualTo(without);
        }
    }

    @Nested
    class A_bracket_that_carries_something {

        @Test
        void cannot_be_left_out() {
            LeftOut byName = new LeftOut.These(new TreeSet<>(Set.of(line("bracket"))));
            Outcome<Resolution> outcome =
                    new RuleResolver(CATALOGUE).resolve(Trial.choose(CATALOGUE, "cooled", "yes"), byName);

            assertThat(outcome.faults())
                    .singleElement()
                    .satisfies(fault -> assertThat(fault.found()).isEqualTo("line 'bracket' carries 'compressor'"));
        }

        @Test
        void stays_when_all_unused_ones_go() {
            assertThat(resolve("yes", new LeftOut.AllUnused()).kit().lines())
                    .isEqualTo(new TreeSet<>(List.of(line("bracket"), line("compressor"))));
        }
    }
}
