package boltlore.trades.testing;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.catalogue.Workshop;
import boltlore.demo.Demo;
import boltlore.report.Approved;
import boltlore.report.Page;
import boltlore.report.Report;
import boltlore.report.text.TextWriter;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("Test sheet, papers and report")
class TestSheetTest {

    private static final int WIDE = 200;
    private static final LocalDate TODAY = LocalDate.of(2026, 3, 31);

    /** The demo's plan without the catalogue's revision, which every edit of the catalogue changes. */
    private static TestPlan plan(String order) {
        TestPlan plan = TestPlanner.plan(Demo.catalogue(), Demo.bill(order));
        return new TestPlan(plan.bill(), "revision", plan.groups(), plan.labels(), plan.sections());
    }

    private static List<Report> books(String order) {
        TestPlan plan = plan(order);
        Workshop workshop = Demo.catalogue().workshop();
        return List.of(TestSheet.sheet(plan, workshop), TestSheet.papers(plan, workshop));
    }

    private static String text(Report report) {
        return new TextWriter(WIDE).text(report);
    }

    private static String words(String order) {
        return text(books(order).get(0)).replaceAll("[\\s|]+", " ");
    }

    @Test
    void a_test_sheet_reads_as_a_person_has_approved_it() {
        Approved.check("trades/testing/bl-2002", text(books("bl-2002").get(0)));
    }

    @ParameterizedTest
    @CsvSource({
        "bl-1001, Contactor box (HV-CB400): Ri =, Second-string contactor box (HV-CBR): Ri =",
        "bl-1011, Schützkasten (HV-CB400): Ri =, Schützkasten des zweiten Strangs (HV-CBR): Ri ="
    })
    void the_isolation_of_each_string_is_worked_out_on_a_line_of_its_own(String order, String first, String second) {
        assertThat(words(order)).containsSubsequence(first, second);
    }

    @Test
    void french_papers_read_as_a_person_has_approved_them() {
        Approved.check("trades/testing/bl-1012-papers", text(books("bl-1012").get(1)));
    }

    @Test
    void a_report_reads_as_a_person_has_approved_it() {
        List<Reading> readings = List.of(
                reading("bonding-current", "0.25", "A", "2026-03-30"),
                reading("bonding.charger", "0.12", "ohm", "2026-03-29"),
                reading("bonding.charger", "0.03", "ohm", "2026-03-30"),
                reading("bonding.converter", "0.1", "ohm", "2026-03-30"),
                reading("bonding.drive-unit", "0.05 ohm", "", "yesterday"),
                reading("isolation-link.junction-box.vb", "350", "V", "2026-03-30"),
                reading("brake-lamps.brake-switch", "off", "", "2026-03-30"),
                reading("refrigerant-vacuum.condenser", "3", "mbar", "2026-03-30"));
        Report report = TestReport.compose(
                Judge.judge(plan("bl-2002"), readings, TODAY), Demo.catalogue().workshop());
        Approved.check("trades/testing/bl-2002-report", text(report));
    }

    private static Reading reading(String box, String value, String unit, String on) {
        return new Reading(box, value, unit, "M-7", "R. Oakes", on, "record.csv", 2, "value");
    }

    @ParameterizedTest
    @ValueSource(strings = {"bl-1001", "bl-1011", "bl-1012", "bl-2002"})
    void each_group_of_tests_says_first_who_may_do_it(String order) {
        Report sheet = books(order).get(0);
        TestPlan plan = plan(order);
        assertThat(sheet.pages())
                .as("front page, and all groups, one after the other")
                .hasSize(1);
        String all = words(order);
        String language = plan.bill().order().language();
        assertThat(plan.groups())
                .allSatisfy(
                        group -> assertThat(all).contains(group.group().before().in(language)));
    }

    @ParameterizedTest
    @ValueSource(strings = {"bl-1001", "bl-1012", "bl-2002"})
    void a_caution_that_several_groups_share_stands_once_before_the_first_of_them(String order) {
        TestPlan plan = plan(order);
        String language = plan.bill().order().language();
        String sheet = words(order);
        Workshop workshop = Demo.catalogue().workshop();
        assertThat(plan.groups())
                .anySatisfy(group -> assertThat(group.group().cautions()).isNotEmpty());
        for (GroupPlan group : plan.groups()) {
            workshop.cautionsOf(group.group().cautions())
                    .forEach(caution -> assertThat(
                                    sheet.split(Pattern.quote(caution.says().in(language)), -1))
                            .as(caution.code())
                            .hasSize(2));
        }
    }

    @Test
    void the_isolation_page_gives_formula_limit_and_resistor_of_this_kit() {
        assertThat(words("bl-1001"))
                .contains("Ri = Ro × Vb × (1/V1' − 1/V1)")
                .contains("Measuring circuit: the pack with its two poles")
                .contains("within 20 %")
                .containsPattern("it must be at least [0-9.]+ kΩ \\([0-9]+ Ω/V × [0-9.]+ V\\)");
    }

    @Test
    void a_kit_without_air_conditioning_has_no_page_line_about_refrigerant() {
        assertThat(words("bl-1012")).doesNotContain("condens", "tirée au vide");
        assertThat(words("bl-1001")).contains("evacuated line");
    }

    @Test
    void pages_are_named_in_the_orders_language() {
        assertThat(books("bl-1011").get(0).pages()).extracting(Page::name).containsExactly("Auftrag");
        assertThat(words("bl-1011")).contains("Potentialausgleich", "Ladevorgang");
    }

    @Test
    void the_empty_record_has_each_box_of_the_sheet_once() {
        TestPlan plan = plan("bl-1001");
        String csv = new String(EmptyRecord.write(plan).get(0).content(), StandardCharsets.UTF_8);
        assertThat(csv.lines().skip(1)).hasSize((int) plan.boxes().count());
        assertThat(plan.boxes().map(Box::key)).doesNotHaveDuplicates().allMatch(key -> csv.contains("," + key + ",,"));
    }
}
