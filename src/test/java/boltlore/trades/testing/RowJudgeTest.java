package boltlore.trades.testing;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.catalogue.FoundState;
import java.math.BigDecimal;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("One test is judged by its readings")
class RowJudgeTest {

    private static final Limit AT_MOST_10 = new Limit.AtMost(BigDecimal.TEN);
    private static final Limit WINDOW = new Limit.Between(new BigDecimal("5"), new BigDecimal("7"));

    private static boolean passes(Limit limit, String value) {
        return TestedRow.ohm(limit).read(value, "ohm").judgement().passed();
    }

    private static BigDecimal missedBy(Limit limit, String value) {
        Judgement judgement = TestedRow.ohm(limit).read(value, "ohm").judgement();
        return ((Judgement.Failed) judgement).by();
    }

    @Nested
    @DisplayName("against a number")
    class AgainstANumber {

        @Test
        void a_reading_at_the_limit_passes_and_the_next_step_fails_by_that_step() {
            assertThat(passes(AT_MOST_10, "10")).isTrue();
            assertThat(missedBy(AT_MOST_10, "10.001")).isEqualByComparingTo("0.001");
        }

        @Test
        void a_reading_may_not_be_just_the_bound_where_it_must_be_below() {
            Limit below = new Limit.Below(new BigDecimal("0.1"));
            assertThat(passes(below, "0.099")).isTrue();
            assertThat(missedBy(below, "0.1")).isEqualByComparingTo("0");
            assertThat(missedBy(below, "0.12")).isEqualByComparingTo("0.02");
        }

        @Test
        void a_window_holds_its_ends_and_nothing_beyond() {
            assertThat(passes(WINDOW, "5")).isTrue();
            assertThat(passes(WINDOW, "7.0")).isTrue();
            assertThat(missedBy(WINDOW, "4.5")).isEqualByComparingTo("0.5");
            assertThat(missedBy(WINDOW, "7.25")).isEqualByComparingTo("0.25");
        }

        @Test
        void nothing_passes_where_the_limit_is_not_known() {
            Judgement judgement = TestedRow.ohm(new Limit.Unknown(NotKnown.PACK))
                    .read("1", "ohm")
                    .judgement();
            assertThat(judgement).isEqualTo(new Judgement.NoLimit(NotKnown.PACK));
        }

        @Test
        void an_empty_box_is_missing_and_not_failed() {
            assertThat(TestedRow.ohm(AT_MOST_10).judgement()).isInstanceOf(Judgement.Missing.class);
        }
    }

    @Nested
    @DisplayName("as people and programs write numbers")
    class AsWritten {

        @ParameterizedTest
        @CsvSource(
                delimiter = '|',
                value = {
                    "0,05 | true",
                    "0,123 | false",
                    "0,099 | true",
                    "0,1 | false",
                    "0.15000000000000002 | false",
                    "0.05000000000000000277 | true",
                    "0.09999999999999999 | false"
                })
        void a_decimal_comma_and_the_dust_of_a_conversion_are_read(String written, boolean passes) {
            assertThat(passes(new Limit.Below(new BigDecimal("0.1")), written)).isEqualTo(passes);
        }

        @Test
        void dust_is_not_told_as_a_measured_digit() {
            assertThat(missedBy(new Limit.Below(new BigDecimal("0.1")), "0.15000000000000002"))
                    .isEqualByComparingTo("0.05");
        }
    }

    @Nested
    @DisplayName("against a state")
    class AgainstAState {

        @ParameterizedTest
        @CsvSource({"open, en", "OPEN, en", "offen, de", "open, de", "ouvert, fr"})
        void the_state_may_be_written_in_english_or_the_orders_language(String written, String language) {
            JudgedRow judged =
                    TestedRow.state(FoundState.OPEN).read(written, "").judged(language);
            assertThat(judged.judgement().passed()).isTrue();
        }

        @Test
        void another_state_fails() {
            assertThat(TestedRow.state(FoundState.OPEN).read("closed", "").judgement())
                    .isInstanceOf(Judgement.Failed.class);
        }

        @ParameterizedTest
        @ValueSource(strings = {"x", "yes", "opened", "offen"})
        void a_tick_or_a_word_of_another_language_is_no_state(String written) {
            assertThat(TestedRow.state(FoundState.OPEN).read(written, "").flaws())
                    .containsExactly(Flaw.Kind.UNKNOWN_STATE);
        }
    }

    @Nested
    @DisplayName("cannot be judged")
    class CannotBeJudged {

