package boltlore.report;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.measure.Wording;
import boltlore.trades.picking.PickingTrade;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

@DisplayName("The words of a sheet in another language")
class WordsTest {

    private static final Words GERMAN = Words.of("de", PickingTrade.class);

    private static Stream<Path> files() throws IOException {
        try (Stream<Path> all = Files.walk(Path.of("src/main/resources/boltlore"))) {
            return all
                    .filter(file ->
                            file.endsWith("words.txt") && !file.toString().contains("bring"))
                    .sorted()
                    .toList()
                    .stream();
        }
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Measure out | Abmessen",
                "2.40 m | 2,40 m",
                "1,234.50 m | 1.234,50 m",
                "87 lines from bins, 12 from coating | 87 Positionen aus Fächern, 12 aus der Beschichtung",
                "Order BL-7 · Some Name · pick list | Auftrag BL-7 · Some Name · Kommissionierliste",
                "Order BL-7: Short | Auftrag BL-7: Fehlteile",
                "EUR 1,548.00 | EUR 1.548,00",
                "179.98 EUR) | 179,98 EUR)",
                "0.6 × (381.4 A) | 0,6 × (381,4 A)",
                "4,8 mm | 4,8 mm",
            })
    void a_text_is_said_whole_or_by_its_sentences_and_pieces(String english, String german) {
        assertThat(GERMAN.say(english)).isEqualTo(german);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Ordered-by",
                "measure out",
                "M8 x 1.25",
                "ISO 10.9",
                "Some Name; Another, third",
                "2.40 mx",
                "10.5",
                "-"
            })
    void what_nobody_has_translated_stays_as_it_is(String english) {
        assertThat(GERMAN.say(english)).isEqualTo(english);
    }

    @Test
    void french_keeps_a_blank_before_its_high_signs_at_which_no_line_ends() {
        assertThat(Words.of("fr", PickingTrade.class).say("Order BL-7: Short"))
                .isEqualTo("Commande BL-7\u00A0: Manquants");
    }

    @Test
    void english_and_a_language_without_words_leave_all_as_it_is() {
        assertThat(Words.of("en", PickingTrade.class).say("Measure out")).isEqualTo("Measure out");
        assertThat(Words.of("it", PickingTrade.class).say("Measure out")).isEqualTo("Measure out");
    }

    @Test
    void a_report_says_words_and_names_but_not_what_programs_go_by() {
        Wording name = new Wording(Map.of("en", "Cable", "de", "Kabel"));
        TableSpec<Wording> table = TableSpec.<Wording>named("part")
                .said("name", "Name", 20, each -> each)
                .column(Column.text("lot", "Count"), each -> Cell.of(each, "{0}, lot"))
                .column(Column.code("scan", "Scan"), each -> Cell.of("Short"))
                .whole("take", "Take", "each", each -> 3);
        Report report = Report.named("one", "Pick list")
                .in(GERMAN)
                .page(Page.named("Short").add(table.of(List.of(name))).signatures("Picked by"))
                .page(Page.named("Pick list").in("en").heading("Short").add(table.of(List.of(name))))
                .build();
        Page german = report.page("Short");
        assertThat(german.tab()).isEqualTo("Fehlteile");
        assertThat(german.print().count()).isEqualTo(new PrintSetup.PageCount("Seite ", " von "));
        Table said = german.tables().findFirst().orElseThrow();
        assertThat(said.name()).isEqualTo("part");
        assertThat(said.columns().get(3).headingWithUnit()).isEqualTo("Nehmen (Stück)");
        assertThat(said.rows().get(0).cells()).startsWith(Cell.of("Kabel"), Cell.of("Kabel, Charge"), Cell.of("Short"));
        assertThat(german.blocks()).contains(new Signatures(List.of("Kommissioniert von"), "Datum"));
        Page english = report.page("Pick list");
        assertThat(english.blocks()).contains(new Heading("Short", Look.HEADING));
        assertThat(english.tables().findFirst().orElseThrow().rows().get(0).cells())
                .startsWith(Cell.of("Cable"), Cell.of("Cable, lot"));
    }

    @ParameterizedTest
    @MethodSource("files")
    void every_text_is_there_in_both_languages_with_the_same_places(Path file) throws IOException {
        List<String> lines = Files.readAllLines(file);
        assertThat(lines.size() % 3).isZero();
        for (int i = 0; i < lines.size(); i += 3) {
            assertThat(lines.get(i)).isEqualTo(lines.get(i).strip());
            assertThat(lines.get(i + 1)).startsWith("  de: ");
            assertThat(lines.get(i + 2)).startsWith("  fr: ");
            assertThat(places(lines.get(i + 1)))
                    .as(lines.get(i))
                    .isEqualTo(places(lines.get(i)))
                    .isEqualTo(places(lines.get(i + 2)));
        }
        assertThat(Stream.iterate(0, i -> i < lines.size(), i -> i + 3).map(lines::get))
                .doesNotHaveDuplicates();
    }

    private static List<String> places(String text) {
        return Pattern.compile("\\{[^}]*}")
                .matcher(text)
                .results()
                .map(MatchResult::group)
                .sorted()
                .toList();
    }
}
