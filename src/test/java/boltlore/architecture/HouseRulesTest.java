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

    @Nested
    @DisplayName("catch")
    class Catch {

        @Test
        void a_use_of_something_above() {
            assertThat(faults("upward", rules -> rules.usesOnlyWhatStandsBelow("catalogue")))
                    .anyMatch(fault -> fault.contains("catalogue.Shelf") && fault.contains("bill.Bill"));
        }

        @Test
        void a_use_of_a_neighbour() {
            assertThat(faults("sideways", rules -> rules.usesOnlyWhatStandsBelow("picking")))
                    .anyMatch(fault -> fault.contains("pricing.Price"));
        }

        @Test
        void a_circle() {
            assertThat(faults("circle", HouseRules::hasNoCircle)).anyMatch(fault -> fault.contains("Cycle detected"));
        }

        @Test
        void a_circle_inside_one_room() {
            assertThat(faults("inner", HouseRules::hasNoCircle)).anyMatch(fault -> fault.contains("Cycle detected"));
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

        @Test
        void an_import_that_found_no_class() {
            assertThat(faults("nowhere", rules -> rules.usesOnlyWhatStandsBelow("bill")))
                    .anyMatch(fault -> fault.contains("failed to check any classes"));
        }
    }

    @Nested
    @DisplayName("let a sound house pass:")
    class Pass {

        @Test
        void uses_that_go_down() {
            for (String room : List.of("catalogue", "bill", "cli")) {
                assertThat(faults("sound", rules -> rules.usesOnlyWhatStandsBelow(room)))
                        .isEmpty();
            }
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
            assertThat(faults("sound", HouseRules::hasNoCircle)).isEmpty();
            assertThat(faults("sound", HouseRules::saysWhatItIs)).isEmpty();
        }
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
