package boltlore.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("What a command line or a file asks for is bounded, and what is beyond is a sentence")
class BoundedOptionsTest {

    private static final String ORDER = "catalog/orders/bl-1001.json";

    @TempDir
    private Path folder;

    @ParameterizedTest
    @Timeout(20)
    @CsvSource(
            delimiter = '|',
            value = {
                "choose|--within|999999999m|is more than 10080m, which is a week",
                "choose|--within|٣s|is not a duration",
                "price|--on|+999999999-12-31|from 1900 to 2199",
                "price|--on|2974-12-31|from 1900 to 2199",
                "price|--discount|1E-999999999|expected per cent from 0 to 95",
                "price|--discount|9E-99999999|expected per cent from 0 to 95",
                "price|--discount|٥|expected per cent from 0 to 95",
                "price|--discount|95.01|from 0 to 95",
                "price|--currency|XAU|some country pays with today",
                "coat|--start|+999999999-12-31|from 1900 to 2199",
            })
    void an_option(String command, String option, String value, String told) {
        Ran ran = Ran.boltlore(command, command.equals("choose") ? "pannier-van" : ORDER, option, value);
        assertThat(ran.exit()).as(ran.toString()).isEqualTo(Exit.USAGE);
        assertThat(ran.err()).contains(told).doesNotContain("Exception").doesNotContain("java.");
    }

    @Test
    void an_argument_that_begins_with_at_is_that_argument() throws IOException {
        Path arguments = Files.writeString(folder.resolve("x"), "--help");
        Ran ran = Ran.boltlore("kit", "@" + arguments);
        assertThat(ran.exit()).isEqualTo(Exit.FAULTS);
        assertThat(ran.err()).contains("@" + arguments + ": found nothing of that name");
    }

    @Test
    void a_path_that_cannot_be_one() {
        Ran ran = Ran.boltlore("check", "a\0b");
        assertThat(ran.exit()).isEqualTo(Exit.USAGE);
        assertThat(ran.err()).contains("no file can have that name here").doesNotContain("Exception");
    }

    @Test
    void an_escape_in_an_argument_is_made_visible() {
        Ran ran = Ran.boltlore("kit", "\u001B]0;x\u0007\u009B1m.json");
        assertThat(ran.err()).doesNotContain("\u001B", "\u0007", "\u009B").contains("\\u001b");
        Ran unknown = Ran.boltlore("kit", ORDER, "--\u001B[31m");
        assertThat(unknown.err()).doesNotContain("\u001B").contains("\\u001b");
    }

    @Test
    @Timeout(20)
    void an_extra_of_a_million_and_of_ten_thousand_with_what_is_inside() throws IOException {
        assertThat(extra("1000000").err()).contains("found 1000000; expected a number above 0, at most 10000");
        assertThat(extra("9000").err())
                .contains("found 9000 of PV-CR-E with all that comes with them; expected at most 20000 pieces");
    }

    private Ran extra(String quantity) throws IOException {
        String text = Files.readString(Path.of(ORDER));
        int end = text.lastIndexOf('}');
        String more = ", \"extra\": [{\"part\": \"PV-CR-E\", \"quantity\": " + quantity
                + ", \"suppliedBy\": \"us\", \"reason\": \"A slip.\"}]}";
        Path order = Files.writeString(
                folder.resolve("order.json"), text.substring(0, end).stripTrailing() + more);
        return Ran.boltlore("kit", order, "--out", folder.resolve("out"));
    }

    @Test
    void film_without_anything_filled_in() throws IOException {
        Path record = Files.writeString(folder.resolve("record.json"), "{}");
        Ran ran = Ran.boltlore("film-check", ORDER, "--record", record, "--out", folder.resolve("out"));
        assertThat(ran.exit()).as(ran.toString()).isEqualTo(Exit.FAULTS);
        assertThat(ran.err()).contains("found nothing filled in; expected film readings, or powder that was issued");
    }

    @Test
    void remnants_without_their_list() throws IOException {
        Path rack = Files.writeString(folder.resolve("rack.json"), "{}");
        Ran ran = Ran.boltlore("cut", ORDER, "--remnants", rack, "--out", folder.resolve("out"));
        assertThat(ran.exit()).as(ran.toString()).isEqualTo(Exit.FAULTS);
        assertThat(ran.err()).contains("found no 'remnants'; expected the key 'remnants'");
    }

    @Test
    void a_locale_with_other_digits_changes_nothing_that_is_printed() {
        Ran plain = Ran.boltlore("choose", "pannier-van");
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
            assertThat(Ran.boltlore("choose", "pannier-van").out()).isEqualTo(plain.out());
        } finally {
            Locale.setDefault(before);
        }
    }
}
