package boltlore.cli;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.demo.Demo;
import boltlore.faults.Outcome;
import boltlore.order.Order;
import boltlore.order.json.OrderReader;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("ask")
class AskCommandTest {

    private static final List<String> MOST = List.of(
            "body-era=late",
            "drive-side=left",
            "market=europe",
            "supply=three-phase-16",
            "language=en",
            "export=none",
            "colour=black",
            "cover-colour=cream",
            "charger=seven",
            "heater=water");

    /** Number, customer, nothing said of due date, partner and discount; brackets that support nothing stay out. */
    private static final String HEAD = "BL-3001\nNew Customer\n\n\n\nout\nwrite\n";

    @TempDir
    Path folder;

    private Ran typed(String typed, Object... arguments) {
        InputStream terminal = System.in;
        System.setIn(new ByteArrayInputStream(typed.getBytes(StandardCharsets.UTF_8)));
        try {
            return Ran.boltlore(arguments);
        } finally {
            System.setIn(terminal);
        }
    }

    /** An interview for a van of which two questions are left: the drive unit and air conditioning. */
    private Ran ask(String typed, Object... more) {
        List<Object> all = new ArrayList<>(List.of("ask", "pannier-van"));
        all.addAll(MOST);
        all.addAll(List.of(
                "--built",
                "1978-02-03",
                "--placed",
                "2026-06-15",
                "--out",
                folder.resolve("new.json"),
                "--within",
                "20s"));
        all.addAll(List.of(more));
        return typed(typed, all.toArray());
    }

    private static String words(Ran ran) {
        return ran.out().replaceAll("\\s+", " ");
    }

    private JsonNode written(String file) throws IOException {
        return new ObjectMapper().readTree(Files.readString(folder.resolve(file)));
    }

