package boltlore.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import boltlore.faults.Fault;
import boltlore.measure.Legible;
import java.util.Locale;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("What a JSON file may hold is bounded, and what is beyond is told with its place")
class BoundsTest {

    @Test
    void a_list_of_as_many_items_as_allowed_and_one_more() {
        assertThat(StrictJsonTest.parse(list(TreeBuilder.MOST_ITEMS)).faults()).isEmpty();
        assertThat(StrictJsonTest.parse(list(TreeBuilder.MOST_ITEMS + 1)).faults())
                .extracting(Fault::place, Fault::found, Fault::expected)
                .containsExactly(tuple("/a", "a list of more than 20000 items", "at most 20000"));
    }

    private static String list(int items) {
        return "{\"a\": [" + "1,".repeat(items - 1) + "1]}";
    }

    @Test
    void many_lists_that_are_short_one_by_one() {
        String short1000 = "[" + "1,".repeat(999) + "1],";
        assertThat(StrictJsonTest.parse("[" + short1000.repeat(199) + "1]").faults())
                .isEmpty();
        assertThat(StrictJsonTest.parse("[" + short1000.repeat(200) + "1]").faults())
                .extracting(Fault::found, Fault::expected)
                .containsExactly(tuple("more than 200000 values in one file", "at most 200000"));
    }

    @Test
    void a_key_that_goes_on_for_ever() {
        assertThat(StrictJsonTest.parse("{\"" + "k".repeat(200) + "\": 1}").faults())
                .isEmpty();
        assertThat(StrictJsonTest.parse("{\n\"" + "k".repeat(201) + "\": 1}").faults())
                .extracting(Fault::found, Fault::expected)
                .containsExactly(tuple("a key of 201 characters", "at most 200"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"1e99", "-1E-99", "0.000000000000000000000000000000000001"})
    void a_number_that_can_be_read_is_shown_shortly_when_it_is_out_of_range(String number) {
        assertThat(range("{\"a\": " + number + "}"))
                .singleElement()
                .satisfies(fault -> assertThat(fault.found()).hasSizeLessThan(70));
    }

    @ParameterizedTest
    @ValueSource(strings = {"1e100", "1E-999999999", "1e2147483648", "9E-99999999"})
    void a_number_with_an_exponent_that_no_arithmetic_should_meet(String number) {
        assertThat(StrictJsonTest.parse("{\"a\": " + number + "}").faults())
                .extracting(Fault::place, Fault::found)
                .containsExactly(tuple("/a", "the number '" + number + "'"));
    }

    @Test
    void a_number_of_a_million_digits() {
        assertThat(StrictJsonTest.parse("{\"a\": " + "9".repeat(999_999) + "}").faults())
                .singleElement()
                .satisfies(fault -> assertThat(fault.found()).hasSizeLessThan(80));
    }

    private static java.util.List<Fault> range(String text) {
        Faults faults = new Faults();
        ObjectReader.of(StrictJsonTest.sound(text), faults).decimal("a", Range.between(1, 10));
        return faults.all();
    }

    /** Escape, delete, the one-byte control sequence introducer, marks of direction, separators, what cannot be seen. */
    @ParameterizedTest
    @ValueSource(
            ints = {
                0x1B, 0x07, 0x7F, 0x80, 0x9B, 0x9D, 0x200B, 0x200E, 0x202A, 0x202E, 0x2066, 0x2069, 0x2028, 0x2029,
                0xFEFF, 0xFFFE, 0x1FFFF, 0xE0041
            })
    void a_character_that_steers_a_terminal_is_refused_alike_as_itself_and_as_an_escape(int character) {
        String itself = new String(Character.toChars(character));
        String found = String.format(Locale.ROOT, "a text with the character U+%04X", character);
        StringBuilder escape = new StringBuilder();
        itself.chars().forEach(unit -> escape.append(String.format(Locale.ROOT, "\\u%04x", unit)));
        if (character >= ' ') {
            // JSON itself refuses the others as themselves.
            assertThat(StrictJsonTest.parse("{\"a\": \"x" + itself + "\"}").faults())
                    .extracting(Fault::place, Fault::found)
                    .containsExactly(tuple("/a", found));
        }
        assertThat(StrictJsonTest.parse("{\"a\": \"x" + escape + "\"}").faults())
                .extracting(Fault::place, Fault::found)
                .containsExactly(tuple("/a", found));
        assertThat(Legible.line("x" + itself)).isEqualTo("x\uFFFD");
    }

    @Test
    void letters_of_any_writing_line_breaks_and_joints_of_letters_stay() {
        assertThat(StrictJsonTest.parse("{\"a\": \"Größe ≤ 5 µm, 東京, می\u200Cخواهم, 👩\u200D🔧\\n\\t\u00A0\u00AD\"}")
                        .faults())
                .isEmpty();
    }

    @Test
    void the_length_that_is_told_is_the_length_that_is_enforced() {
        Faults faults = new Faults();
        ObjectReader reader = ObjectReader.of(StrictJsonTest.sound("{\"a\": \"" + "x".repeat(5_000) + "\"}"), faults);
        reader.text("a", TextShape.LINE);
        assertThat(faults.all())
                .extracting(Fault::expected)
                .containsExactly("one line of at most 100 characters, without blanks at its ends");
    }

    @ParameterizedTest
    @ValueSource(strings = {"1899-12-31", "2200-01-01", "2974-05-01", "0001-01-01"})
    void a_year_in_which_no_order_is_placed(String date) {
        Faults faults = new Faults();
        ObjectReader.of(StrictJsonTest.sound("{\"a\": \"" + date + "\"}"), faults)
                .date("a");
        assertThat(faults.all()).extracting(Fault::expected).containsExactly("a year from 1900 to 2199");
    }

    @ParameterizedTest
    @ValueSource(strings = {"XXX", "XAU", "XTS", "XDR", "DEM", "CHE", "USN", "CLF", "EUX"})
    void a_currency_that_nobody_pays_with(String code) {
        assertThat(CurrencyReading.known(code)).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"EUR", "GBP", "USD", "CHF", "JPY", "KWD", "AUD"})
    void a_currency_that_people_pay_with(String code) {
        assertThat(CurrencyReading.known(code)).isPresent();
    }

    @ParameterizedTest
    @ValueSource(strings = {"CON", "nul", "COM1", "Lpt9.x", "AUX.2026", "x.", "PRN"})
    void an_order_name_that_no_file_system_takes(String name) {
        assertThat(TextShape.ORDER_NAME.fits().test(name)).isFalse();
    }

    @ParameterizedTest
    @ValueSource(strings = {"CONX", "COM", "COM12", "NULL", "BL-CON", "x.CON"})
    void an_order_name_that_only_looks_like_one(String name) {
        assertThat(TextShape.ORDER_NAME.fits().test(name)).isTrue();
    }
}
