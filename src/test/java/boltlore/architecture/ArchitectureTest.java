package boltlore.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption.Predefined;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.UnaryOperator;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class ArchitectureTest {

    private static final String ROOT = "boltlore";
    private static final int PLAN_INDENT = 12;

    /** What the rule compiler makes lies in packages of its own, below the one that holds the rules. */
    private static final Pattern COMPILED_RULES = Pattern.compile(".*/resolution/rules/P[0-9A-F]{2}/.*");

    private static final JavaClasses CODE = new ClassFileImporter()
            .withImportOption(Predefined.DO_NOT_INCLUDE_TESTS)
            .withImportOption(location -> !location.matches(COMPILED_RULES))
            .importPackages(ROOT);
    private static final HouseRules RULES = new HouseRules(ROOT);
    private static final Plan BUILT = Plan.of(CODE, ROOT);
    private static final Plan PLAN = Plan.parse(House.PLAN);

    /** What a file should be, left in 'target/architecture' to be copied. */
    private static Path renewed(Path file, UnaryOperator<String> mended) throws IOException {
        Path folder = Files.createDirectories(Path.of("target", "architecture"));
        return Files.writeString(folder.resolve(file.getFileName()), mended.apply(Files.readString(file)));
    }

    static Set<String> libraries() {
        return new TreeSet<>(House.LIBRARIES.keySet());
    }

    @Test
    void every_package_is_on_the_plan_and_uses_what_the_plan_says() throws IOException {
        Path renewed = renewed(
                Path.of("src/test/java/boltlore/architecture/House.java"),
                text -> text.replace(
                        House.PLAN.indent(PLAN_INDENT),
                        PLAN.renewed(BUILT).written().indent(PLAN_INDENT)));

        assertThat(PLAN.differences(BUILT))
                .as(
                        "if the code is right, see %s for the plan as it should be; it reads now:%n%s",
                        renewed, PLAN.renewed(BUILT).written())
                .isEmpty();
    }

    @ParameterizedTest
    @MethodSource("libraries")
    void a_library_is_known_to_one_package(String library) {
        RULES.livesInOneRoom(library, House.LIBRARIES.get(library)).check(CODE);
    }

    @Test
    void no_library_is_used_beside_those_on_the_plan() {
        RULES.usesNoOtherLibrary().check(CODE);
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 9})
    void packages_do_not_use_each_other_in_a_circle_at_any_depth(int depth) {
        RULES.hasNoCircle(depth).check(CODE);
    }

    @Test
    void the_picture_in_the_guide_shows_the_house_as_it_is() throws IOException {
        Path guide = Path.of("DEVELOPERS.md");
        String picture = Picture.of(BUILT);
        Path renewed = renewed(guide, text -> Picture.into(text, picture));

        assertThat(guide)
                .as("the picture is stale: cp %s %s", renewed, guide)
                .content()
                .contains(picture);
    }

    @Test
    void no_name_says_nothing() {
        RULES.saysWhatItIs().check(CODE);
    }

    @Test
    void the_core_is_told_the_date() {
        RULES.isToldTheDate().check(CODE);
    }

    @Test
    void nothing_is_written_in_the_machines_locale() {
        RULES.writesInNoLocaleOfTheMachine().check(CODE);
    }

    @Test
    @DisplayName("every package says what it is for and is null-marked")
    void every_package_says_what_it_is_for() throws IOException {
        try (Stream<Path> all = Files.walk(Path.of("src/main/java"))) {
            List<Path> folders = all.filter(path -> path.toString().endsWith(".java"))
                    .map(Path::getParent)
                    .distinct()
                    .toList();

            assertThat(folders)
                    .isNotEmpty()
                    .allSatisfy(folder -> assertThat(folder.resolve("package-info.java"))
                            .content()
                            .startsWith("/**")
                            .contains("@NullMarked"));
        }
    }
}
