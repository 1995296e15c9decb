package boltlore.trades.braking;

import static java.nio.file.StandardCopyOption.REPLACE_EXISTING;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boltlore.catalogue.Braking.Brakes;
import boltlore.catalogue.Braking.Category;
import boltlore.catalogue.Braking.Vacuum;
import boltlore.catalogue.Condition;
import boltlore.catalogue.Driving.Driven;
import boltlore.demo.Demo;
import boltlore.faults.Outcome;
import boltlore.findings.Finding;
import boltlore.findings.Severity;
import boltlore.report.Approved;
import boltlore.report.text.TextWriter;
import boltlore.sketch.CatalogueSketch;
import boltlore.sketch.OrderSketch;
import boltlore.trades.KitFinding;
import boltlore.trades.KitInWork;
import boltlore.trades.TradeOption.Given;
import boltlore.trades.TradeResult;
import boltlore.trades.weighing.LoadCase;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("Braking")
class BrakingTest {

    private static final int WIDE = 200;

    /** By Boyle's law the eighth application starts with 60 − 7 × 7.2375 = 9.3375 kPa. */
    private static final String FOR_EIGHT = "9.33";

    private static final String FOR_SEVEN = "9.34";

    private static @Nullable BigDecimal number(@Nullable String text) {
        return text == null ? null : new BigDecimal(text);
    }

    /** 600 kg in front, 400 kg behind, height 0.3 of the wheelbase. */
    private static AxleBalance balance(
            Category category, String front, @Nullable String kneeKn, @Nullable String beyond) {
        Brakes brakes =
                new Brakes(Condition.ALWAYS, category, new BigDecimal(front), number(kneeKn), number(beyond), "");
        return new AxleBalance(LoadCase.LADEN, 600, 400, 0.3, brakes);
    }

    /** Volume 7 l, air of 0.5 l an application, 60 kPa where the pump starts. */
    private static VacuumReserve reserve(String least, int applications, String exponent) {
        return new VacuumReserve(new Vacuum(
                Condition.ALWAYS,
                BigDecimal.valueOf(4),
                BigDecimal.valueOf(3),
                new BigDecimal("0.5"),
                BigDecimal.valueOf(60),
                BigDecimal.valueOf(75),
                new BigDecimal(least),
                applications,
                BigDecimal.valueOf(20),
                new BigDecimal(exponent),
                ""));
    }

    private static TradeResult worked(KitInWork kit) {
        Outcome<List<TradeResult>> outcome = new BrakingTrade().work(List.of(kit), Given.NONE);
        return ((Outcome.Sound<List<TradeResult>>) outcome).value().get(0);
    }

    private static String text(String order) {
        return new TextWriter(WIDE)
                .text(worked(Demo.kit(order)).sheets().get(0).report().get());
    }

    /**
     * Formulas of Directive 71/320/EEC, Annex II, Appendix, 3.1.3 (legislation.gov.uk, as of 1 January 2007), worked by hand
     * at braking rate 0.5: 600 + 0.5 × 0.3 × 1000 = 750 kg, 400 − 150 = 250 kg, 350 / 750, 150 / 250.
     */
    @Test
    void braking_moves_load_to_the_front_axle_and_each_axle_asks_for_grip() {
        AxleBalance balance = balance(Category.N1, "70", null, null);
        assertThat(balance.frontLoad(0.5)).isCloseTo(750, within(1e-9));
        assertThat(balance.rearLoad(0.5)).isCloseTo(250, within(1e-9));
        assertThat(balance.idealFront(0.5)).isCloseTo(0.75, within(1e-12));
        assertThat(balance.front(0.5)).isCloseTo(350 / 750.0, within(1e-12));
        assertThat(balance.rear(0.5)).isCloseTo(0.6, within(1e-12));
    }

    @Test
    void with_the_ideal_share_both_axles_ask_for_the_braking_rate() {
        AxleBalance balance = balance(Category.M1, "75", null, null);
        assertThat(balance.front(0.5)).isCloseTo(0.5, within(1e-12));
        assertThat(balance.rear(0.5)).isCloseTo(0.5, within(1e-12));
    }

    /** Worked by hand: 1000 kg at 0.5 brake with 4903 N; 0.7 × 3000 + 0.9 × 1903 N on the front axle. */
    @Test
    void a_valve_spares_the_rear_axle_beyond_its_knee() {
        AxleBalance balance = balance(Category.N1, "70", "3", "90");
        assertThat(balance.fittedFront(0.3)).isCloseTo(0.7, within(1e-12));
        assertThat(balance.fittedFront(0.5)).isCloseTo((2100 + 0.9 * 1903.325) / 4903.325, within(1e-9));
    }

