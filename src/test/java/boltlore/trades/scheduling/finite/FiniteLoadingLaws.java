package boltlore.trades.scheduling.finite;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.trades.scheduling.finite.FiniteSchedule.Link;
import boltlore.trades.scheduling.finite.FiniteSchedule.Placed;
import boltlore.trades.scheduling.finite.ShopOrder.Step;
import boltlore.trades.scheduling.finite.ShopOrder.Work;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

@Label("Whatever the work, a schedule")
class FiniteLoadingLaws {

    private static final LocalDate FIRST = LocalDate.of(2026, 3, 2);
    private static final LocalDate HOLIDAY = LocalDate.of(2026, 3, 17);

    private static boolean works(LocalDate day) {
        return day.getDayOfWeek() != DayOfWeek.SATURDAY
                && day.getDayOfWeek() != DayOfWeek.SUNDAY
                && !day.equals(HOLIDAY);
    }

    /** Three centres of one to three stations with days of five to eight hours, some orders of a few steps each. */
    private static FiniteSchedule schedule(long seed, DispatchRule rule) {
        Random random = new Random(seed);
        List<Shop.Centre> centres = IntStream.range(0, 3)
                .mapToObj(c -> new Shop.Centre(
                        "centre " + c,
                        1 + random.nextInt(3),
                        new OpenTime(
                                FIRST,
                                300 + random.nextInt(180),
                                7_000 + random.nextInt(9_000),
                                FiniteLoadingLaws::works)))
                .toList();
        List<ShopOrder> orders = IntStream.range(0, 1 + random.nextInt(6))
                .mapToObj(o -> new ShopOrder("order " + o, random.nextInt(40), random.nextInt(5) > 0, steps(random)))
                .toList();
        return FiniteLoading.schedule(new Shop(FIRST, centres), orders, rule);
    }

    private static List<Step> steps(Random random) {
        List<Step> steps = new ArrayList<>();
        for (int i = 0; i < 1 + random.nextInt(6); i++) {
            int place = i;
            List<Integer> after = IntStream.range(0, i)
                    .filter(before -> before == place - 1 || random.nextInt(3) == 0)
                    .boxed()
                    .toList();
            List<Work> work = IntStream.range(0, random.nextInt(4))
                    .mapToObj(w -> new Work(random.nextInt(3), 1 + random.nextInt(900)))
                    .toList();
            steps.add(new Step(random.nextInt(5), random.nextInt(6), work, after));
        }
        return steps;
    }

    @Property(tries = 300)
    @Label("gives no centre more work on a day than its stations are open")
    void within_capacity(@ForAll long seed, @ForAll DispatchRule rule) {
        FiniteSchedule schedule = schedule(seed, rule);

        for (int c = 0; c < schedule.shop().centres().size(); c++) {
            Shop.Centre centre = schedule.shop().centres().get(c);
            schedule.minutesByDay(c).forEach((day, minutes) -> {
                assertThat(works(schedule.shop().date(day))).isTrue();
                assertThat(minutes)
                        .isLessThanOrEqualTo(
                                (long) centre.stations() * (centre.open().minutesPerDay() + 1));
            });
        }
    }

    @Property(tries = 300)
    @Label("has one job at a time on each station")
    void one_at_a_time(@ForAll long seed, @ForAll DispatchRule rule) {
        FiniteSchedule schedule = schedule(seed, rule);

        for (Placed placed : schedule.all()) {
            assertThat(placed.station())
                    .isBetween(0, schedule.shop().centres().get(placed.centre()).stations() - 1);
            if (placed.before() != null) {
                assertThat(placed.start())
                        .isGreaterThanOrEqualTo(placed.before().end());
            }
        }
    }

    @Property(tries = 300)
    @Label("keeps the order of steps and of the work in them, and the days that each takes")
    void precedence(@ForAll long seed, @ForAll DispatchRule rule) {
        FiniteSchedule schedule = schedule(seed, rule);

        for (int o = 0; o < schedule.orders().size(); o++) {
            List<Step> steps = schedule.orders().get(o).steps();
            for (int i = 0; i < steps.size(); i++) {
                int start = schedule.start(o, i);
                for (int before : steps.get(i).after()) {
                    assertThat(start).isGreaterThanOrEqualTo(schedule.finish(o, before));
                }
                assertThat(start).isGreaterThanOrEqualTo(steps.get(i).release());
                assertThat(schedule.finish(o, i))
                        .isGreaterThanOrEqualTo(start + steps.get(i).days());
                long time = Shop.morningAfter(start);
                for (Placed placed : schedule.placed(o, i)) {
                    assertThat(placed.start()).isGreaterThanOrEqualTo(time);
                    time = placed.end();
                    assertThat(Shop.endDay(time)).isLessThanOrEqualTo(schedule.finish(o, i));
                }
            }
        }
    }