    private List<String> files() throws IOException {
        try (Stream<Path> all = Files.list(folder)) {
            return all.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }

    @Test
    void writes_an_order_that_kit_takes_and_leaves_no_draft() throws IOException {
        Ran asked = ask("90-kw\nyes\n" + HEAD);
        Ran kit = Ran.boltlore("kit", folder.resolve("new.json"), "--out", folder.resolve("exports"));

        assertThat(asked.exit()).as(asked.toString()).isEqualTo(Exit.OK);
        assertThat(words(asked)).contains("Drive unit, 90 kW is chosen");
        assertThat(kit.exit()).as(kit.toString()).isEqualTo(Exit.OK);
        assertThat(kit.out()).contains("BL-3001, New Customer");
        assertThat(files()).containsExactly("exports", "new.json");
    }

    @Nested
    @DisplayName("asks for brackets that support nothing in the kit:")
    class Brackets {

        private static final String WITHOUT = "BL-3001\nNew Customer\n\n\n\n";

        private String leftOut(Ran asked) throws IOException {
            assertThat(asked.exit()).as(asked.toString()).isEqualTo(Exit.OK);
            return written("new.json").get("leftOut").asText();
        }

        @Test
        void named_and_left_out() throws IOException {
            Ran asked = ask("90-kw\nyes\n" + HEAD);

            assertThat(words(asked)).contains("V2L outlet bracket (export-bracket), Three-phase contactor bracket");
            assertThat(leftOut(asked)).isEqualTo("all");
        }

        @Test
        void kept() throws IOException {
            assertThat(leftOut(ask("90-kw\nyes\n" + WITHOUT + "write\n", "--brackets", "keep")))
                    .isEqualTo("keep");
        }

        @Test
        void put_off_and_said_to_stop_the_shipping() throws IOException {
            Ran asked = ask("90-kw\nyes\n" + WITHOUT + "maybe\n\nwrite\n");

            assertThat(words(asked)).contains("expected 'out' or 'keep'").contains("does not ship before");
            assertThat(leftOut(asked)).isEqualTo("undecided");
        }

        @Test
        void not_where_each_supports_something() throws IOException {
            Ran asked = typed(
                    WITHOUT + "write\n",
                    "ask",
                    "pannier-van",
                    "drive-side=left",
                    "drive-unit=90-kw",
                    "battery=two-strings",
                    "market=europe",
                    "inlet=type-2",
                    "charger=eleven-two-way",
                    "supply=three-phase-16",
                    "export=cee-7-3",
                    "air-conditioning=yes",
                    "heater=water",
                    "language=en",
                    "colour=green",
                    "cover-colour=cream",
                    "--built",
                    "1978-02-03",
                    "--out",
                    folder.resolve("new.json"));

            assertThat(words(asked)).doesNotContain("Brackets that support nothing");
            assertThat(leftOut(asked)).isEqualTo("undecided");
        }
    }

    @Test
    void asks_for_due_date_partner_and_discount_too_and_prices_with_them() throws IOException {
        Ran asked = ask("90-kw\nyes\nBL-3001\nNew Customer\n2027-03-12\nWerkstatt Lindenquell\n5\nkeep\nwrite\n");

        assertThat(asked.exit()).as(asked.toString()).isEqualTo(Exit.OK);
        assertThat(written("new.json").get("due").asText()).isEqualTo("2027-03-12");
        assertThat(written("new.json").get("partner").asText()).isEqualTo("Werkstatt Lindenquell");
        assertThat(written("new.json").get("terms").get("discountPercent").asText())
                .isEqualTo("5");
    }

    @Test
    void takes_what_an_order_says_at_any_time_and_as_options_and_refuses_what_no_order_may_say() {
        Ran asked = ask("partner Werkstatt Lindenqell\ndue tomorrow\nquit\n", "--due", "2027-03-12");

        assertThat(words(asked))
                .contains("Did you mean 'Werkstatt Lindenquell'?")
                .contains("'tomorrow'");
    }

    @ParameterizedTest
    @ValueSource(strings = {"bl-1001", "bl-1005", "bl-1010", "bl-1014", "bl-2002"})
    @DisplayName("gives an order file back with all that it said")
    void gives_back(String name) {
        Path order = Path.of("catalog", "orders", name + ".json");

        Ran asked = typed("write\n", "ask", order, "--out", folder.resolve("again.json"));

        assertThat(asked.exit()).as(asked.toString()).isEqualTo(Exit.OK);
        saysAll(order, folder.resolve("again.json"));
    }

    @Test
    void keeps_in_a_draft_too_what_an_unfinished_order_file_said() throws IOException {
        Path order = Path.of("catalog", "orders", "bl-1007.json");

        typed("none\nquit\n", "ask", order, "--out", folder.resolve("again.json"));

        saysAll(order, folder.resolve("again.draft.json"));
        assertThat(written("again.draft.json").get("choices").get("export").asText())
                .isEqualTo("none");
    }

    /** All that the order in the first file says stands in the second too; choices may have come to it. */
    private static void saysAll(Path first, Path second) {
        Order before = order(first);
        Order after = order(second);
        assertThat(after.choices().values())
                .containsAllEntriesOf(before.choices().values());
        assertThat(after.withChoices(before.choices())).isEqualTo(before);
    }

    private static Order order(Path file) {
        return ((Outcome.Sound<Order>) OrderReader.read(file, Demo.catalogue())).value();
    }

    @Nested
    @DisplayName("begins with the vehicle:")
    class Vehicle {

        private Ran built(String said) {
            return typed(said + "\nquit\n", "ask", "pannier-van", "--out", folder.resolve("new.json"));
        }

        @Test
        void a_day_settles_the_era_and_is_kept() throws IOException {
            assertThat(words(built("1963-04-17")))
                    .contains("Early body")
                    .contains("On which side does the driver sit?");
            assertThat(written("new.draft.json").get("donorBuilt").asText()).isEqualTo("1963-04-17");
            assertThat(written("new.draft.json").get("choices").has("body-era")).isFalse();
        }

        @Test
        void a_year_settles_it_where_all_its_days_do_and_is_kept() throws IOException {
            assertThat(words(built("1968"))).contains("Middle body");
            assertThat(written("new.draft.json").get("donorBuilt").asText()).isEqualTo("1968");
            assertThat(written("new.draft.json").get("choices").has("body-era")).isFalse();
        }

        @Test
        void a_day_with_points_between_is_understood() throws IOException {
            assertThat(words(built("20.05.1974"))).contains("Late body");
            assertThat(written("new.draft.json").get("donorBuilt").asText()).isEqualTo("1974-05-20");
        }

        @ParameterizedTest
        @ValueSource(strings = {"05/20/1974", "74", "1974-5-2"})
        void what_may_be_read_in_two_ways_is_refused_with_all_three_forms(String said) {
            assertThat(words(built(said)))
                    .contains("'" + said + "'; expected a day, a month or a year, as 1968-05-20, 1968-05 or 1968");
        }

        @ParameterizedTest
        @ValueSource(strings = {"2074", "2074-05-01"})
        void nothing_that_is_still_to_be_built(String said) {
            assertThat(words(built(said))).contains("built " + said + "; expected a day not after");
        }

        @Test
        void a_year_in_which_the_body_changed_is_asked_for_more_exactly() {
            assertThat(words(built("1965"))).contains("a month or a day").doesNotContain("On which side");
            assertThat(words(built("1965-08"))).contains("Middle body");
        }

        @Test
        void who_does_not_know_is_asked_for_the_body() {
            assertThat(words(built(""))).contains("When was the body built?");
        }

        @Test
        void nothing_is_asked_that_was_given_as_an_option() {
            Ran asked =
                    typed("quit\n", "ask", "pannier-van", "--built", "1963-04-17", "--out", folder.resolve("new.json"));

            assertThat(words(asked)).contains("Early body").doesNotContain("When was");
        }
    }

    @Test
    void shows_with_each_answer_what_it_changes_and_what_it_rules_out() {
        Ran asked = ask("quit\n");

        assertThat(words(asked))
                .contains("Cheapest complete kit now: ")
                .containsPattern("1 60-kw: .*? \\(default\\) no difference")
                .containsPattern(
                        "2 90-kw: .*? EUR [\\d,.]+ more, [\\d.]+ kg more, (same lead time|[\\d]+ days later); rules out ");
    }

    @Test
    void names_what_is_not_available_in_its_place_with_the_reason() {
        Ran asked = typed(
                "quit\n",
                "ask",
                "pannier-van",
                "body-era=late",
                "drive-side=left",
                "--within",
                "0ms",
                "--out",
                folder.resolve("new.json"));

        assertThat(words(asked)).containsPattern("2 United Kingdom: not available, because Left-hand drive is chosen");
    }

    @Test
    void explains_an_answer_that_is_not_available_and_what_would_have_to_change_for_it() {
        Ran asked = ask("why market=north-america\nexport=nema-5-15\nopen export=nema-5-15\nfoo\nquit\n");

        assertThat(words(asked))
                .contains("North America: not available, because")
                .contains("'open export=nema-5-15' says what would have to change for it.")
                .contains("For V2L outlet NEMA 5-15")
                .contains("'take 1' changes it so")
                .contains("value 'foo'");
    }

    @Test
    void changes_what_an_opening_has_shown_and_takes_it_back() throws IOException {
        ask("open export=cee-7-3\ntake 1\nquit\n");
        assertThat(written("new.draft.json").get("choices").get("export").asText())
                .isEqualTo("cee-7-3");

        ask("open export=cee-7-3\ntake 1\nundo\nquit\n");
        assertThat(written("new-2.draft.json").get("choices").get("export").asText())
                .isEqualTo("none");
    }

    @Test
    void goes_back_to_a_question_and_undoes_without_end() {
        Ran asked = ask("90-kw\nyes\nback\nundo\nundo\nquit\n");

        assertThat(words(asked))
                .contains("Air conditioning? Cheapest complete kit now", "The last change is taken back.")
                .contains("There is nothing to take back of this talk.");
    }

    @Test
    void takes_numbers_the_default_and_later() {
        Ran asked = ask("later\ndefault\n1\n" + HEAD);

        assertThat(asked.exit()).as(asked.toString()).isEqualTo(Exit.OK);
    }

    @Test
    void lists_and_helps_and_does_not_take_arrow_keys_for_values() {
        Ran asked = ask("?\nhelp\nlist\n\u001B[A\nquit\n");

        assertThat(words(asked))
                .contains("take the default answer")
                .contains("Still to decide")
                .contains("Arrow keys are not read here")
                .doesNotContain("value '");
    }

    @Nested
    @DisplayName("keeps a draft")
    class Drafts {

        @ParameterizedTest
        @ValueSource(strings = {"90-kw\n", "90-kw\nquit\n", "90-kw\nsave\n", "90-kw\nyes\n\n", "90-kw\nyes\nBL-3001\n"})
        void whatever_breaks_the_talk_off(String typed) throws IOException {
            Ran asked = ask(typed);

            assertThat(asked.exit()).isEqualTo(Exit.STOPPED);
            assertThat(words(asked)).contains("Draft kept in").contains("goes on from it");
            assertThat(written("new.draft.json")
                            .get("choices")
                            .get("drive-unit")
                            .asText())
                    .isEqualTo("90-kw");
        }

        @Test
        void that_ask_goes_on_from_and_that_is_gone_when_the_order_is_written() throws IOException {
            ask("90-kw\ncustomer New Customer\nquit\n");
            Ran on = typed(
                    "yes\nBL-3001\n\n\n\nout\nwrite\n",
                    "ask",
                    folder.resolve("new.draft.json"),
                    "--out",
                    folder.resolve("new.json"));

            assertThat(on.exit()).as(on.toString()).isEqualTo(Exit.OK);
            assertThat(words(on)).doesNotContain("For which customer?");
            assertThat(written("new.json").get("choices").get("drive-unit").asText())
                    .isEqualTo("90-kw");
            assertThat(files()).containsExactly("new.json");
        }

        @Test
        void that_choose_prices_from_and_to() {
            ask("90-kw\nquit\n");
            Ran price = Ran.boltlore("choose", folder.resolve("new.draft.json"), "--within", "20s");

            assertThat(words(price))
                    .containsPattern("Price EUR [\\d,.]+ to [\\d,.]+ before tax; \\d+ valid orders remain");
        }

        @Test
        void beside_one_that_is_there_already() throws IOException {
            ask("90-kw\nquit\n");
            ask("60-kw\nquit\n");

            assertThat(files()).containsExactly("new-2.draft.json", "new.draft.json");
        }
    }

    @Test
    void overwrites_no_file_but_asks_for_another() throws IOException {
        Files.writeString(folder.resolve("new.json"), "mine");
        Ran refused = ask("90-kw\nyes\n" + HEAD);
        Ran other = ask("90-kw\nyes\n" + HEAD + folder.resolve("other.json") + "\n");

        assertThat(refused.exit()).isEqualTo(Exit.FAULTS);
        assertThat(words(refused)).contains("Draft kept in");
        assertThat(other.exit()).as(other.toString()).isEqualTo(Exit.OK);
        assertThat(folder.resolve("new.json")).hasContent("mine");
        assertThat(folder.resolve("other.json")).exists();
    }

    @Test
    void writes_no_order_whose_number_is_a_path() throws IOException {
        Ran asked = ask("90-kw\nyes\n", "--order", "../x", "--customer", "New Customer");

        assertThat(asked.exit()).isEqualTo(Exit.FAULTS);
        assertThat(files()).isEmpty();
    }

    @Test
    void a_year_that_no_order_may_have_is_refused_with_those_that_it_may() {
        assertThat(words(ask("built 2974-01-01\nquit\n")))
                .contains("found '2974-01-01'; expected a day, a month or a year from 1900 to 2199");
    }

    @Test
    void a_day_that_is_none_is_refused_in_plain_words() {
        Ran asked = Ran.boltlore("ask", "pannier-van", "--built", "1963-99-99");

        assertThat(asked.exit()).isEqualTo(Exit.USAGE);
        assertThat(asked.err())
                .contains("'1963-99-99'; expected a day, a month or a year")
                .doesNotContain("Exception");
    }

    @Nested
    @DisplayName("looks once more before it writes:")
    class LastLook {

        private static final String DECIDED = "90-kw\nyes\nBL-3001\nNew Customer\n\n\n\nout\n";

        @Test
        void says_the_whole_order_and_its_one_price_whatever_time_was_given() {
            Ran asked = typed(
                    "write\n",
                    "ask",
                    Path.of("catalog/orders/bl-1011.json"),
                    "--within",
                    "0ms",
                    "--out",
                    folder.resolve("new.json"));

            assertThat(words(asked))
                    .contains("All is decided")
                    .containsPattern(
                            "Order BL-1011 for .*, vehicle built [\\d-]+, chassis number .*, placed [\\d-]+, .*papers in German\\.")
                    .containsPattern("Price EUR [\\d,.]+ before tax; 1 valid order remains\\.");
        }

        @Test
        void keeps_a_draft_and_writes_nothing_where_the_talk_ends_there() throws IOException {
            Ran asked = ask(DECIDED);

            assertThat(asked.exit()).isEqualTo(Exit.STOPPED);
            assertThat(files()).containsExactly("new.draft.json");
        }

        @Test
        void takes_changes_and_takes_them_back() throws IOException {
            ask(DECIDED + "air-conditioning=no\ndiscount 5\nundo\ncustomer Other\nwrite\n");

            assertThat(written("new.json")
                            .get("choices")
                            .get("air-conditioning")
                            .asText())
                    .isEqualTo("no");
            assertThat(written("new.json").get("customer").asText()).isEqualTo("Other");
            assertThat(written("new.json").has("terms")).isFalse();
        }

        @Test
        void does_so_for_an_order_that_was_decided_long_ago() throws IOException {
            Ran asked = typed(
                    "air-conditioning=no\nwrite\n",
                    "ask",
                    Path.of("catalog/orders/bl-1011.json"),
                    "--out",
                    folder.resolve("new.json"));

            assertThat(asked.exit()).as(asked.toString()).isEqualTo(Exit.OK);
            assertThat(written("new.json")
                            .get("choices")
                            .get("air-conditioning")
                            .asText())
                    .isEqualTo("no");
        }
    }

    @Nested
    @DisplayName("writes papers in the language")
    class Language {

        private String language(String typed, Object... more) throws IOException {
            Ran asked = ask("90-kw\nyes\nBL-3001\nNew Customer\n\n\n\nout\n" + typed + "write\n", more);
            assertThat(asked.exit()).as(asked.toString()).isEqualTo(Exit.OK);
            return written("new.json").get("language").asText();
        }

        @Test
        void of_labels_and_manuals_chosen_on_the_command_line() throws IOException {
            Ran asked = typed(
                    "quit\n",
                    "ask",
                    "pannier-van",
                    "language=de",
                    "--built",
                    "1970",
                    "--out",
                    folder.resolve("x.json"));
            typed("number BL-1\nquit\n", "ask", "pannier-van", "language=de", "--out", folder.resolve("new.json"));

            assertThat(asked.exit()).isEqualTo(Exit.STOPPED);
            assertThat(written("new.draft.json").get("language").asText()).isEqualTo("de");
        }

        @Test
        void of_labels_and_manuals_chosen_in_the_talk() throws IOException {
            assertThat(language("language=fr\n")).isEqualTo("fr");
        }

        @Test
        void that_is_said_in_the_talk() throws IOException {
            assertThat(language("language de\n")).isEqualTo("de");
        }

        @Test
        void that_is_said_as_an_option() throws IOException {
            assertThat(language("", "--language", "fr")).isEqualTo("fr");
        }

        @Test
        void that_the_workshop_writes_and_no_other() {
            assertThat(words(ask("language xx\nquit\n"))).contains("'xx'; expected a language of the workshop");
        }

        @Test
        void of_the_partner_where_none_is_chosen() throws IOException {
            typed(
                    "quit\n",
                    "ask",
                    "pannier-van",
                    "--partner",
                    "Werkstatt Lindenquell",
                    "--out",
                    folder.resolve("new.json"));
            typed("partner Werkstatt Lindenquell\nquit\n", "ask", "pannier-van", "--out", folder.resolve("new.json"));

            assertThat(written("new.draft.json").get("language").asText()).isEqualTo("de");
        }
    }

    @Test
    void dates_a_new_order_today_and_an_old_one_as_it_was() throws IOException {
        typed("number BL-1\nquit\n", "ask", "pannier-van", "--out", folder.resolve("new.json"));

        assertThat(written("new.draft.json").get("placed").asText())
                .isEqualTo(LocalDate.now(ZoneId.systemDefault()).toString());
    }

    @Test
    void tells_at_once_that_a_due_date_is_too_soon() {
        Ran asked = ask("90-kw\nyes\ndue 2026-06-20\ndue 2027-03-12\nquit\n");

        assertThat(words(asked))
                .containsPattern(
                        "Check: the due date 2026-06-20 is too soon\\. The lead time is \\d+ days, until 2026-\\d\\d-\\d\\d")
                .doesNotContain("the due date 2027-03-12 is too soon");
    }

    @Test
    void tells_faults_of_the_talk_without_a_place_in_a_file_that_nobody_sees() {
        Ran asked = ask("due +999999999-12-31\ndiscount 101\ndiscount 1E-999999999\npartner foo\nquit\n");

        assertThat(asked.exit()).isEqualTo(Exit.STOPPED);
        assertThat(words(asked))
                .contains("'+999999999-12-31'; expected a date")
                .contains("'1E-999999999'; expected per cent, as 2.5")
                .contains("'foo'; expected a partner of the workshop")
                .doesNotContain(" /due", " /terms", " /partner", ":8", ":11");
    }

    @Test
    void names_the_schema_by_the_way_from_the_file_to_the_catalogue() throws IOException {
        typed("number BL-1\nquit\n", "ask", "pannier-van", "--out", folder.resolve("deep/new.json"));

        Path draft = folder.resolve("deep/new.draft.json");
        String schema = new ObjectMapper()
                .readTree(Files.readString(draft))
                .get("$schema")
                .asText();
        assertThat(draft.resolveSibling(schema).normalize())
                .isEqualTo(Path.of("catalog/schema/order.schema.json").toAbsolutePath());
    }
}