    /**
     * Ranges of Directive 71/320/EEC, Annex II, Appendix, 3.1.1: N1 0.15 to 0.5; M1 0.15 to 0.8, with the rear axle ahead
     * between 0.3 and 0.45 up to the braking rate and 0.05. By hand the curves cross where 0.6 + 0.3 z is the fitted share:
     * 70 % at 0.333; at 0.43 the rear axle asks for 0.476, at 0.44 for 0.4925.
     */
    @ParameterizedTest(name = "{0}, {1} % in front: from {2}")
    @DisplayName("The rear axle locks first where the fitted share is below the ideal one")
    @CsvSource({
        "N1, 70, 0.34",
        "M1, 70, 0.44",
        "N1, 75, 0.50",
        "N1, 75.1, NaN",
        "N1, 74, 0.47",
        "M1, 84.1, NaN",
        "M1, 83.9, 0.80"
    })
    void rear_first(Category category, String front, double rate) {
        assertThat(balance(category, front, null, null).rearFirst()).isCloseTo(rate, within(1e-9));
    }

    @Test
    void a_rear_axle_that_would_lock_first_is_found_in_each_language() {
        assertThat(BrakingTrade.balance(balance(Category.N1, "70", null, null), Recuperation.NONE))
                .extracting(found -> found.says("de"))
                .containsExactly("Umgebaut, voll beladen: Die Hinterachse würde ab einer Abbremsung von 0,34 vor der"
                        + " Vorderachse blockieren, was bis 0,5 nicht sein darf: die Bremskraftverteilung von einem"
                        + " zugelassenen Bremsenbetrieb anpassen lassen.");
        assertThat(BrakingTrade.balance(balance(Category.N1, "75.1", null, null), Recuperation.NONE))
                .isEmpty();
    }

    @Test
    void on_a_road_of_that_grip_the_vehicle_brakes_until_one_axle_locks() {
        // 0.7 × 1000 z / (600 + 300 z) = 0.8 gives z = 1.04; the rear axle's 300 z / (400 − 300 z) = 0.8 gives 0.593.
        assertThat(balance(Category.N1, "70", null, null).rateOn(0.8)).isCloseTo(0.59, within(1e-9));
    }

    /**
     * Worked by hand: (1.4 × 101.325 − 0.4 × 60) × 0.5 / 7 = 8.418, so 60, 51.582, 42.923, 34.017 kPa; with the exponent 1, by
     * Boyle's law, 101.325 / 14 = 7.238 each time.
     */
    @Test
    void each_application_uses_up_a_share_of_the_vacuum() {
        VacuumReserve reserve = reserve("40", 4, "1.4");
        assertThat(reserve.after(2)).isCloseTo(42.923, within(1e-3));
        assertThat(reserve.after(3)).isCloseTo(34.017, within(1e-3));
        assertThat(reserve.helped()).isEqualTo(3);
        assertThat(reserve("40", 3, "1").after(2)).isCloseTo(60 - 2 * 7.2375, within(1e-3));
        assertThat(reserve.after(100)).as("no less than none").isZero();
    }

    /** Worked by hand: 7 l / 20 l/min × 60 s × ln(41.325 / 26.325) = 9.470 s. */
    @Test
    void the_pump_takes_the_longer_the_larger_the_volume() {
        assertThat(reserve("40", 4, "1.4").pumpSeconds()).isCloseTo(9.470, within(0.001));
    }

    @Test
    void a_vacuum_that_helps_too_few_applications_is_found() {
        assertThat(BrakingTrade.reserve(reserve("40", 8, "1.4")))
                .extracting(Finding::says)
                .containsExactly(
                        "With a dead pump 3 full applications start with 40 kPa of vacuum or more. A vacuum pump as the"
                                + " source asks for 8 (workshop's own value, after Directive 71/320/EEC, Annex IV, B, check"
                                + " before use): fit a larger reservoir, or let the pump start earlier.");
        assertThat(BrakingTrade.reserve(reserve(FOR_SEVEN, 8, "1"))).hasSize(1);
        assertThat(BrakingTrade.reserve(reserve(FOR_EIGHT, 8, "1"))).isEmpty();
    }

