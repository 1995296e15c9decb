package boltlore.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.lang.ArchRule;
import java.util.List;
import java.util.function.Function;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

@DisplayName("The rules of the house")
class HouseRulesTest {

    private static final String SOUND = "catalogue:\nbill: catalogue\ncli: bill catalogue";

    @Nested
    @DisplayName("catch")
    class Catch {

        @Test
        void a_use_that_is_no_right() {
            assertThat(differences("sideways", "pricing:\npicking:"))
                    .containsExactly("picking uses pricing, which is no right of it");
        }

        @Test
        void a_right_that_is_not_used() {
            assertThat(differences("sound", "catalogue:\nbill: catalogue\ncli: bill catalogue\nsheets: bill"))
                    .containsExactly("sheets is on the plan and holds no class");
            assertThat(differences("sideways", "picking: pricing\npricing: picking"))
                    .contains("pricing has a right to picking and does not use it");
        }

        @Test
        void a_right_to_something_above() {
            assertThat(differences("upward", "catalogue: bill\nbill:"))
                    .containsExactly("catalogue stands on bill, which stands above it");
        }

        @Test
        void a_package_that_is_not_on_the_plan() {
            assertThat(differences("sound", "catalogue:\ncli: bill catalogue")).contains("bill is not on the plan");
            assertThat(differences("ring", "bill:")).contains("bill.rows is not on the plan");
        }

        @Test
        void a_circle() {
            assertThat(faults("circle", rules -> rules.hasNoCircle(1)))
                    .anyMatch(fault -> fault.contains("Cycle detected"));
        }

        @Test
        void a_circle_inside_a_package_that_nothing_else_shows() {
            assertThat(faults("ring", rules -> rules.hasNoCircle(1))).isEmpty();
            assertThat(faults("ring", rules -> rules.hasNoCircle(2)))
                    .anyMatch(fault -> fault.contains("Cycle detected"));
        }

        @Test
        void a_circle_inside_one_room() {
            assertThat(faults("inner", rules -> rules.hasNoCircle(2)))
                    .anyMatch(fault -> fault.contains("Cycle detected"));
        }

        @Test
        void a_library_outside_its_home() {
            assertThat(faults("stray", rules -> rules.livesInOneRoom("picocli", "cli")))
                    .anyMatch(fault -> fault.contains("bill.Bill"));
        }

        @Test
        void a_library_that_is_not_on_the_plan() {
            assertThat(faults("stray", HouseRules::usesNoOtherLibrary))
                    .anyMatch(fault -> fault.contains("org.slf4j.Logger"))
                    .noneMatch(fault -> fault.contains("picocli"));
        }

        @Test
        void a_clock_in_the_core() {
            assertThat(faults("clock", HouseRules::isToldTheDate)).anyMatch(fault -> fault.contains("LocalDate.now"));
        }

        @Test
        void a_number_in_the_digits_of_the_machine() {
            assertThat(faults("locale", HouseRules::writesInNoLocaleOfTheMachine))
                    .anyMatch(fault -> fault.contains("Bill.number") && fault.contains("formatted"))
                    .noneMatch(fault -> fault.contains("Bill.rootNumber"));
        }

        @Test
        void names_that_say_nothing() {
            assertThat(faults("vague", HouseRules::saysWhatItIs))
                    .anyMatch(fault -> fault.contains("util.Rounding"))
                    .anyMatch(fault -> fault.contains("ShelfManager"));
        }
    }

    @Nested
    @DisplayName("let a sound house pass:")
    class Pass {

        @Test
        void uses_that_go_down() {
            assertThat(differences("sound", SOUND)).isEmpty();
        }

        @Test
        void a_library_in_its_home() {
            assertThat(faults("sound", rules -> rules.livesInOneRoom("picocli", "cli")))
                    .isEmpty();
            assertThat(faults("sound", HouseRules::usesNoOtherLibrary)).isEmpty();
        }

        @Test
        void a_clock_at_the_edge_and_a_date_in_the_core() {
            assertThat(faults("sound", HouseRules::isToldTheDate)).isEmpty();
        }

        @Test
        void no_circle_and_plain_names() {
            assertThat(faults("sound", rules -> rules.hasNoCircle(9))).isEmpty();
            assertThat(faults("sound", HouseRules::saysWhatItIs)).isEmpty();
        }
    }

    @Nested
    @DisplayName("renew a plan:")
    class Renew {

        @Test
        void a_new_package_comes_right_above_what_it_uses_and_the_others_stay_where_they_are() {
            Plan renewed =
                    Plan.parse("catalogue: bill\nsheets: bill\ncli: bill").renewed(built("sound"));

            assertThat(renewed.written()).isEqualTo(SOUND + "\n");
            assertThat(Plan.parse(renewed.written())).isEqualTo(renewed);
        }

        @Test
        void a_long_line_goes_on_below() {
            String written = Plan.parse("cli: " + "some.long.package.with.a.number.1"
                            + " some.long.package.with.a.number.2 some.long.package.with.a.number.3"
                            + " some.long.package.with.a.number.4")
                    .written();

            assertThat(written.lines()).hasSize(2).allMatch(line -> line.length() <= 108);
            assertThat(Plan.parse(written.stripTrailing()).written()).isEqualTo(written);
        }
    }

    private static Plan built(String sample) {
        String root = "boltlore.architecture.samples." + sample;
        return Plan.of(new ClassFileImporter().importPackages(root), root);
    }

    private static List<String> differences(String sample, String plan) {
        return Plan.parse(plan).differences(built(sample));
    }

    private static List<String> faults(String sample, Function<HouseRules, ArchRule> rule) {
        String root = "boltlore.architecture.samples." + sample;
        try {
            return rule.apply(new HouseRules(root))
                    .evaluate(new ClassFileImporter().importPackages(root))
                    .getFailureReport()
                    .getDetails();
        } catch (AssertionError nothingChecked) {
            return List.of(String.valueOf(nothingChecked.getMessage()));
        }
    }
}