        @ParameterizedTest
        @ValueSource(strings = {"ok", "0.05 ohm", "0,0,5", "1,234.5", "> 20", "1e1", "1 000", "--1", "."})
        void where_anything_but_a_number_is_written(String written) {
            assertThat(TestedRow.ohm(AT_MOST_10).read(written, "ohm").flaws()).containsExactly(Flaw.Kind.NOT_A_NUMBER);
        }

        @ParameterizedTest
        @CsvSource({"-0.001", "20.1"})
        void where_the_instrument_cannot_have_shown_it(String written) {
            assertThat(TestedRow.ohm(AT_MOST_10).read(written, "ohm").flaws()).containsExactly(Flaw.Kind.OUT_OF_RANGE);
        }

        @ParameterizedTest
        @ValueSource(strings = {"1,234", "12,000", "-3,500"})
        void where_a_comma_may_part_thousands(String written) {
            assertThat(TestedRow.ohm(AT_MOST_10).read(written, "ohm").flaws())
                    .containsExactly(Flaw.Kind.NUMBER_TWO_WAYS);
        }

        @Test
        void where_the_unit_is_missing_or_another() {
            assertThat(TestedRow.ohm(AT_MOST_10).read("1", "").flaws()).containsExactly(Flaw.Kind.NO_UNIT);
            assertThat(TestedRow.ohm(AT_MOST_10).read("1", "kohm").flaws()).containsExactly(Flaw.Kind.OTHER_UNIT);
        }

        @Test
        void but_the_sign_of_the_ohm_is_the_same_unit() {
            assertThat(passes(AT_MOST_10, "1")).isTrue();
            assertThat(TestedRow.ohm(AT_MOST_10).read("1", "Ω").judgement().passed())
                    .isTrue();
        }

        @Test
        void where_a_small_letter_makes_a_thousand_million_of_difference() {
            TestedRow meter = TestedRow.isolation("40", "40000").measured("400", "250", "100", "40", "10");
            assertThat(meter.read("test.meter", "10", "mohm", "2026-03-31").flaws())
                    .containsExactly(Flaw.Kind.OTHER_UNIT);
        }

        @Test
        void without_instrument_name_and_day() {
            Reading bare = new Reading("test", "1", "ohm", "", " ", "", "record.csv", 2, "");
            assertThat(TestedRow.ohm(AT_MOST_10).write(bare).flaws())
                    .containsExactlyInAnyOrder(Flaw.Kind.NO_DAY, Flaw.Kind.NO_INSTRUMENT, Flaw.Kind.NO_NAME);
        }

        @ParameterizedTest
        @CsvSource({"31/03/2026, NOT_A_DAY", "2026-02-30, NOT_A_DAY", "2026-04-01, DAY_TO_COME", "1.4.2026, DAY_TO_COME"
        })
        void on_a_day_that_is_none_or_is_still_to_come(String on, Flaw.Kind kind) {
            assertThat(TestedRow.ohm(AT_MOST_10).read("test", "1", "ohm", on).flaws())
                    .containsExactly(kind);
        }

        @ParameterizedTest
        @ValueSource(strings = {"2026-03-31", "31.3.2026", "31.03.2026"})
        void but_today_is_well_in_either_writing(String on) {
            assertThat(TestedRow.ohm(AT_MOST_10)
                            .read("test", "1", "ohm", on)
                            .judgement()
                            .passed())
                    .isTrue();
        }
    }

    @Nested
    @DisplayName("worked out from several readings")
    class WorkedOut {

        @Test
        void one_box_left_empty_is_named() {
            TestedRow half = TestedRow.precharge("95").read("test.vb", "400", "V", "2026-03-30");
            assertThat(half.judgement())
                    .isInstanceOfSatisfying(
                            Judgement.Missing.class,
                            missing -> assertThat(missing.boxes())
                                    .extracting(Box::key)
                                    .containsExactly("test.link"));
        }

        @ParameterizedTest
        @CsvSource({"380, true", "379.9, false", "0, false"})
        void the_link_reaches_its_share_of_the_pack(String link, boolean passes) {
            TestedRow row = TestedRow.precharge("95")
                    .read("test.vb", "400", "V", "2026-03-30")
                    .read("test.link", link, "V", "2026-03-30");
            assertThat(row.judgement().passed()).isEqualTo(passes);
        }

        @Test
        void readings_of_two_days_are_measured_again() {
            TestedRow row = TestedRow.precharge("95")
                    .read("test.vb", "400", "V", "2026-03-29")
                    .read("test.link", "399", "V", "2026-03-30");
            assertThat(row.flaws()).containsExactly(Flaw.Kind.SEVERAL_DAYS);
        }
    }
}
