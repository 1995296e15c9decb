package boltlore.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import boltlore.trades.bill.sheets.ContentsReport;
import boltlore.trades.testing.TestReport;
import java.io.IOException;
import java.io.Reader;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.text.MessageFormat;
import java.time.LocalDate;
import java.util.Locale;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.parallel.ResourceLock;
import org.junit.jupiter.api.parallel.Resources;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class PhrasesTest {

    private static final Path RESOURCES = Path.of("src/main/resources");

    private static Phrases contents(String language) {
        return Phrases.of(ContentsReport.class, "contents", language);
    }

    private static Phrases tests(String language) {
        return Phrases.of(TestReport.class, "test-sheet", language);
    }

    @Nested
    class Words {

        @Test
        void are_english_where_a_language_has_none() {
            assertThat(contents("nl").say("title")).isEqualTo("Contents of the kit");
        }

        /** The JDK's own way would be the language of the computer. */
        @Test
        @ResourceLock(Resources.LOCALE)
        void are_english_on_a_french_computer_too() {
            Locale before = Locale.getDefault();
            Locale.setDefault(Locale.FRENCH);
            try {
                assertThat(contents("en").say("title")).isEqualTo("Contents of the kit");
            } finally {
                Locale.setDefault(before);
            }
        }

        @Test
        void are_looked_for_under_plain_language_codes_only() {
            assertThat(contents("../bill").say("title")).isEqualTo("Contents of the kit");
        }

        @Test
        void that_nobody_has_written_are_an_error_and_no_empty_heading() {
            assertThatThrownBy(() -> contents("de").say("no-such-words")).hasMessageContaining("no-such-words");
        }

        @Test
        void take_an_argument_as_it_is_even_where_it_looks_like_a_place_for_another() {
            assertThat(tests("en").say("flaw.other_unit", "{1}", "it's V"))
                    .isEqualTo("the unit is {1}, it should be it's V");
        }

        @Test
        void keep_their_apostrophes_with_and_without_arguments() {
            assertThat(tests("en").say("circuit.meter")).isEqualTo("V1, V1'");
            assertThat(tests("en").say("flaw.not_a_day", "soon", "")).startsWith("'soon' is not a date");
            assertThat(tests("fr").say("flaw.not_a_day", "demain", ""))
                    .startsWith("«\u00a0demain\u00a0» n'est pas une date\u00a0: ");
        }
    }

    @Nested
    class Units {

        @ParameterizedTest
        @CsvSource({"en, 1, pc", "en, 4, pcs", "de, 4, Stück", "fr, 1, pièce", "fr, 4, pièces"})
        void are_said_in_the_number_of_the_quantity(String language, BigDecimal quantity, String unit) {
            assertThat(contents(language).unit("each", quantity)).isEqualTo(unit);
        }

        @Test
        void that_have_no_words_stand_as_they_are() {
            assertThat(contents("de").unit("roll", BigDecimal.ONE)).isEqualTo("roll");
        }
    }

    @Nested
    class Numbers {

        @ParameterizedTest
        @CsvSource(
                delimiter = ';',
                value = {"en; 64.7", "de; 64,7", "fr; 64,7", "nl; 64.7"})
        void have_the_decimal_sign_of_the_words_language(String language, String said) {
            assertThat(contents(language).number(new BigDecimal("64.650"), 1)).isEqualTo(said);
            assertThat(contents(language).number(new BigDecimal("64.70"))).isEqualTo(said);
        }

        @Test
        void have_no_thousands_apart_and_no_exponent() {
            assertThat(contents("de").number(new BigDecimal("1.5E+4"))).isEqualTo("15000");
        }

        @Test
        void inside_a_text_get_the_sign_and_full_stops_stay() {
            assertThat(contents("de").figures("500 Ω/V × 403.2 V. 12.")).isEqualTo("500 Ω/V × 403,2 V. 12.");
        }
    }

    /** Sentences of findings are written otherwise and have a test of their own. */
    static Stream<Path> english() throws IOException {
        try (Stream<Path> files = Files.walk(RESOURCES)) {
            return files
                    .filter(file -> file.toString().endsWith(".properties")
                            && !file.toString().contains("_")
                            && !file.endsWith("findings.properties"))
                    .sorted()
                    .toList()
                    .stream();
        }
    }

    @Nested
    class Bundles {

        /** But for units, which may go without their number. */
        @ParameterizedTest
        @MethodSource("boltlore.report.PhrasesTest#english")
        void say_the_same_with_the_same_arguments_in_every_language_of_the_demo(Path english) throws IOException {
            Properties words = read(english);
            for (String language : new String[] {"de", "fr"}) {
                Properties translated = read(english.resolveSibling(
                        english.getFileName().toString().replace(".properties", "_" + language + ".properties")));
                assertThat(translated.stringPropertyNames()).isEqualTo(words.stringPropertyNames());
                assertThat(words.stringPropertyNames())
                        .filteredOn(name -> !name.startsWith("unit."))
                        .allSatisfy(name -> assertThat(arguments(translated.getProperty(name)))
                                .as(language + " " + name)
                                .isEqualTo(arguments(words.getProperty(name))));
            }
        }

        @ParameterizedTest
        @MethodSource("boltlore.report.PhrasesTest#english")
        void write_every_apostrophe_twice(Path english) throws IOException {
            String base = english.getFileName().toString().replace(".properties", "");
            try (Stream<Path> files = Files.list(english.resolveSibling("."))) {
                for (Path file : files.filter(
                                each -> each.getFileName().toString().startsWith(base))
                        .toList()) {
                    Properties words = read(file);
                    assertThat(words).allSatisfy((name, says) -> {
                        assertThat(says.toString().replace("''", ""))
                                .as(file + " " + name)
                                .doesNotContain("'");
                        assertThat(new MessageFormat(says.toString(), Locale.ROOT))
                                .as(file + " " + name)
                                .isNotNull();
                    });
                }
            }
        }
    }

    /** The first of a month is 'premier' in French; common practice, no source. */
    @ParameterizedTest
    @CsvSource({
        "en, 2026-04-08, 8 April 2026",
        "de, 2026-04-01, 1. April 2026",
        "fr, 2026-04-01, 1er avril 2026",
        "fr, 2026-10-07, 7 octobre 2026"
    })
    void a_day_within_a_sentence_reads_as_the_language_has_it(String language, LocalDate day, String says) {
        assertThat(Phrases.of(ContentsReport.class, "contents", language).day(day))
                .isEqualTo(says);
    }

    private static Set<String> arguments(String words) {
        return Pattern.compile("\\{(\\d)")
                .matcher(words)
                .results()
                .map(MatchResult::group)
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private static Properties read(Path file) throws IOException {
        Properties words = new Properties();
        try (Reader in = Files.newBufferedReader(file)) {
            words.load(in);
        }
        return words;
    }
}
