package boltlore.json;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.faults.Fault;
import boltlore.faults.Outcome;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

@DisplayName("JSON is read strictly")
class StrictJsonTest {

    static Outcome<Json> parse(String text) {
        return JsonFile.parse("a.json", text.getBytes(StandardCharsets.UTF_8));
    }

    static Json sound(String text) {
        if (parse(text) instanceof Outcome.Sound<Json> sound) {
            return sound.value();
        }
        throw new AssertionError(parse(text).faults().toString());
    }

    private static List<Fault> faults(String text) {
        return parse(text).faults();
    }

    private static Fault fault(int line, String pointer, String found, String expected, String advice) {
        return new Fault("a.json", line, pointer, found, expected, advice);
    }

    @Nested
    @DisplayName("Slips of writing")
    class Writing {

        @Test
        void a_file_cut_off_names_the_line_where_what_is_open_begins() {
            assertThat(faults("{\"parts\": [\n{\"part\": \"A\",\n\"cost\""))
                    .containsExactly(fault(
                            3,
                            "/parts/0",
                            "the end of the file",
                            "the rest of what begins in line 2",
                            "The file is cut off: restore it whole."));
        }

        @Test
        void a_file_cut_off_within_a_text() {
            assertThat(faults("{\"part\": \"A"))
                    .singleElement()
                    .extracting(Fault::found)
                    .isEqualTo("the end of the file");
        }

        @Test
        void a_comma_too_many() {
            assertThat(faults("{\"a\": [1, 2],\n}"))
                    .containsExactly(fault(
                            2,
                            "",
                            "'}' where JSON allows none",
                            "a key in double quotes, or '}'",
                            "Remove the comma before it, or add what is missing."));
        }

        @Test
        void a_comma_missing() {
            assertThat(faults("{\"a\": 1\n \"b\": 2}"))
                    .containsExactly(fault(
                            2,
                            "",
                            "'\"' where JSON allows none",
                            "',' or the closing bracket",
                            "Check quotes, commas and brackets just before it."));
        }

        @Test
        void a_comment() {
            assertThat(faults("{\n  // the frame\n  \"a\": 1}"))
                    .containsExactly(fault(
                            2,
                            "",
                            "'/' where JSON allows none",
                            "data without comments",
                            "JSON has no comments: put the remark into a text such as 'note'."));
        }

        @Test
        void single_quotes() {
            assertThat(faults("{'a': 1}"))
                    .singleElement()
                    .extracting(Fault::advice)
                    .isEqualTo("Use the plain double quote (\").");
        }

        @Test
        void a_line_break_within_a_text() {
            assertThat(faults("{\"a\": \"one\ntwo\"}"))
                    .singleElement()
                    .extracting(Fault::expected)
                    .isEqualTo("text without bare line breaks or control characters");
        }

        @Test
        void no_json_at_all() {
            assertThat(faults("part;cost\nA;3\n"))
                    .singleElement()
                    .extracting(Fault::expected)
                    .isEqualTo("a text, number, object, list, true, false or null");
        }

        @Test
        void something_behind_the_end() {
            assertThat(faults("{\"a\": 1}\n{}"))
                    .containsExactly(fault(
                            2,
                            "",
                            "'{' after the end of the JSON value",
                            "one JSON value and nothing after it",
                            "Remove what follows, or a closing bracket too many before it."));
        }

        @Test
        void blanks_behind_the_end_are_allowed() {
            assertThat(parse("{\"a\": 1}\n\n ").faults()).isEmpty();
        }
    }

    @Nested
    @DisplayName("What would be read silently by others")
    class Silent {

        @Test
        void a_key_twice_is_said_with_both_lines() {
            assertThat(faults("{\"a\": {\n\"b\": 1,\n\"b\": 2}}"))
                    .containsExactly(fault(
                            3,
                            "/a/b",
                            "'b' a second time; it already stands in line 2",
                            "each key once in an object",
                            "Remove one of the two."));
        }

        @Test
        void the_same_key_in_two_objects_is_no_fault() {
            assertThat(parse("[{\"b\": 1}, {\"b\": 2}]").faults()).isEmpty();
        }

        @Test
        void all_keys_that_stand_twice_are_said_in_one_go() {
            assertThat(faults("{\"a\": 1, \"a\": 2, \"b\": 1, \"b\": 2}")).hasSize(2);
        }

