package boltlore.trades.weighing;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.catalogue.Aboard.Who;
import boltlore.demo.Demo;
import boltlore.report.Approved;
import boltlore.report.Cell;
import boltlore.report.Column;
import boltlore.report.Page;
import boltlore.report.Report;
import boltlore.report.Row;
import boltlore.report.Table;
import boltlore.report.text.TextWriter;
import java.math.BigDecimal;
import java.util.Comparator;
import java.util.List;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class WeightStatementTest {

    private static final int WIDE = 200;

    private static Report demo(String order) {
        return AxleLoadsTrade.report(Demo.kit(order));
    }

    /** What was found of that kind, in that language. */
    private static List<String> says(WeighedKit kit, WeighingFinding kind, String language) {
        return kit.weighing().findings().all().stream()
                .filter(found -> found.kind() == kind)
                .map(found -> found.says(language))
                .toList();
    }

    @Test
    void a_demo_order_reads_as_a_person_has_approved_it() {
        Approved.check("trades/weighing/bl-2001", new TextWriter(WIDE).text(demo("bl-2001")));
    }

    @Test
    void no_two_columns_of_the_axle_loads_are_called_the_same() {
        Table loads = demo("bl-1001").page("Weights").tables().findFirst().orElseThrow();
        assertThat(loads.columns())
                .extracting(Column::heading)
                .contains("Margin, front", "Margin, rear", "Margin, whole")
                .doesNotHaveDuplicates();
    }

    @Test
    void cautions_stand_on_the_first_page_and_at_the_weighbridge() {
        assertThat(new TextWriter(WIDE).text(demo("bl-1001")).replaceAll("[\\s|]+", " "))
                .contains("weighed axle by axle on a verified weighbridge")
                .contains("set the vehicle on axle stands")
                .contains("registration are for your local authority");
    }

    @Test
    void without_axle_loads_there_is_one_page_that_says_what_is_missing() {
        WeighedKit kit = new WeighedKit().donor(null).added("BOX", "20", 100, null);
        Report sheet = AxleLoadsTrade.report(kit.inWork());
        assertThat(sheet.pages()).extracting(Page::name).containsExactly("Weights");
        assertThat(new TextWriter(WIDE).text(sheet)).contains("Axle loads: 'donor' in family.json is missing");
    }

    @Test
    void every_part_of_the_kit_is_data_the_heaviest_first() {
        Table parts = demo("bl-2001").data().get(0);
        assertThat(masses(parts))
                .hasSize(Demo.bill("bl-2001").items().size())
                .isSortedAccordingTo(Comparator.reverseOrder());
    }

    @Test
    void the_page_lists_the_heaviest_and_all_else_in_one_row_that_make_up_the_kit() {
        Report statement = demo("bl-2001");
        Table heaviest = statement
                .page("Weights")
                .tables()
                .filter(table -> table.name().equals("heaviest"))
                .findFirst()
                .orElseThrow();
        List<BigDecimal> all = masses(statement.data().get(0));
        assertThat(masses(heaviest)).hasSize(17).startsWith(all.subList(0, 16).toArray(BigDecimal[]::new));
        assertThat(sum(masses(heaviest))).isEqualByComparingTo(sum(all));
    }

    private static List<BigDecimal> masses(Table table) {
        return table.rows().stream()
                .filter(Row::isPlain)
                .map(row -> ((Cell.Figure) row.cells().get(table.column("mass"))).value())
                .toList();
    }

    private static BigDecimal sum(List<BigDecimal> masses) {
        return masses.stream().reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    @Nested
    class Words {

        private WeighedKit heavy() {
            return new WeighedKit()
                    .added("BOX-A", "400", 2400, 300)
                    .added("BOX-B", "100", 1200, 300)
                    .added("BOX-C", "1", 0, 300)
                    .aboard(Who.DRIVER, "75", 1200)
                    .aboard(Who.LUGGAGE, "50", 2400);
        }

        @Test
        void a_limit_that_is_exceeded_is_told_with_kilograms_and_what_weighs_most_there() {
            assertThat(says(heavy(), WeighingFinding.WEIGHT_ABOVE_LIMIT, "en"))
                    .containsExactly(
                            "Converted, fully laden: the rear axle carries 1027.5 kg, 27.5 kg more than its limit"
                                    + " of 1000 kg. Of the kit, most comes from Part BOX-A (BOX-A) 400 kg; Part BOX-B (BOX-B) 50"
                                    + " kg; Part BOX-C (BOX-C) 0 kg.");
        }

        @Test
        void it_is_told_in_german_and_french_with_a_decimal_comma() {
            assertThat(says(heavy(), WeighingFinding.WEIGHT_ABOVE_LIMIT, "de"))
                    .singleElement()
                    .asString()
                    .startsWith("Umgebaut, voll beladen: die Hinterachse trägt 1027,5 kg, 27,5 kg mehr");
            assertThat(says(heavy(), WeighingFinding.WEIGHT_ABOVE_LIMIT, "fr"))
                    .singleElement()
                    .asString()
                    .startsWith("Transformé, en pleine charge\u00A0: l'essieu arrière porte 1027,5 kg");
        }

        @Test
        void without_the_luggage_no_limit_is_exceeded_and_the_least_margin_is_told() {
            WeighedKit light = new WeighedKit().added("BOX-A", "400", 2400, 300);
            assertThat(says(light, WeighingFinding.WEIGHT_ABOVE_LIMIT, "en")).isEmpty();
            assertThat(facts(light))
                    .contains("Smallest margin 110.0 kg", "Smallest margin at Rear axle: Converted, unladen");
        }

        @Test
        void a_move_forward_is_a_change_below_zero() {
            assertThat(facts(new WeighedKit().added("BOX-A", "100", 0, 300)))
                    .contains("Centre of gravity behind the front axle (mm) 1120 1023 -97");
        }

        @Test
        void a_share_in_front_below_what_the_workshop_wants_asks_for_a_check_of_steering_and_brakes() {
            WeighedKit rear = new WeighedKit().added("BOX-A", "400", 2400, 300);
            assertThat(says(rear, WeighingFinding.FRONT_SHARE_LOW, "en"))
                    .containsExactly(
                            "38.6 % of the mass is on the front axle, unladen, less than the 40 % that the workshop"
                                    + " sets as the least: move mass forward, or have steering and brakes checked.");
            assertThat(says(rear, WeighingFinding.FRONT_SHARE_LOW, "fr"))
                    .singleElement()
                    .asString()
                    .contains("moins que les 40\u00A0% que l'atelier fixe comme minimum");
        }

        @Test
        void a_lighter_vehicle_changes_by_less_than_nothing() {
            assertThat(facts(new WeighedKit().removed("engine", "105", 0, null)))
                    .contains("Mass, unladen (kg) 1050 945 -105")
                    .contains("Change of mass -10.0 %");
        }

        private static String facts(WeighedKit kit) {
            return new TextWriter(WIDE)
                    .text(AxleLoadsTrade.report(kit.inWork()))
                    .replaceAll("[\\s|]+", " ");
        }
    }
}
