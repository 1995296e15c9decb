package boltlore.trades.costing.path;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.CoatedWhere;
import boltlore.catalogue.Finish;
import boltlore.catalogue.Part;
import boltlore.demo.Demo;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("Days of coating")
class StepDaysTest {

    private static final Catalogue CATALOGUE = Demo.catalogue();

    private static Part coated() {
        return CATALOGUE.parts().values().stream()
                .filter(part -> part.coat() != null)
                .findFirst()
                .orElseThrow();
    }

    private static String finish(boolean own) {
        return CATALOGUE.finishes().values().stream()
                .filter(finish -> finish.where() instanceof CoatedWhere.OwnOven == own)
                .map(Finish::name)
                .findFirst()
                .orElseThrow();
    }

    /** Common practice, no source: what is needed at the end of a round is coated at its beginning. */
    @Test
    void in_the_own_oven_are_those_of_a_round() {
        int round = CATALOGUE.workshop().coating().time().roundDays();
        assertThat(round).isPositive();
        assertThat(new StepDays(CATALOGUE).turnRound(coated(), finish(true))).isEqualTo(round);
    }

    @Test
    void outside_are_those_of_the_coater() {
        int days = new StepDays(CATALOGUE).turnRound(coated(), finish(false));
        assertThat(CATALOGUE.workshop().coating().coaters().values())
                .anySatisfy(coater -> assertThat(coater.turnRoundDays()).isEqualTo(days));
    }

    @Test
    void of_a_part_without_a_coat_are_none() {
        Part bare = CATALOGUE.parts().values().stream()
                .filter(part -> part.coat() == null)
                .findFirst()
                .orElseThrow();
        assertThat(new StepDays(CATALOGUE).turnRound(bare, finish(true))).isZero();
    }
}