    /**
     * Directive 71/320/EEC, Annex II, Appendix, 3.1.1: z ≥ 0.1 + 0.85 (k − 0.2) for k from 0.2 to 0.8 (formula from memory).
     * By hand: all braking in front asks at 0.30 for 300 / 690 = 0.4348, which takes 0.2996, and at 0.31 for 310 / 693 =
     * 0.4473, which takes 0.3102.
     */
    @ParameterizedTest(name = "{0} % in front: from {1}")
    @CsvSource({"100, 0.31", "96, NaN", "75, NaN"})
    void an_axle_that_brakes_too_much_of_the_whole_is_found(String front, double rate) {
        AxleBalance balance = balance(Category.N1, front, null, null);
        assertThat(balance.wasteful()).isCloseTo(rate, within(1e-9));
        assertThat(AxleBalance.leastRate(0.55)).isCloseTo(0.3975, within(1e-12));
    }

    @Test
    void too_much_braking_on_one_axle_is_told_with_the_axle() {
        assertThat(BrakingTrade.balance(balance(Category.N1, "100", null, null), Recuperation.NONE))
                .singleElement()
                .satisfies(found -> {
                    assertThat(found.kind()).isEqualTo(BrakingFinding.ADHESION_NOT_USED);
                    assertThat(found.says())
                            .startsWith("Converted, fully laden: at a braking rate of 0.31 the front axle needs");
                });
    }

    /** Worked by hand: 1000 kg at 0.2 are braked with 1961.3 N, of which the drive unit gives 981 N to its axle. */
    @Test
    void what_the_drive_unit_brakes_comes_on_top_of_the_brakes_of_its_axle() {
        AxleBalance behind = balance(Category.N1, "80", null, null).with(new Recuperation(981, Driven.REAR));
        AxleBalance ahead = balance(Category.N1, "80", null, null).with(new Recuperation(981, Driven.FRONT));
        assertThat(behind.fittedFront(0.2)).isCloseTo(0.8 * 980.33 / 1961.33, within(1e-6));
        assertThat(ahead.fittedFront(0.2)).isCloseTo((981 + 0.8 * 980.33) / 1961.33, within(1e-6));
        assertThat(behind.fittedFront(0.05))
                .as("all of it, where less is asked for")
                .isZero();
    }

    @Test
    void recuperation_on_the_rear_axle_may_lock_it_first_where_the_brakes_alone_do_not() {
        AxleBalance balance = balance(Category.N1, "80", null, null);
        assertThat(BrakingTrade.balance(balance, new Recuperation(500, Driven.REAR)))
                .extracting(Finding::kind)
                .containsExactly(BrakingFinding.REAR_AXLE_LOCKS_FIRST_RECUPERATING);
        assertThat(BrakingTrade.balance(balance, new Recuperation(200, Driven.REAR)))
                .isEmpty();
        assertThat(BrakingTrade.balance(balance, new Recuperation(500, Driven.FRONT)))
                .isEmpty();
    }

    @Test
    void half_and_half_is_looked_at_as_a_guess() {
        assertThat(BrakingTrade.guessed(balance(Category.N1, "50", null, null).brakes()))
                .extracting(Finding::kind)
                .containsExactly(BrakingFinding.BRAKE_SHARE_GUESSED);
        assertThat(BrakingTrade.guessed(balance(Category.N1, "51", null, null).brakes()))
                .isEmpty();
        assertThat(BrakingTrade.guessed(balance(Category.N1, "50", "3", "80").brakes()))
                .isEmpty();
    }

    /** Eight where a pump makes the vacuum, four where the engine does: Directive 71/320/EEC, Annex IV, B, 1.2.1 (from memory). */
    @Test
    void fewer_applications_than_vehicles_are_approved_with_are_looked_at() {
        assertThat(BrakingTrade.reserve(reserve("40", 7, "1.4")))
                .extracting(Finding::kind)
                .containsExactly(BrakingFinding.VACUUM_APPLICATIONS_FEW, BrakingFinding.VACUUM_BELOW_RULE);
        assertThat(BrakingTrade.reserve(reserve(FOR_EIGHT, 8, "1"))).isEmpty();
    }

    @Test
    void a_demo_order_reads_as_a_person_has_approved_it() {
        Approved.check("trades/braking/bl-1001", text("bl-1001"));
    }