        @Test
        void a_number_that_would_fill_the_memory() {
            for (String huge : List.of("1e999999999", "1e99999999999999", "-1E+1000", "1e-9999", "9".repeat(41))) {
                assertThat(faults("{\"cost\": " + huge + "}"))
                        .as(huge)
                        .containsExactly(fault(
                                1,
                                "/cost",
                                "the number '" + huge + "'",
                                "a number of at most 40 characters and an exponent of at most two digits",
                                "Write it in plain digits."));
            }
        }

        @Test
        void a_number_with_a_small_exponent_is_read() {
            assertThat(sound("1e3"))
                    .isInstanceOfSatisfying(
                            Json.Num.class,
                            number -> assertThat(number.number()).isEqualByComparingTo("1000"));
        }

        @Test
        void nesting_deeper_than_anyone_writes() {
            assertThat(faults("[".repeat(65) + "]".repeat(65)))
                    .singleElement()
                    .extracting(Fault::found, Fault::expected)
                    .containsExactly("values nested more than 64 deep", "at most 64 levels");
        }

        @Test
        void nesting_of_a_hundred_thousand_ends_no_program() {
            assertThat(faults("[".repeat(100_000))).hasSize(1);
        }

        @Test
        void nesting_just_deep_enough() {
            assertThat(parse("[".repeat(64) + "]".repeat(64)).faults()).isEmpty();
        }

        @Test
        void a_text_that_cannot_be_printed() {
            assertThat(faults("{\"a\": \"tab\\u0000\"}"))
                    .containsExactly(fault(
                            1,
                            "/a",
                            "a text with the character U+0000",
                            "text that can be printed",
                            "Remove that character."));
            for (String none : List.of("half \\ud83d", "\\ude9a", "\\u001b[31m", "\\r\\n", "\uFFFF", "\\uFFFE")) {
                assertThat(faults("[\"" + none + "\"]")).as(none).hasSize(1);
            }
        }

        @Test
        void a_text_with_line_breaks_and_any_letter_is_printed() {
            assertThat(faults("[\"one\\ntwo \\ud83d\\ude9a \uD83D\uDE9A \u00fc \\t\"]"))
                    .isEmpty();
        }

        @Test
        void numbers_that_are_none() {
            for (String none : List.of("NaN", "Infinity", "01", "+1", ".5", "1.", "0x10")) {
                assertThat(faults("[" + none + "]")).as(none).hasSize(1);
            }
        }
    }

    @Nested
    @DisplayName("Everything knows where it stands")
    class Places {

        @Test
        void lines_are_counted_from_one_for_every_kind_of_line_end() {
            for (String end : List.of("\n", "\r\n", "\r")) {
                Json.Obj object = (Json.Obj) sound("{" + end + "\"a\": 1," + end + end + "\"b\":" + end + "[true]}");
                assertThat(object.location().line()).isEqualTo(1);
                assertThat(object.members().get("a").location().line()).isEqualTo(2);
                assertThat(object.members().get("b").location().line()).isEqualTo(5);
            }
        }

        @Test
        @DisplayName("pointers are written as RFC 6901, section 5, has them")
        void pointers() {
            Json.Obj object =
                    (Json.Obj) sound("{\"foo\": [\"bar\", \"baz\"], \"\": 0, \"a/b\": 1, \"m~n\": 8, \" \": 7}");
            assertThat(object.location().pointer()).isEmpty();
            assertThat(((Json.Arr) object.members().get("foo"))
                            .items()
                            .get(0)
                            .location()
                            .pointer())
                    .isEqualTo("/foo/0");
            assertThat(object.members().get("").location().pointer()).isEqualTo("/");
            assertThat(object.members().get("a/b").location().pointer()).isEqualTo("/a~1b");
            assertThat(object.members().get("m~n").location().pointer()).isEqualTo("/m~0n");
            assertThat(object.members().get(" ").location().pointer()).isEqualTo("/ ");
        }

        @Test
        void objects_keep_the_order_of_the_file() {
            assertThat(((Json.Obj) sound("{\"z\": 1, \"a\": 2, \"m\": 3}")).members())
                    .containsOnlyKeys("z", "a", "m");
        }

        @Test
        void decimals_are_exact() {
            assertThat(sound("0.1"))
                    .isInstanceOfSatisfying(
                            Json.Num.class,
                            number -> assertThat(number.number()).hasToString("0.1"));
        }
    }
}
