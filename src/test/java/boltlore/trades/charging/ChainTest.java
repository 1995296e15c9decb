package boltlore.trades.charging;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.power.Link;
import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("What limits a charging chain")
class ChainTest {

    private static Link link(String says, @Nullable Integer phases, @Nullable String amps) {
        return new Link(says, phases, amps == null ? null : new BigDecimal(amps));
    }

    private static Chain chain(@Nullable String ratedKw, Link... links) {
        return new Chain(List.of(links), new BigDecimal("230"), ratedKw == null ? null : new BigDecimal(ratedKw));
    }

    private static final Link INLET = link("inlet", 3, "32");

    @Test
    void one_link_that_carries_less_is_named_alone() {
        Chain chain = chain(null, link("supply", 3, "32"), link("cable", null, "20"), INLET, link("charger", 3, "32"));

        assertThat(chain.whatLimits()).isEqualTo("The cable limits the current to 20 A in each phase.");
        assertThat(chain.links())
                .filteredOn(chain::limits)
                .extracting(Link::says)
                .containsExactly("cable");
    }

    @Test
    void links_that_carry_the_same_are_named_together() {
        Chain chain = chain(null, link("supply", 3, "16"), link("cable", null, "16"), INLET, link("charger", 3, "16"));

        assertThat(chain.whatLimits()).isEqualTo("Supply, cable and charger limit the current to 16 A in each phase.");
    }

    @Test
    @DisplayName("a three-phase charger on one phase is told of, and the weakest current as well (CP-12)")
    void phases() {
        Chain chain = chain("11", link("supply", 1, "32"), INLET, link("charger", 3, "16"));

        assertThat(chain.whatLimits())
                .isEqualTo("The supply has 1 phase, so the other phases of the charger are idle. The charger limits the"
                        + " current to 16 A.");
        assertThat(chain.kilowatts()).hasValueSatisfying(kw -> assertThat(kw).isEqualByComparingTo("3.68"));
        assertThat(chain.links())
                .filteredOn(chain::limits)
                .extracting(Link::says)
                .containsExactly("supply", "charger");
    }

    @Test
    void that_only_the_inlet_has_more_phases_is_not_told_of() {
        Chain chain = chain(null, link("supply", 1, "32"), INLET, link("charger", 1, "16"));

        assertThat(chain.whatLimits()).isEqualTo("The charger limits the current to 16 A.");
    }

    @Test
    void a_rated_power_well_below_the_current_is_the_limit() {
        Chain chain = chain("7.2", link("supply", 1, "32"), INLET, link("charger", 1, "32"));

        assertThat(chain.whatLimits()).isEqualTo("The charger's rated power is the limit: 7.2 kW.");
        assertThat(chain.kilowatts()).hasValueSatisfying(kw -> assertThat(kw).isEqualByComparingTo("7.2"));
        assertThat(chain.links())
                .filteredOn(chain::limits)
                .extracting(Link::says)
                .containsExactly("charger");
    }

    @Test
    void a_rated_power_that_is_only_rounded_is_not() {
        Chain chain = chain("7.3", link("supply", 1, "32"), INLET, link("charger", 1, "32"));

        assertThat(chain.kilowatts()).hasValueSatisfying(kw -> assertThat(kw).isEqualByComparingTo("7.36"));
    }

    @Test
    void nothing_is_said_where_no_current_is_known() {
        assertThat(chain(null, link("supply", 1, null)).whatLimits()).isEmpty();
        assertThat(chain(null, link("supply", 1, null)).kilowatts()).isEmpty();
    }
}
