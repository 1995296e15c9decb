package boltlore.trades.weighing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boltlore.demo.Demo;
import boltlore.faults.Outcome;
import boltlore.findings.Finding;
import boltlore.report.Column;
import boltlore.report.Page;
import boltlore.report.Table;
import boltlore.report.text.TextWriter;
import boltlore.trades.KitInWork;
import boltlore.trades.TradeOption.Given;
import boltlore.trades.TradeResult;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("The height of the centre of gravity by lifting an axle")
class LiftedAxleTest {

    private static LiftedAxle lifted(boolean front, int lift, int radius, String level, String other, String standing) {
        return new LiftedAxle(
                front,
                lift,
                radius,
                new AxleLoads(new BigDecimal(level), new BigDecimal(other)),
                new BigDecimal(standing));
    }

    /**
     * Data of a published exercise (askfilo.com, 'determine the centre of gravity of a car'): 620 kg in front and 430 kg at the
     * rear, 680 kg at the rear with the front axle raised by 1.5 m, wheelbase 2550 mm, radius 353 mm. The height is worked out
     * by another published procedure, that of a body builder's guide in nine steps (vwn-aufbaurichtlinien.de, 3.5): distances
     * x1, x2 of the centre of gravity from the axle that stays down level and lifted, and angles between them.
     */
    @Test
    void comes_out_of_a_published_exercise_as_by_another_published_procedure() {
        double wheelbase = 2550;
        double lift = 1500;
        double x1 = 620.0 / 1050 * wheelbase;
        double lifted = Math.sqrt(wheelbase * wheelbase - lift * lift);
        double x2 = (1050.0 - 680) / 1050 * lifted;
        double u = lift * x2 / lifted;
        double y = x1 - Math.sqrt(u * u + x2 * x2);
        double tan = lifted / lift;
        double expected = 353 + tan * y;
        assertThat(lifted(true, 1500, 353, "620", "430", "680").heightMm(2550))
                .hasValueSatisfying(height -> assertThat(height.doubleValue())
                        .isCloseTo(expected, within(0.001))
                        .isCloseTo(1187.7, within(0.1)));
    }

    private static Outcome<Given> given(String... texts) {
        return Given.read(Map.of(LiftedAxle.OPTION, List.of(texts)));
    }

    private static TradeResult weighed(KitInWork kit, String... texts) {
        Given read = ((Outcome.Sound<Given>) given(texts)).value();
        return ((Outcome.Sound<List<TradeResult>>) new AxleLoadsTrade().work(List.of(kit), read))
                .value()
                .get(0);
    }

    private static List<String> kinds(TradeResult result) {
        return result.findings().all().stream()
                .map(Finding::kind)
                .map(Object::toString)
                .toList();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "front",
                "middle 600 310 870 1005 1060",
                "front 600 310 870 1005",
                "front 600 310 870 1005 1060 1",
                "front 600 310 870 -1005 1060",
                "front 600 310 870 1005 1e3",
                "front 49 310 870 1005 1060",
                "front 600 99 870 1005 1060",
                "front 600 310 870 1005 1875"
            })
    void is_refused_where_the_figures_are_none(String text) {
        assertThat(given(text).faults()).hasSize(1);
        assertThat(given("front 600 310 870 1005 1060").faults()).isEmpty();
    }

    @Test
    void of_a_demo_vehicle_stands_beside_the_computed_one() {
        TradeResult result = weighed(
                Demo.kit("bl-1001"),
                "front 600 310 916 1009 1081",
                "rear 600 310 916 1009 988",
                "front 800 310 916 1009 1108");
        assertThat(kinds(result)).doesNotContain("STANDING_AXLE_GAINS_NOTHING", "LIFT_NOT_PLAUSIBLE", "FEW_LIFTS");
        assertThat(kinds(result)).doesNotContain("LEVEL_LOAD_DIFFERS", "HEIGHT_NOT_PLAUSIBLE");
        assertThat(new TextWriter(200)
                        .text(result.sheets().get(0).report().get())
                        .replaceAll("\\s+", " "))
                .contains("Height, mean", "Height, computed 631 mm");
    }

    @Test
    void is_looked_at_where_the_standing_axle_carries_no_more() {
        assertThat(kinds(weighed(Demo.kit("bl-1001"), "front 600 310 893 1016 1016")))
                .contains("STANDING_AXLE_GAINS_NOTHING", "FEW_LIFTS");
        assertThat(kinds(weighed(Demo.kit("bl-1001"), "front 600 310 893 1016 1016.1")))
                .doesNotContain("STANDING_AXLE_GAINS_NOTHING");
    }

    @Test
    void is_looked_at_where_the_lift_is_too_small_or_as_long_as_the_car() {
        assertThat(kinds(weighed(Demo.kit("bl-1001"), "front 244 310 893 1016 1050")))
                .contains("LIFT_NOT_PLAUSIBLE");
        assertThat(kinds(weighed(Demo.kit("bl-1001"), "front 245 310 893 1016 1050")))
                .doesNotContain("LIFT_NOT_PLAUSIBLE");
        assertThat(kinds(weighed(Demo.kit("bl-1001"), "front 2450 310 893 1016 1050")))
                .contains("LIFT_NOT_PLAUSIBLE");
    }

    @Test
    void is_looked_at_where_another_vehicle_was_weighed_than_was_computed() {
        assertThat(kinds(weighed(Demo.kit("bl-1001"), "front 600 310 870 1016 1088")))
                .contains("LEVEL_LOAD_DIFFERS");
    }

    @Test
    void is_looked_at_where_it_is_higher_than_the_wheels_are_apart() {
        assertThat(kinds(weighed(Demo.kit("bl-1001"), "front 600 310 893 1016 1400")))
                .contains("HEIGHT_NOT_PLAUSIBLE");
    }

    @Test
    void has_a_blank_worksheet_where_nothing_was_measured() {
        Page sheet = AxleLoadsTrade.report(Demo.kit("bl-1001")).page("Weighbridge");
        Table lines = sheet.tables()
                .filter(table -> table.name().equals("lifted"))
                .findFirst()
                .orElseThrow();
        assertThat(lines.rows()).hasSize(2 * 2 * 3);
        assertThat(lines.columns()).extracting(Column::key).endsWith("angle", "gain", "height");
        assertThat(new TextWriter(200).text(AxleLoadsTrade.report(Demo.kit("bl-1001"))))
                .contains("Height of the centre of gravity, by lifting an axle", "ISO 10392:2011");
    }

    @Test
    void says_the_wheels_of_which_axle_are_chocked() {
        assertThat(new TextWriter(200)
                        .text(AxleLoadsTrade.report(Demo.kit("bl-1001")))
                        .replaceAll("[\\s|]+", " "))
                .contains("the rear ones while the front axle is lifted, the front ones while the rear axle is");
    }

    @Test
    void stands_at_the_angle_whose_sine_is_lift_by_wheelbase() {
        assertThat(lifted(true, 1200, 310, "870", "1005", "1060").angleDegrees(2400))
                .hasValueSatisfying(angle -> assertThat(angle.doubleValue()).isCloseTo(30, within(1e-9)));
        assertThat(lifted(true, 2400, 310, "870", "1005", "1060").angleDegrees(2400))
                .isEmpty();
    }
}
