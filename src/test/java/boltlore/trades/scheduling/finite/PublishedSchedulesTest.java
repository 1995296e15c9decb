package boltlore.trades.scheduling.finite;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

@DisplayName("Published schedules: a unit of time is a day")
class PublishedSchedulesTest {

    /**
     * H. Fisher and G. L. Thompson, in J. F. Muth and G. L. Thompson, Industrial Scheduling, 1963; as OR-Library lists it
     * (ft06). Optimum 55.
     */
    private static final String FT06 = """
            2 1 0 3 1 6 3 7 5 3 4 6
            1 8 2 5 4 10 5 10 0 10 3 4
            2 5 3 4 5 8 0 9 1 1 4 7
            1 5 0 5 2 5 3 3 4 8 5 9
            2 9 1 3 4 5 5 4 0 3 3 1
            1 3 3 3 5 9 0 10 4 4 2 1
            """;

    /** From the same book (ft10). Optimum 930, proved by J. Carlier and E. Pinson, 1989, from the one-machine bound 808. */
    private static final String FT10 = """
            0 29 1 78 2 9 3 36 4 49 5 11 6 62 7 56 8 44 9 21
            0 43 2 90 4 75 9 11 3 69 1 28 6 46 5 46 7 72 8 30
            1 91 0 85 3 39 2 74 8 90 5 10 7 12 6 89 9 45 4 33
            1 81 2 95 0 71 4 99 6 9 8 52 7 85 3 98 9 22 5 43
            2 14 0 6 1 22 5 61 3 26 4 69 8 21 7 49 9 72 6 53
            2 84 1 2 5 52 3 95 8 48 9 72 0 47 6 65 4 6 7 25
            1 46 0 37 3 61 2 13 6 32 5 21 9 32 8 89 7 30 4 55
            2 31 0 86 1 46 5 74 4 32 6 88 8 19 9 48 7 36 3 79
            0 76 1 69 3 76 5 51 2 85 9 11 6 40 7 89 4 26 8 74
            1 85 0 13 2 61 6 7 8 64 9 76 5 47 3 52 4 90 7 45
            """;

    @Nested
    @DisplayName("job shops")
    class JobShops {

        @ParameterizedTest
        @EnumSource(DispatchRule.class)
        @DisplayName(
                "the optimum of Fisher and Thompson's six jobs lies between the bound and the schedule of each rule")
        void six_jobs(DispatchRule rule) {
            Machines machines = Machines.of(6).jobs(FT06);

            assertThat(machines.bound()).isLessThanOrEqualTo(55);
            assertThat(machines.by(rule).maxLateness().orElseThrow()).isGreaterThanOrEqualTo(55);
        }

        @ParameterizedTest
        @EnumSource(DispatchRule.class)
        @DisplayName("and so does that of their ten")
        void ten_jobs(DispatchRule rule) {
            Machines machines = Machines.of(10).jobs(FT10);

            assertThat(machines.bound()).isLessThanOrEqualTo(930);
            assertThat(machines.by(rule).maxLateness().orElseThrow()).isGreaterThanOrEqualTo(930);
        }

        // J. Carlier and E. Pinson, An algorithm for solving the job-shop problem, Management Science 35, 1989; from
        // memory.
        @Test
        @DisplayName("the bound of the ten jobs is the published one-machine bound")
        void one_machine_bound() {
            assertThat(Machines.of(10).jobs(FT10).bound()).isEqualTo(808);
        }
    }

    @Nested
    @DisplayName("one machine")
    class OneMachine {

        // J. Carlier, The one-machine sequencing problem, European Journal of Operational Research 11, 1982: seven jobs
        // with
        // heads, times and tails; Schrage's schedule ends at 53, the best at 50; from memory. The bound of jobs 2, 3
        // and 4 by
        // hand: the least head 11, all times 17, the least tail 21.
        private Machines carlier() {
            return Machines.of(1)
                    .job("1", 10, 5, 7, 0)
                    .job("2", 13, 6, 26, 0)
                    .job("3", 11, 7, 24, 0)
                    .job("4", 20, 4, 21, 0)
                    .job("5", 30, 3, 8, 0)
                    .job("6", 0, 6, 17, 0)
                    .job("7", 30, 2, 0, 0);
        }

