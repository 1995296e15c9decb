package boltlore.trades.scheduling.finite;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.trades.scheduling.finite.FiniteSchedule.Link;
import boltlore.trades.scheduling.finite.FiniteSchedule.Why;
import boltlore.trades.scheduling.finite.ShopOrder.Step;
import boltlore.trades.scheduling.finite.ShopOrder.Work;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** Loaded by hand: a bench of eight hours a day from Monday to Friday, the plan made on a Sunday evening, day 0. */
@DisplayName("A bench of eight hours a day")
class FiniteScheduleTest {

    private static final LocalDate SUNDAY = LocalDate.of(2026, 3, 1);
    private static final int HOUR = 60;

    private static Shop bench(int stations) {
        return new Shop(
                SUNDAY,
                List.of(new Shop.Centre(
                        "bench",
                        stations,
                        new OpenTime(
                                SUNDAY,
                                8 * HOUR,
                                OpenTime.PARTS,
                                day -> day.getDayOfWeek() != DayOfWeek.SATURDAY
                                        && day.getDayOfWeek() != DayOfWeek.SUNDAY))));
    }

    private static ShopOrder order(String name, int hours, int due) {
        return new ShopOrder(name, due, true, List.of(new Step(0, 0, hours(hours), List.of())));
    }

    private static List<Work> hours(int hours) {
        return List.of(new Work(0, (long) hours * HOUR));
    }

    private static final List<ShopOrder> ORDERS = List.of(order("A", 12, 4), order("B", 6, 2), order("C", 30, 9));

    @Test
    @DisplayName("does B, A and C one after the other, full on each day but the last")
    void one_station() {
        FiniteSchedule schedule = FiniteLoading.schedule(bench(1), ORDERS, DispatchRule.EARLIEST_DUE);

        // Mon B6 A2, Tue A8, Wed A2 C6, Thu C8, Fri C8, Mon C8: 48 hours in six days.
        assertThat(schedule.minutesByDay(0)).isEqualTo(Map.of(1, 480L, 2, 480L, 3, 480L, 4, 480L, 5, 480L, 8, 480L));
        assertThat(List.of(schedule.finish(0), schedule.finish(1), schedule.finish(2)))
                .containsExactly(3, 1, 8);
    }

    @Test
    @DisplayName("with a second station does two at a time, but no job at two stations")
    void two_stations() {
        FiniteSchedule schedule = FiniteLoading.schedule(bench(2), ORDERS, DispatchRule.EARLIEST_DUE);

        // Station 1: Mon B6 C2, Tue to Thu C8, Fri C4. Station 2: Mon A8, Tue A4.
        assertThat(schedule.minutesByDay(0)).isEqualTo(Map.of(1, 960L, 2, 720L, 3, 480L, 4, 480L, 5, 240L));
        assertThat(List.of(schedule.finish(0), schedule.finish(1), schedule.finish(2)))
                .containsExactly(2, 1, 5);
    }

    @Test
    @DisplayName("lets C wait for what is due before it, and its chain says how long")
    void waits() {
        FiniteSchedule schedule = FiniteLoading.schedule(bench(1), ORDERS, DispatchRule.EARLIEST_DUE);

        assertThat(schedule.chain(2)).containsExactly(new Link(0, Why.WAIT, 0, 0, 2), new Link(0, Why.WORK, 0, 2, 8));
        assertThat(schedule.chain(1)).containsExactly(new Link(0, Why.WORK, 0, 0, 1));
    }

    @Test
    @DisplayName("begins what follows on the next morning, after the days that a step takes at least")
    void days_of_a_step() {
        ShopOrder order = new ShopOrder(
                "A", 20, true, List.of(new Step(0, 3, hours(1), List.of()), new Step(0, 0, hours(1), List.of(0))));

        FiniteSchedule schedule = FiniteLoading.schedule(bench(1), List.of(order), DispatchRule.EARLIEST_DUE);

        assertThat(schedule.finish(0, 0)).isEqualTo(3);
        assertThat(schedule.finish(0, 1)).isEqualTo(4);
        assertThat(schedule.chain(0)).containsExactly(new Link(0, Why.DAYS, -1, 0, 3), new Link(1, Why.WORK, 0, 3, 4));
    }

    @Test
    @DisplayName("says by when C and A must be begun for their dates, counted back by hand")
    void latest() {
        Windows ofC = Windows.of(ORDERS.get(2), bench(1));
        Windows ofA = Windows.of(ORDERS.get(0), bench(1));

        // C: 30 hours before the evening of Tuesday, day 9: 8 + 8 + 8 + 6 back to Thursday, day 5 being Friday.
        assertThat(ofC.latestBegin(0, 0)).isEqualTo(4L * OpenTime.DAY + 2 * HOUR);
        // A: 12 hours before the evening of Thursday, day 4: 8 and 4 on Wednesday.
        assertThat(ofA.latestBegin(0, 0)).isEqualTo(3L * OpenTime.DAY + 4 * HOUR);
        assertThat(ofA.latestStart(0)).isEqualTo(2);
    }
}
