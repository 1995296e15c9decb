package boltlore.json;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.faults.Fault;
import boltlore.measure.Wording;
import java.time.LocalDate;
import java.util.List;
import java.util.function.Consumer;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("An object is read key by key")
class ObjectReaderTest {

    private static List<Fault> faults(String text, Consumer<ObjectReader> reading) {
        Faults faults = new Faults();
        ObjectReader reader = ObjectReader.of(StrictJsonTest.sound(text), faults);
        reading.accept(reader);
        reader.done();
        return faults.all();
    }

    private static void assertFault(
            String text, Consumer<ObjectReader> reading, String pointer, String found, String expected, String advice) {
        assertThat(faults(text, reading)).containsExactly(new Fault("a.json", 1, pointer, found, expected, advice));
    }

    private static void assertSound(String text, Consumer<ObjectReader> reading) {
        assertThat(faults(text, reading)).isEmpty();
    }

    @Test
    void a_missing_key_is_said_at_the_object() {
        assertFault("{}", reader -> reader.text("part"), "", "no 'part'", "the key 'part'", "Add it.");
    }

    @Test
    void an_optional_key_may_be_missing() {
        assertSound("{}", reader -> assertThat(reader.findText("part")).isEmpty());
    }

    @Test
    void an_unknown_key_is_said_with_the_nearest_known_one() {
        assertFault(
                "{\"quantiy\": 1}",
                reader -> reader.findDecimal("quantity", Range.POSITIVE),
                "/quantiy",
                "the unknown key 'quantiy'",
                "one of quantity",
                "Did you mean 'quantity'?");
    }

    @Test
    void anything_but_an_object_is_said_once_and_nothing_is_missing_from_it() {
        assertFault("[]", reader -> reader.text("part"), "", "an empty list", "an object in { }", "");
    }

    @Test
    void all_faults_come_in_one_go() {
        assertThat(faults("{\"a\": 1, \"c\": true}", reader -> {
                    reader.text("a");
                    reader.text("b");
                }))
                .extracting(Fault::found)
                .containsExactly("1", "no 'b'", "the unknown key 'c'");
    }

    @Test
    void a_decimal_is_a_text_in_plain_digits_or_a_number() {
        for (String written : List.of("\"12.50\"", "12.50")) {
            assertSound(
                    "{\"cost\": " + written + "}",
                    reader -> assertThat(reader.decimal("cost", Range.NOT_NEGATIVE))
                            .hasToString("12.50"));
        }
    }

    @Test
    void a_decimal_is_not_written_otherwise() {
        for (String written : List.of("1e3", "12.", ".5", "1 000", "", "-", "1.2.3", "\u0661", "0x1", "twelve")) {
            assertThat(faults("{\"cost\": \"" + written + "\"}", reader -> reader.decimal("cost", Range.NOT_NEGATIVE)))
                    .as(written)
                    .hasSize(1);
        }
    }

    @Test
    void a_range_holds_its_ends_or_not_as_it_says() {
        assertSound("{\"a\": 0, \"b\": 100}", reader -> {
            reader.decimal("a", Range.between(0, 100));
            reader.decimal("b", Range.above(0, 100));
        });
        assertFault(
                "{\"a\": 0}",
                reader -> reader.decimal("a", Range.above(0, 100)),
                "/a",
                "0",
                "a number above 0, at most 100, such as \"12.5\", with at most 9 decimals",
                "");
    }

    @Test
    void the_dust_of_a_conversion_is_refused() {
        assertThat(faults("{\"a\": \"0.3000000000000000004\"}", reader -> reader.decimal("a", Range.POSITIVE)))
                .hasSize(1);
        assertSound("{\"a\": \"0.300000000000000\"}", reader -> reader.decimal("a", Range.POSITIVE));
    }

    @Test
    void a_whole_number_may_come_as_text_but_has_no_fraction() {
        assertSound(
                "{\"a\": \"12\"}",
                reader -> assertThat(reader.whole("a", 1, 12)).isEqualTo(12));
        assertFault("{\"a\": 1.5}", reader -> reader.whole("a", 1, 12), "/a", "1.5", "a whole number from 1 to 12", "");
        assertFault("{\"a\": 13}", reader -> reader.whole("a", 1, 12), "/a", "13", "a whole number from 1 to 12", "");
    }

    @Test
    void a_truth_is_no_text() {
        assertFault(
                "{\"a\": \"true\"}",
                reader -> reader.truth("a", false),
                "/a",
                "'true'",
                "true or false, without quotes",
                "");
    }

    @Test
    void a_date_is_a_day_of_the_calendar() {
        assertSound(
                "{\"a\": \"2024-02-29\"}",
                reader -> assertThat(reader.findDate("a")).isEqualTo(LocalDate.of(2024, 2, 29)));
        for (String none : List.of("2023-02-29", "2024-2-9", "29.02.2024", "20240229", "+2024-02-2")) {
            assertThat(faults("{\"a\": \"" + none + "\"}", reader -> reader.findDate("a")))
                    .as(none)
                    .hasSize(1);
        }
    }

    @Test
    void a_name_out_of_a_few_is_said_with_the_nearest() {
        assertFault(
                "{\"fill\": \"smoe\"}",
                reader -> reader.oneOf("fill", Allowed.of("one", "some", "free")),
                "/fill",
                "'smoe'",
                "one of one, some, free",
                "Did you mean 'some'?");
        assertFault(
                "{\"fill\": \"sum\"}",
                reader -> reader.oneOf("fill", Allowed.of("one", "some", "free")),
                "/fill",
                "'sum'",
                "one of one, some, free",
                "");
    }

    @Test
    void a_text_may_have_lines_and_any_letter() {
        assertSound(
                "{\"a\": \"one\\ntwo \\ud83d\\ude9a\"}",
                reader -> assertThat(reader.text("a")).isEqualTo("one\ntwo \uD83D\uDE9A"));
    }

    @Test
    void a_text_that_is_far_too_long() {
        assertThat(faults("{\"a\": \"" + "x".repeat(4001) + "\"}", reader -> reader.text("a")))
                .extracting(Fault::expected)
                .containsExactly("at most 4000 characters");
        assertSound("{\"a\": \"" + "x".repeat(4000) + "\"}", reader -> reader.text("a"));
    }

    @Test
    void a_wording_is_english_or_many_languages_with_english() {
        assertSound(
                "{\"a\": \"Frame\"}", reader -> assertThat(reader.wording("a")).isEqualTo(Wording.english("Frame")));
        assertSound(
                "{\"a\": {\"en\": \"Frame\", \"de\": \"Rahmen\"}}",
                reader -> assertThat(reader.wording("a").in("de")).isEqualTo("Rahmen"));
        assertFault(
                "{\"a\": {\"de\": \"Rahmen\"}}",
                reader -> reader.wording("a"),
                "/a",
                "an object",
                "an English text under 'en' among the languages",
                "Add \"en\".");
    }

    @Test
    void names_of_orders_name_folders() {
        for (String fit : List.of("BL-1001", "a", "2026_03.b", "_x")) {
            assertSound("{\"a\": \"" + fit + "\"}", reader -> reader.text("a", TextShape.ORDER_NAME));
        }
        for (String unfit :
                List.of("../x", "..", ".x", "a/b", "a\\\\b", "C:x", "a b", "a.", "\u00fc", "x".repeat(61), "a\\nb")) {
            assertThat(faults("{\"a\": \"" + unfit + "\"}", reader -> reader.text("a", TextShape.ORDER_NAME)))
                    .as(unfit)
                    .hasSize(1);
        }
    }
}
