package boltlore.trades.weighing;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.catalogue.Aboard.Who;
import boltlore.catalogue.MassLimit;
import boltlore.catalogue.Station;
import boltlore.findings.Finding;
import boltlore.findings.Kind;
import boltlore.measure.PartNumber;
import boltlore.order.Extra;
import boltlore.trades.KitFinding;
import java.math.BigDecimal;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class WeigherTest {

    private static OnAxles onAxles(WeighedKit kit) {
        OnAxles onAxles = kit.weighing().onAxles();
        assertThat(onAxles).isNotNull();
        return onAxles;
    }

    private static List<Kind> kinds(Weighing weighing) {
        return weighing.findings().all().stream().map(Finding::kind).toList();
    }

    private static WeighedKit loaded() {
        return new WeighedKit()
                .aboard(Who.LUGGAGE, "300", 2400)
                .aboard(Who.DRIVER, "75", 1200)
                .aboard(Who.PASSENGER, "75", 0);
    }

    @Nested
    class Loading {

        @Test
        void goes_from_the_empty_vehicle_by_way_of_the_driver_to_the_luggage() {
            assertThat(onAxles(loaded()).cases())
                    .extracting(CaseLoads::loadCase)
                    .containsExactly(
                            LoadCase.BEFORE, LoadCase.UNLADEN, LoadCase.DRIVER, LoadCase.PASSENGERS, LoadCase.LADEN);
        }

        @Test
        void driver_midway_loads_both_axles_alike_and_luggage_over_the_rear_axle_only_that_one() {
            AxleLoads laden = onAxles(loaded()).in(LoadCase.LADEN).orElseThrow().loads();
            assertThat(laden.frontKg()).isEqualByComparingTo("672.5");
            assertThat(laden.rearKg()).isEqualByComparingTo("827.5");
        }

        @Test
        void what_nobody_sits_on_is_not_loaded() {
            assertThat(onAxles(new WeighedKit().aboard(Who.DRIVER, "75", 1200)).in(LoadCase.PASSENGERS))
                    .isEmpty();
        }
    }

    @Nested
    class Limits {

        @Test
        void a_load_just_at_its_limit_is_kept() {
            WeighedKit kit = loaded().donor(WeighedKit.donor(null, "672.5", "827.5", "1500", null));
            assertThat(onAxles(kit).exceeded()).isEmpty();
        }

        @Test
        void a_tenth_of_a_kilogram_more_is_told_with_its_amount() {
            WeighedKit kit = loaded().donor(WeighedKit.donor(null, "672.5", "827.4", "1500", null));
            assertThat(onAxles(kit).exceeded()).singleElement().satisfies(check -> {
                assertThat(check.loadCase()).isEqualTo(LoadCase.LADEN);
                assertThat(check.limited()).isEqualTo(Limited.REAR);
                assertThat(check.marginKg()).isEqualByComparingTo("-0.1");
            });
        }

        @Test
        void payload_ends_at_the_first_limit_that_it_reaches() {
            WeighedKit kit = loaded().donor(WeighedKit.donor(null, "1000", "827.4", "1800", null));
            PayloadLeft payload = onAxles(kit).payload();
            assertThat(payload).isNotNull();
            assertThat(payload.kg()).isEqualByComparingTo("299.9");
            assertThat(payload.first()).isEqualTo(Limited.REAR);
        }

        @Test
        void a_load_behind_the_rear_axle_never_reaches_the_front_axles_limit() {
            WeighedKit kit = new WeighedKit()
                    .aboard(Who.LUGGAGE, "10", 3000)
                    .donor(WeighedKit.donor(null, "560", "2000", "1800", null));
            PayloadLeft payload = onAxles(kit).payload();
            assertThat(payload).isNotNull();
            assertThat(payload.first()).isEqualTo(Limited.WHOLE);
        }

        @Test
        void more_mass_than_a_market_allows() {
            Growth growth = new Growth(
                    BigDecimal.valueOf(1000),
                    new BigDecimal("1225"),
                    new MassLimit(BigDecimal.valueOf(120), "It is so."));
            assertThat(growth.exceeded()).isTrue();
            assertThat(growth.overKg()).isEqualByComparingTo("25");
        }

        /** By hand: 120 % of 1000 kg is 1200 kg; 2 % of 1176.6 kg is 23.532 kg, of 1224.5 kg 24.49 kg. */
        @Test
        void a_mass_nearer_to_the_limit_than_the_computation_is_exact_is_not_decided() {
            MassLimit limit = new MassLimit(BigDecimal.valueOf(120), "It is so.");
            Growth far = new Growth(BigDecimal.valueOf(1000), new BigDecimal("1176.4"), limit);
            Growth near = new Growth(BigDecimal.valueOf(1000), new BigDecimal("1176.6"), limit);
            assertThat(near.toleranceKg()).isEqualByComparingTo("23.532");
            assertThat(near.undecided()).isTrue();
            assertThat(far.undecided()).isFalse();
        }

        @Test
        void a_mass_above_the_limit_by_less_than_that_is_not_decided_either() {
            MassLimit limit = new MassLimit(BigDecimal.valueOf(120), "It is so.");
            Growth near = new Growth(BigDecimal.valueOf(1000), new BigDecimal("1224.4"), limit);
            Growth far = new Growth(BigDecimal.valueOf(1000), new BigDecimal("1224.5"), limit);
            assertThat(near.undecided()).isTrue();
            assertThat(near.exceeded()).isFalse();
            assertThat(far.exceeded()).isTrue();
            assertThat(far.undecided()).isFalse();
        }

        @Test
        void more_coming_off_the_front_axle_than_it_carries_stops() {
            Weighing weighing =
                    new WeighedKit().removed("engine", "600", 0, null).weighing();
            assertThat(weighing.stops()).isTrue();
        }

        @Test
        void all_of_it_coming_off_leaves_the_axle_empty_and_does_not_stop() {
            Weighing weighing =
                    new WeighedKit().removed("engine", "560", 0, null).weighing();
            assertThat(weighing.stops()).isFalse();
        }
    }

    @Nested
    class InFront {

        @Test
        void a_family_without_a_wish_is_measured_by_common_practice() {
            FrontShare share = onAxles(new WeighedKit()).frontShare();
            assertThat(share.leastPercent()).isEqualByComparingTo("40");
            assertThat(share.tooLow()).isFalse();
        }

        @Test
        void a_familys_own_wish_goes_before() {
            WeighedKit kit = new WeighedKit().donor(WeighedKit.donor(null, "900", "900", "1800", "53.4"));
            assertThat(onAxles(kit).frontShare().tooLow()).isTrue();
        }
    }

    @Nested
    class Height {

        @Test
        void a_mass_below_the_centre_of_gravity_lowers_it() {
            CentreHeight height =
                    onAxles(new WeighedKit().added("BOX", "1050", 1200, 280)).height();
            assertThat(height).isNotNull();
            assertThat(height.afterMm()).isEqualByComparingTo("480");
            assertThat(height.unknownKg()).isZero();
        }

        @Test
        void a_mass_of_no_known_height_changes_nothing_and_is_told() {
            CentreHeight height =
                    onAxles(new WeighedKit().added("BOX", "210", 1200, null)).height();
            assertThat(height).isNotNull();
            assertThat(height.afterMm()).isEqualByComparingTo("680");
            assertThat(height.unknownKg()).isEqualByComparingTo("210");
        }

        @Test
        void without_the_donors_height_nothing_is_said() {
            WeighedKit kit = new WeighedKit().donor(WeighedKit.donor(null, "900", "900", "1800", null));
            assertThat(onAxles(kit).height()).isNull();
            assertThat(kinds(kit.weighing())).contains(WeighingFinding.CENTRE_HEIGHT_NOT_KNOWN);
        }
    }

    @Nested
    class WhatIsMissing {

        @Test
        void without_axle_loads_only_masses_are_told() {
            Weighing weighing =
                    new WeighedKit().donor(null).added("BOX", "20", 100, null).weighing();
            assertThat(weighing.onAxles()).isNull();
            assertThat(weighing.addedKg()).isEqualByComparingTo("20");
            assertThat(kinds(weighing)).containsExactly(KitFinding.NOT_JUDGED);
        }

        @Test
        void a_part_without_a_station_is_named_and_no_axle_load_is_made_up() {
            Weighing weighing =
                    new WeighedKit().added("BOX", "20.50", null, null).weighing();
            assertThat(weighing.onAxles()).isNull();
            assertThat(weighing.growth()).isNotNull();
            assertThat(weighing.findings().all())
                    .filteredOn(finding -> finding.kind() == WeighingFinding.STATION_NOT_KNOWN)
                    .singleElement()
                    .satisfies(finding -> assertThat(finding.says())
                            .startsWith("20.5 kg of the kit have no station")
                            .contains("add a station for BOX, or for"));
        }

        @Test
        void its_sub_systems_station_will_do() {
            Weighing weighing = new WeighedKit()
                    .added("BOX", "20.50", null, null)
                    .subSystem("drive", 1200)
                    .weighing();
            assertThat(weighing.onAxles()).isNotNull();
            assertThat(weighing.added())
                    .singleElement()
                    .satisfies(each -> assertThat(each.measured()).isFalse());
        }

        @Test
        void a_part_that_weighs_nothing_needs_no_station() {
            assertThat(new WeighedKit()
                            .added("NOTE", "0", null, null)
                            .weighing()
                            .onAxles())
                    .isNotNull();
        }

        @Test
        void a_market_without_a_limit_seats_and_what_comes_off() {
            assertThat(kinds(new WeighedKit().weighing()))
                    .containsExactly(
                            WeighingFinding.REMOVED_NOT_KNOWN,
                            WeighingFinding.LOADS_NOT_KNOWN,
                            WeighingFinding.MASS_LIMIT_NOT_KNOWN);
        }

        @Test
        void of_an_extra_that_is_a_part_only_the_place_is_asked_for() {
            Extra bolts = new Extra(new PartNumber("BOX"), "", BigDecimal.TEN, "each", null, null, true, "Spare.");
            assertThat(new WeighedKit()
                            .added("BOX", "20", 1200, null)
                            .extra(bolts)
                            .weighing()
                            .findings()
                            .all())
                    .extracting(Finding::says)
                    .contains("Extra 'Part BOX' is left out of the weights, for its mass or place is not known: give"
                            + " stationMm in the order.");
        }

        @Test
        void extras_without_mass_or_place_are_told_by_name() {
            Extra rack = new Extra(null, "Roof rack", BigDecimal.ONE, "each", null, null, true, "Wanted.");
            assertThat(new WeighedKit().extra(rack).weighing().findings().all())
                    .extracting(Finding::says)
                    .contains("Extra 'Roof rack' is left out of the weights, for its mass or place is not known: give"
                            + " massKg, stationMm in the order.");
        }
    }

    @Nested
    class ExtrasOfTheOrder {

        private final Station middle = new Station(1200, 1900);

        private Extra racks(String kg) {
            return new Extra(
                    null,
                    "Roof rack",
                    BigDecimal.valueOf(2),
                    "each",
                    null,
                    null,
                    true,
                    "Wanted.",
                    "",
                    new BigDecimal(kg),
                    middle,
                    null);
        }

        @Test
        void in_the_middle_between_the_axles_load_both_alike() {
            Weighing without = new WeighedKit().weighing();
            Weighing with = new WeighedKit().extra(racks("10")).weighing();
            assertThat(with.extrasKg()).isEqualByComparingTo("20");
            assertThat(with.addedKg()).isEqualByComparingTo(without.addedKg());
            assertThat(front(with).subtract(front(without))).isEqualByComparingTo("10");
            assertThat(kinds(with)).doesNotContain(WeighingFinding.EXTRA_NOT_WEIGHED);
        }

        @Test
        void above_the_centre_of_gravity_raise_it() {
            OnAxles with = Objects.requireNonNull(
                    new WeighedKit().extra(racks("10")).weighing().onAxles());
            assertThat(Objects.requireNonNull(with.height()).changeMm()).isPositive();
        }

        private static BigDecimal front(Weighing weighing) {
            return Objects.requireNonNull(weighing.onAxles()).converted().frontKg();
        }
    }
}
