package boltlore.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption.Predefined;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class ArchitectureTest {

    private static final String ROOT = "boltlore";
    private static final JavaClasses CODE = new ClassFileImporter()
            .withImportOption(Predefined.DO_NOT_INCLUDE_TESTS)
            .importPackages(ROOT);
    private static final HouseRules RULES = new HouseRules(ROOT);

    private static Set<String> found() {
        return CODE.stream()
                .map(JavaClass::getPackageName)
                .filter(name -> name.startsWith(ROOT + "."))
                .map(name -> name.split("\\.", -1)[1])
                .collect(Collectors.toCollection(TreeSet::new));
    }

    /** Every room that has classes, and every room that should have some: over an empty one the rule fails. */
    static Set<String> roomsToCheck() {
        Set<String> rooms = new TreeSet<>(House.rooms());
        rooms.removeAll(House.NOT_BUILT_YET);
        rooms.addAll(found());
        return rooms;
    }

    static Set<String> libraries() {
        return new TreeSet<>(House.LIBRARIES.keySet());
    }

    @ParameterizedTest
    @MethodSource("roomsToCheck")
    void a_room_uses_only_what_stands_below_it(String room) {
        RULES.usesOnlyWhatStandsBelow(room).check(CODE);
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

    @Test
    void rooms_do_not_use_each_other_in_a_circle() {
        RULES.hasNoCircle().check(CODE);
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
    void every_package_is_on_the_plan() {
        assertThat(House.rooms()).containsAll(House.NOT_BUILT_YET).containsAll(found());

        Set<String> built = new TreeSet<>(House.NOT_BUILT_YET);
        built.retainAll(found());
        if (!built.isEmpty()) {
            System.out.println("Built by now, so take them off House.NOT_BUILT_YET: " + built);
        }
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
