package boltlore.trades.scheduling.finite;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.DayOfWeek;
import java.time.LocalDate;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("A station of ten hours a day, closed at weekends, gives its work")
class OpenTimeTest {

    private static final LocalDate MONDAY = LocalDate.of(2026, 3, 2);
    private static final int HOURS = 600;

    private static OpenTime at(double rate) {
        return new OpenTime(
                MONDAY,
                HOURS,
                Math.round(rate * OpenTime.PARTS),
                day -> day.getDayOfWeek() != DayOfWeek.SATURDAY && day.getDayOfWeek() != DayOfWeek.SUNDAY);
    }

    /** Minutes from Monday's midnight. */
    private static long at(int day, int minute) {
        return (long) day * OpenTime.DAY + minute;
    }

    @Test
    @DisplayName("within the day where it fits")
    void within_the_day() {
        assertThat(at(1).after(at(0, 0), HOURS)).isEqualTo(at(0, HOURS));
    }

    @Test
    @DisplayName("with the last minute on the next morning where it is a minute longer")
    void into_the_next_day() {
        assertThat(at(1).after(at(0, 0), HOURS + 1)).isEqualTo(at(1, 1));
    }

    @Test
    @DisplayName("on Monday what is begun on Friday evening")
    void over_the_weekend() {
        assertThat(at(1).after(at(4, HOURS - 10), 30)).isEqualTo(at(7, 20));
    }

    @Test
    @DisplayName("more slowly by its efficiency, rounded up to a minute")
    void efficiency() {
        assertThat(at(0.75).after(at(0, 0), 60)).isEqualTo(at(0, 80));
        assertThat(at(0.9).after(at(0, 0), 60)).isEqualTo(at(0, 67));
    }

    @Test
    @DisplayName("faster by as many as work on it together")
    void together() {
        assertThat(at(2).after(at(0, 0), 60)).isEqualTo(at(0, 30));
    }

    @Test
    @DisplayName("in time where it is begun as late as told, and not where a minute later")
    void latest_begin() {
        OpenTime open = at(0.75);
        long by = at(8, 0);
        long latest = open.before(by, 500);

        assertThat(open.after(latest, 500)).isLessThanOrEqualTo(by);
        assertThat(open.after(latest + 1, 500)).isGreaterThan(by);
    }

    @Test
    @DisplayName("from the next opening on")
    void opening() {
        assertThat(at(1).opening(at(0, 5))).isEqualTo(at(0, 5));
        assertThat(at(1).opening(at(4, HOURS))).isEqualTo(at(7, 0));
        assertThat(at(1).opening(at(5, 3))).isEqualTo(at(7, 0));
    }

    @Test
    @DisplayName("on every day before the first, of which nothing is known")
    void before_the_first_day() {
        assertThat(at(1).before(at(0, 0), HOURS)).isEqualTo(at(-1, 0));
        assertThat(at(1).before(at(0, 30), HOURS + 60)).isEqualTo(at(-2, HOURS - 30));
    }
}
