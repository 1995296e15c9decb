package boltlore.trades.charging;

import static boltlore.power.Wired.carries;
import static boltlore.power.Wired.charger;
import static boltlore.power.Wired.market;
import static boltlore.power.Wired.outlet;
import static org.assertj.core.api.Assertions.assertThat;

import boltlore.catalogue.Facts;
import boltlore.catalogue.Role;
import boltlore.faults.Outcome;
import boltlore.order.LeftOut;
import boltlore.power.Wired;
import boltlore.resolution.Finding;
import boltlore.resolution.FindingKind;
import boltlore.resolution.Resolution;
import boltlore.resolution.rules.RuleResolver;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

/** The ids in the names are those of the copied table checkvalues/inlet-facts.csv, which names its sources. */
@DisplayName("Which inlet may meet which charger and market")
class InletFactsTest {

    private static final Facts TYPE_1 = carries(1, "240", "80");
    private static final Facts TYPE_2 = carries(3, "230", "63");
    private static final Facts NORTH = market(List.of("type-1", "j3400"), List.of("nema-5-15"));

    @Nested
    @DisplayName("IN-T1, IN-T2, IN-E1 (SAE J1772 and IEC 62196-2, public summaries): phases")
    class Phases {
        @Test
        void a_three_phase_charger_is_told_of_behind_type_1() {
            assertThat(found(inletAndCharger("type-1", TYPE_1, charger(3, "16", false, ""))))
                    .containsExactly(FindingKind.CHARGER_PHASES_ABOVE_INLET);
        }

        @Test
        void the_same_charger_is_not_told_of_behind_type_2() {
            assertThat(found(inletAndCharger("type-2", TYPE_2, charger(3, "16", false, ""))))
                    .isEmpty();
        }
    }

    @Nested
    @DisplayName("IN-E2 (common practice, no source): currents")
    class Currents {
        @Test
        void a_charger_of_81_amps_stops_behind_80_amps() {
            assertThat(found(inletAndCharger("type-1", TYPE_1, charger(1, "81", false, ""))))
                    .containsExactly(FindingKind.CHARGER_ABOVE_INLET);
        }

        @Test
        void a_charger_of_80_amps_passes_behind_80_amps() {
            assertThat(found(inletAndCharger("type-1", TYPE_1, charger(1, "80", false, ""))))
                    .isEmpty();
        }
    }

    @Nested
    @DisplayName("IN-E3, IN-E9 (common practice, no source): markets")
    class Markets {
        @Test
        void type_2_is_told_of_in_north_america() {
            assertThat(found(new Wired().with(Role.MARKET, "north", NORTH).with(Role.INLET, "type-2", TYPE_2)))
                    .containsExactly(FindingKind.INLET_OF_ANOTHER_MARKET);
        }

        @Test
        void type_1_is_not_told_of_in_north_america() {
            assertThat(found(new Wired().with(Role.MARKET, "north", NORTH).with(Role.INLET, "type-1", TYPE_1)))
                    .isEmpty();
        }

        @Test
        void a_european_socket_stops_in_north_america() {
            assertThat(found(north("cee-7-3", "230"))).containsExactly(FindingKind.V2L_OUTLET_OF_ANOTHER_MARKET);
        }

        @Test
        void an_american_socket_passes_in_north_america() {
            assertThat(found(north("nema-5-15", "120"))).isEmpty();
        }

        private static Wired north(String socket, String volts) {
            return new Wired().with(Role.MARKET, "north", NORTH).with(Role.EXPORT, "out", outlet(socket, volts, "15"));
        }
    }

    @Nested
    @DisplayName("IN-E8, IN-E10 (common practice, no source): export")
    class Export {
        @Test
        void a_one_way_charger_stops_export() {
            assertThat(found(export(charger(1, "32", false, ""))))
                    .containsExactly(FindingKind.V2L_OUTLET_NEEDS_BIDIRECTIONAL_CHARGER);
        }

        @Test
        void a_charger_that_feeds_out_less_than_the_outlet_gives_stops_export() {
            assertThat(found(export(charger(1, "32", true, "3.6"))))
                    .containsExactly(FindingKind.V2L_OUTLET_ABOVE_CHARGER);
        }

        @Test
        void a_charger_that_feeds_out_as_much_as_the_outlet_gives_passes() {
            assertThat(found(export(charger(1, "32", true, "3.68")))).isEmpty();
        }

        private static Wired export(Facts charger) {
            return new Wired()
                    .with(Role.CHARGER, "box", charger)
                    .with(Role.EXPORT, "out", outlet("cee-7-3", "230", "16"));
        }
    }

    private static Wired inletAndCharger(String inlet, Facts inletFacts, Facts charger) {
        return new Wired().with(Role.INLET, inlet, inletFacts).with(Role.CHARGER, "box", charger);
    }

    private static Set<FindingKind> found(Wired wired) {
        Outcome<Resolution> outcome =
                new RuleResolver(wired.catalogue()).resolve(wired.choices(), new LeftOut.Undecided());
        return ((Outcome.Sound<Resolution>) outcome)
                .value().findings().stream().map(Finding::kind).collect(Collectors.toSet());
    }
}