        @Test
        @DisplayName("no schedule of Carlier's seven jobs ends before his bound of three of them")
        void bound_with_heads_and_tails() {
            assertThat(carlier().bound()).isEqualTo(11 + 17 + 21);
        }

        @Test
        @DisplayName("and end at 53 where the job with the longest tail goes first, as Schrage's do")
        void schrage() {
            assertThat(carlier().by(DispatchRule.LEAST_SLACK).maxLateness()).hasValue(53);
        }

        // J. Heizer and B. Render, Operations Management, chapter on short-term scheduling: five jobs on one machine,
        // with the
        // days late by rule; from memory.
        private Machines textbook() {
            return Machines.of(1)
                    .job("A", 6, 8)
                    .job("B", 2, 6)
                    .job("C", 8, 18)
                    .job("D", 3, 15)
                    .job("E", 9, 23);
        }

        private static int daysLate(FiniteSchedule schedule) {
            return IntStream.range(0, schedule.orders().size())
                    .map(schedule::lateness)
                    .filter(days -> days > 0)
                    .sum();
        }

        @ParameterizedTest
        @CsvSource({"SHORTEST, BDACE, 9", "EARLIEST_DUE, BADCE, 6"})
        @DisplayName("five jobs come in the textbook's sequence with its days late")
        void by_rule(DispatchRule rule, String sequence, int daysLate) {
            FiniteSchedule schedule = textbook().by(rule);

            assertThat(Machines.sequence(schedule)).isEqualTo(sequence);
            assertThat(daysLate(schedule)).isEqualTo(daysLate);
        }

        @Test
        @DisplayName("as they stand in the list they have the textbook's days late too")
        void as_listed() {
            assertThat(daysLate(textbook().inSequence(List.of(0, 1, 2, 3, 4)))).isEqualTo(11);
        }

        // 'The following jobs are waiting to be scheduled. Today is day 9', marketingmcq.blogspot.com, December 2018:
        // five jobs
        // with arrival, time and due date; the answers are C-D-E-A-B and A-D-C-E-B.
        @ParameterizedTest
        @CsvSource({"FIRST_COME, CDEAB", "EARLIEST_DUE, ADCEB"})
        @DisplayName("jobs that came before the machine opens are taken by their rule")
        void waiting_since_earlier(DispatchRule rule, String sequence) {
            FiniteSchedule schedule = Machines.open(1, day -> day.isAfter(Machines.FIRST.plusDays(8)))
                    .job("A", 4, 2, 0, 12)
                    .job("B", 5, 12, 0, 30)
                    .job("C", 1, 6, 0, 21)
                    .job("D", 2, 1, 0, 14)
                    .job("E", 3, 10, 0, 28)
                    .by(rule);

            assertThat(Machines.sequence(schedule)).isEqualTo(sequence);
        }
    }

    @Nested
    @DisplayName("two machines in a row")
    class FlowShop {

        // S. M. Johnson's rule, 1954: B, E, D, C, A; kewhl.tripod.com/solution6.htm, which repeats the example of J.
        // Heizer and
        // B. Render, Operations Management (35 hours; from memory).
        private Machines five() {
            return Machines.of(2).jobs("""
                    0 5 1 2
                    0 3 1 6
                    0 8 1 4
                    0 10 1 7
                    0 7 1 12
                    """);
        }

        @Test
        @DisplayName("Johnson's sequence ends when the book says")
        void johnson() {
            assertThat(five().inSequence(List.of(1, 4, 3, 2, 0)).maxLateness()).hasValue(35);
        }

        @Test
        @DisplayName("none of all 120 sequences ends earlier, and the bound proves it")
        void no_sequence_is_better() {
            assertThat(five().leastOfAllSequences()).isEqualTo(35);
            assertThat(five().bound()).isEqualTo(35);
        }

        @Test
        @DisplayName("the sequence of the list ends later: a bound is no schedule")
        void another_sequence() {
            assertThat(five().inSequence(List.of(0, 1, 2, 3, 4)).maxLateness().orElseThrow())
                    .isGreaterThan(35);
        }
    }
}
