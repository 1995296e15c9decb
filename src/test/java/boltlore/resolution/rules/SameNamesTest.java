package boltlore.resolution.rules;

import static boltlore.trial.TrialLine.line;
import static boltlore.trial.TrialPart.part;
import static boltlore.trial.TrialPosition.position;
import static org.assertj.core.api.Assertions.assertThat;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Condition;
import boltlore.catalogue.Expectation;
import boltlore.faults.Outcome;
import boltlore.order.LeftOut;
import boltlore.resolution.Finding;
import boltlore.resolution.FindingKind;
import boltlore.resolution.Resolution;
import boltlore.trial.Say;
import boltlore.trial.Trial;
import java.util.SortedSet;
import org.junit.jupiter.api.Test;

/** A number of digits alone may name a part, and a position too. */
class SameNamesTest {

    /** Position 100 takes part 200; something expects what is told. */
    private static SortedSet<Finding> findings(Expectation expected) {
        Catalogue catalogue = new Trial()
                .part(part("100"))
                .part(part("200"))
                .part(part("300"))
                .position(position("100").line(line("a", "200")))
                .position(position("300").line(line("b", "300").expects(expected)))
                .catalogue();
        Outcome<Resolution> outcome = new RuleResolver(catalogue).resolve(Trial.choose(catalogue), new LeftOut.Keep());
        return ((Outcome.Sound<Resolution>) outcome).value().findings();
    }

    @Test
    void a_filled_position_does_not_stand_for_the_part_of_its_name() {
        assertThat(findings(Say.expectPart("100", "1", Condition.ALWAYS)))
                .containsExactly(new Finding(FindingKind.COMPANION_MISSING, "100", "b"));
    }

    @Test
    void a_part_does_not_stand_for_lines_at_the_position_of_its_name() {
        assertThat(findings(Say.expectPosition("200", "1", Condition.ALWAYS)))
                .containsExactly(new Finding(FindingKind.COMPANION_MISSING, "200", "b"));
    }

    @Test
    void each_stands_for_itself() {
        assertThat(findings(Say.expectPart("200", "1", Condition.ALWAYS))).isEmpty();
        assertThat(findings(Say.expectPosition("100", "1", Condition.ALWAYS))).isEmpty();
    }
}