    @Property(tries = 300)
    @Label("loses no work and gives each its minutes")
    void nothing_lost(@ForAll long seed, @ForAll DispatchRule rule) {
        FiniteSchedule schedule = schedule(seed, rule);

        for (int o = 0; o < schedule.orders().size(); o++) {
            List<Step> steps = schedule.orders().get(o).steps();
            for (int i = 0; i < steps.size(); i++) {
                List<Placed> placed = schedule.placed(o, i);
                assertThat(placed.stream().map(Placed::centre))
                        .containsExactlyElementsOf(
                                steps.get(i).work().stream().map(Work::centre).toList());
                for (int k = 0; k < placed.size(); k++) {
                    OpenTime open = schedule.shop().open(placed.get(k).centre());
                    long given = open.given(placed.get(k).end())
                            - open.given(placed.get(k).start());
                    assertThat(given)
                            .isGreaterThanOrEqualTo(steps.get(i).work().get(k).minutes() * OpenTime.PARTS);
                }
            }
        }
    }

    @Property(tries = 100)
    @Label("is the same every time")
    void same_every_time(@ForAll long seed, @ForAll DispatchRule rule) {
        assertThat(schedule(seed, rule).all()).isEqualTo(schedule(seed, rule).all());
    }

    @Property(tries = 300)
    @Label("ends no order before the day on which it could be finished with every station free")
    void not_before_earliest(@ForAll long seed, @ForAll DispatchRule rule) {
        FiniteSchedule schedule = schedule(seed, rule);

        for (int o = 0; o < schedule.orders().size(); o++) {
            assertThat(schedule.finish(o))
                    .isGreaterThanOrEqualTo(schedule.windows(o).earliest());
        }
    }

    @Property(tries = 300)
    @Label("is nowhere better than the bound")
    void bound_holds(@ForAll long seed, @ForAll DispatchRule rule) {
        FiniteSchedule schedule = schedule(seed, rule);

        schedule.maxLateness()
                .ifPresent(reached -> assertThat(LatenessBound.days(schedule.shop(), schedule.orders(), reached)
                                .orElseThrow())
                        .isLessThanOrEqualTo(reached));
    }

    @Property(tries = 300)
    @Label("has for each order a chain without gaps from its beginning to its end")
    void chain_without_gaps(@ForAll long seed, @ForAll DispatchRule rule) {
        FiniteSchedule schedule = schedule(seed, rule);

        for (int o = 0; o < schedule.orders().size(); o++) {
            List<Link> chain = schedule.chain(o);
            if (chain.isEmpty()) {
                continue;
            }
            assertThat(chain.get(chain.size() - 1).to()).isEqualTo(schedule.finish(o));
            for (int i = 1; i < chain.size(); i++) {
                assertThat(chain.get(i).from()).isEqualTo(chain.get(i - 1).to());
            }
            // A first step that takes no day leaves no link, so the beginning is some step's.
            assertThat(schedule.orders().get(o).steps().stream().map(Step::release))
                    .contains(chain.get(0).from());
        }
    }

    // J. R. Jackson, 1955: where all jobs are there, the rule of the earliest due date is best for the largest
    // lateness.
    @Property(tries = 60)
    @Label("of one machine by earliest due date is the best of all sequences, and the bound says so")
    void jackson(@ForAll long seed, @ForAll @IntRange(min = 1, max = 6) int jobs) {
        Random random = new Random(seed);
        Machines machines = Machines.of(1);
        IntStream.range(0, jobs).forEach(job -> machines.job("job " + job, 1 + random.nextInt(9), random.nextInt(30)));

        int byRule = machines.by(DispatchRule.EARLIEST_DUE).maxLateness().orElseThrow();

        assertThat(byRule).isEqualTo(machines.leastOfAllSequences()).isEqualTo(machines.bound());
    }
}