    /** Or a reader takes the second table for the first one's end. */
    @Test
    void each_table_has_a_heading() {
        assertThat(text("bl-1001"))
                .containsSubsequence(
                        "Which axle locks first\n---",
                        "Condition",
                        "Vacuum without the pump\n---",
                        "Application",
                        "Adhesion utilised, by braking rate\n---",
                        "Braking  Front");
    }

    /** The reservoir gives eight at 9.3 kPa: nine are the workshop's own wish, eight are the rule. */
    @Test
    void a_vacuum_that_lasts_for_fewer_applications_than_the_rule_stops_the_order() {
        assertThat(BrakingTrade.reserve(reserve(FOR_EIGHT, 9, "1")))
                .extracting(Finding::kind)
                .containsExactly(BrakingFinding.VACUUM_RESERVE_SHORT);
        assertThat(BrakingTrade.reserve(reserve("40", 8, "1.4")))
                .singleElement()
                .satisfies(found -> {
                    assertThat(found.kind()).isEqualTo(BrakingFinding.VACUUM_BELOW_RULE);
                    assertThat(found.stops()).isTrue();
                });
    }

    @Test
    void what_the_brakes_alone_cannot_do_stops_and_what_less_recuperation_puts_right_is_checked() {
        assertThat(BrakingFinding.values())
                .filteredOn(kind -> kind.severity() == Severity.STOP)
                .containsExactly(
                        BrakingFinding.REAR_AXLE_LOCKS_FIRST,
                        BrakingFinding.ADHESION_NOT_USED,
                        BrakingFinding.VACUUM_BELOW_RULE);
    }

    @Test
    void a_vehicle_of_another_mass_whose_brakes_nobody_knows_is_checked() throws IOException {
        assertThat(judgedWithout("brakes").findings().all())
                .filteredOn(found -> found.kind() == BrakingFinding.BRAKES_NOT_JUDGED)
                .singleElement()
                .satisfies(found -> {
                    assertThat(found.severity()).isEqualTo(Severity.CHECK);
                    assertThat(found.says())
                            .startsWith("The conversion changes the mass by ")
                            .contains("'brakes' in driving.json is missing for this order");
                });
        assertThat(BrakingTrade.judge(Demo.kit("bl-1001")).findings().all())
                .extracting(Finding::kind)
                .doesNotContain(BrakingFinding.BRAKES_NOT_JUDGED, KitFinding.NOT_JUDGED);
    }

    /** The demo's first order, of which driving.json says nothing under that key. */
    private static BrakingTrade.Judged judgedWithout(String key) throws IOException {
        Path folder = Files.createTempDirectory("braking");
        try (Stream<Path> all = Files.walk(Path.of("catalog"))) {
            for (Path each : all.toList()) {
                Files.copy(each, folder.resolve(Path.of("catalog").relativize(each)), REPLACE_EXISTING);
            }
        }
        Path driving = folder.resolve("families/pannier-van/driving.json");
        Files.writeString(driving, Files.readString(driving).replaceFirst("(?s) \"" + key + "\": \\[.*?\n \\],\n", ""));
        return BrakingTrade.judge(Demo.kit(folder, "bl-1001"));
    }

    @Test
    void the_centre_of_gravity_rises_with_what_goes_aboard() {
        List<AxleBalance> balances = BrakingTrade.judge(Demo.kit("bl-2001")).balances();
        assertThat(balances).extracting(AxleBalance::heightOverBase).isSorted();
        // Unladen and laden: 1243 kg at 0.5570 m, with 75 and 75 kg at 0.88 m and 280 kg at 0.92 m.
        AxleBalance empty = balances.get(0);
        double laden =
                (empty.massKg() * empty.heightOverBase() * 2310 + 150 * 880 + 280 * 920) / (empty.massKg() + 430);
        assertThat(balances.get(3).heightOverBase()).isCloseTo(laden / 2310, within(1e-9));
    }

    @Test
    void a_family_that_says_nothing_about_brakes_is_not_judged_and_gets_no_sheet() {
        OrderSketch order = new OrderSketch(new CatalogueSketch().draw());
        TradeResult result = worked(new KitInWork(order.plan(), order.bill(), LocalDate.of(2026, 3, 2)));
        assertThat(result.findings().all()).extracting(Finding::kind).containsOnly(KitFinding.NOT_JUDGED);
        assertThat(result.sheets()).isEmpty();
    }

    @Test
    void cautions_stand_on_the_sheet() {
        assertThat(text("bl-2001").replaceAll("[\\s|]+", " "))
                .contains("only people licensed for brakes may change, adjust or approve them");
    }
}
