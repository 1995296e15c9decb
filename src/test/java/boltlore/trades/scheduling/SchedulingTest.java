package boltlore.trades.scheduling;

import static boltlore.trades.scheduling.Planned.dated;
import static boltlore.trades.scheduling.Planned.kits;
import static boltlore.trades.scheduling.Planned.planned;
import static boltlore.trades.scheduling.Planned.typed;
import static org.assertj.core.api.Assertions.assertThat;

import boltlore.catalogue.Capacity;
import boltlore.catalogue.Capacity.WorkCentre;
import boltlore.catalogue.Operation;
import boltlore.demo.Demo;
import boltlore.faults.Fault;
import boltlore.faults.Outcome;
import boltlore.findings.Finding;
import boltlore.findings.Kind;
import boltlore.findings.Sentences;
import boltlore.report.Approved;
import boltlore.report.text.TextWriter;
import boltlore.trades.KitFinding;
import boltlore.trades.KitInWork;
import boltlore.trades.TradeOption.Given;
import boltlore.trades.TradeResult;
import boltlore.trades.coating.CoatPlan;
import boltlore.trades.coating.CoatPlanner;
import boltlore.trades.costing.Job;
import boltlore.trades.scheduling.SchedulingFinding.SetBy;
import boltlore.trades.scheduling.finite.DispatchRule;
import boltlore.trades.scheduling.finite.FiniteSchedule.Placed;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

@DisplayName("The work schedule")
class SchedulingTest {

    private static final List<String> THREE = List.of("bl-1001", "bl-1002", "bl-1003");
    private static final String MAY = "--on 2026-05-11";

    private static List<Kind> kinds(TradeResult result) {
        return result.findings().all().stream().map(Finding::kind).distinct().toList();
    }

    private static Finding first(TradeResult result, Kind kind) {
        return result.findings().all().stream()
                .filter(finding -> finding.kind() == kind)
                .findFirst()
                .orElseThrow();
    }

    private static WorkPlan plan(Capacity capacity) {
        return WorkPlan.of(
                kits(THREE, capacity), capacity, LocalDate.of(2026, 5, 11), DispatchRule.EARLIEST_DUE, Map.of());
    }

    @Test
    @DisplayName("reads as approved")
    void approved() {
        TradeResult result = planned(kits(THREE, Planned.demo()), MAY + " --add-hours bend=10");

        Approved.check(
                "trades/scheduling/three-orders",
                new TextWriter(200).text(result.sheets().get(0).report().get()));
    }

    @Test
    @DisplayName("is the same whichever way the orders are given")
    void any_way_round() {
        String one = text(planned(kits(THREE, Planned.demo()), MAY));
        String other = text(planned(kits(List.of("bl-1003", "bl-1001", "bl-1002"), Planned.demo()), MAY));

        assertThat(other).isEqualTo(one);
    }

    private static String text(TradeResult result) {
        return new TextWriter(200).text(result.sheets().get(0).report().get());
    }

    @Nested
    @DisplayName("finds")
    class Findings {

        @Test
        @DisplayName("an order that is finished after its date, and what sets the day")
        void late() {
            TradeResult result = planned(kits(List.of("bl-1001"), Planned.demo()), MAY);

            assertThat(first(result, SchedulingFinding.ORDER_LATE).says())
                    .startsWith("Order BL-1001 is due on 2026-06-19 and finished on 2026-07-01, 8 working days later.")
                    .endsWith("takes 28 days, the wait for a round among them.");
        }

        @Test
        @DisplayName("none late that is finished on its very day")
        void in_time() {
            LocalDate placed = LocalDate.of(2026, 5, 11);
            LocalDate finished = LocalDate.of(2026, 7, 5);

            TradeResult late = planned(List.of(dated("bl-1001", placed, finished.minusDays(1), Planned.demo())), MAY);
            TradeResult inTime = planned(List.of(dated("bl-1001", placed, finished, Planned.demo())), MAY);

            assertThat(kinds(late)).contains(SchedulingFinding.ORDER_LATE);
            assertThat(kinds(inTime)).doesNotContain(SchedulingFinding.ORDER_LATE);
        }

        @Test
        @DisplayName("a date that was over before the plan, and not one that is over on its evening")
        void due_date_past() {
            TradeResult past = planned(kits(List.of("bl-1001"), Planned.demo()), "--on 2026-06-20");
            TradeResult onTheDay = planned(kits(List.of("bl-1001"), Planned.demo()), "--on 2026-06-19");

            assertThat(kinds(past)).contains(SchedulingFinding.DUE_DATE_PAST);
            assertThat(kinds(past)).doesNotContain(SchedulingFinding.ORDER_LATE);
            assertThat(kinds(onTheDay)).contains(SchedulingFinding.ORDER_LATE);
            assertThat(kinds(onTheDay)).doesNotContain(SchedulingFinding.DUE_DATE_PAST);
        }

        @Test
        @DisplayName("a week in which a centre has too few hours, and for whom; none with one shift more")
        void week_overloaded() {
            Capacity slow = Planned.with("weld", Planned.hours("2"));
            TradeResult few = planned(kits(THREE, slow), MAY);
            TradeResult more = planned(kits(THREE, slow), MAY + " --add-hours weld=40");

            assertThat(first(few, SchedulingFinding.WEEK_OVERLOADED).says())
                    .startsWith("Welding, week 2026-W20 from 2026-05-11: ")
                    .contains("hours are needed and 8.0 are there")
                    .endsWith("for BL-1001, BL-1002.");
            assertThat(kinds(more)).doesNotContain(SchedulingFinding.WEEK_OVERLOADED);
        }

        @Test
        @DisplayName("an operation that no work centre takes, and promises no date")
        void operation_without_centre() {
            TradeResult result = planned(kits(THREE, Planned.with("saw", centre -> null)), MAY);

            assertThat(first(result, SchedulingFinding.OPERATION_WITHOUT_CENTRE).says())
                    .isEqualTo(
                            "No work centre takes \"saw\": its time is not in the plan, and no date is promised for BL-1001,"
                                    + " BL-1002, BL-1003.");
            assertThat(text(result))
                    .contains("Not promised: some of its work is not in the plan")
                    .contains("not said: some work is not in");
        }

        @Test
        @DisplayName("a work centre of which nobody has said the hours")
        void centre_without_hours() {
            TradeResult result = planned(kits(THREE, Planned.with("oven", Planned.open(null))), MAY);

            assertThat(first(result, SchedulingFinding.CENTRE_WITHOUT_HOURS).says())
                    .startsWith("Own oven: nobody has said how many hours it has, so that its work (powder run)");
            assertThat(kinds(planned(kits(THREE, Planned.demo()), MAY)))
                    .doesNotContain(SchedulingFinding.CENTRE_WITHOUT_HOURS, SchedulingFinding.OPERATION_WITHOUT_CENTRE);
        }

        @Test
        @DisplayName("that work on the kit is not in the plan where no prices are written down, and promises no date")
        void no_prices() {
            TradeResult result = planned(List.of(Planned.withoutPrices("bl-1001")), MAY);

            assertThat(first(result, KitFinding.NOT_JUDGED).says()).contains("workshop/pricing.json");
            assertThat(text(result)).contains("Not promised: some of its work is not in the plan");
        }

        @Test
        @DisplayName("that nothing can be judged where no capacity is written down")
        void no_capacity() {
            assertThat(kinds(planned(kits(THREE, null), MAY))).containsExactly(KitFinding.NOT_JUDGED);
        }

        @ParameterizedTest
        @EnumSource(SetBy.class)
        @DisplayName("what sets a day, in three languages with the same arguments")
        void in_three_languages(SetBy kind) {
            for (Locale locale : List.of(Locale.ENGLISH, Locale.GERMAN, Locale.FRENCH)) {
                assertThat(Sentences.pattern(kind, locale)).contains("{days");
            }
        }
    }

    @Nested
    @DisplayName("names what sets the day of an order:")
    class Constraint {

        private Kind of(Capacity capacity, @Nullable LocalDate placed, String order) {
            KitInWork kit = dated(order, placed, LocalDate.of(2026, 12, 4), capacity);
            LocalDate on = LocalDate.of(2026, 5, 11);
            return SetDate.of(WorkPlan.of(List.of(kit), capacity, on, DispatchRule.EARLIEST_DUE, Map.of()), 0)
                    .kind();
        }

        @Test
        @DisplayName("the bought part that comes last")
        void delivery() {
            assertThat(of(Planned.demo(), LocalDate.of(2026, 5, 11), "bl-1001")).isEqualTo(SetBy.PART_DELIVERED);
        }

        @Test
        @DisplayName("the longest step in the house where all has been delivered")
        void step() {
            assertThat(of(Planned.demo(), LocalDate.of(2026, 3, 9), "bl-1001")).isEqualTo(SetBy.PART_COATED);
        }

        @Test
        @DisplayName("the work centre that it waits for")
        void centre() {
            assertThat(of(Planned.with("laser", Planned.hours("0.5")), LocalDate.of(2026, 3, 9), "bl-1001"))
                    .isEqualTo(SetBy.CENTRE_FULL);
        }

        @Test
        @DisplayName("the kit's own work where that goes beyond its days")
        void kit() {
            assertThat(of(Planned.with("assembly", Planned.hours("1")), LocalDate.of(2026, 5, 11), "bl-1008"))
                    .isIn(SetBy.KIT_BEYOND_ITS_DAYS, SetBy.CENTRE_FULL);
        }
    }

    @Nested
    @DisplayName("holds")
    class Work {

        private long minutes(WorkPlan plan, int order, Set<String> operations) {
            return plan.schedule().all().stream()
                    .filter(placed -> placed.order() == order)
                    .filter(placed -> operations.contains(operation(plan, placed)))
                    .mapToLong(placed -> plan.schedule()
                            .orders()
                            .get(order)
                            .steps()
                            .get(placed.step())
                            .work()
                            .get(placed.work())
                            .minutes())
                    .sum();
        }

        private static String operation(WorkPlan plan, Placed placed) {
            return plan.orders()
                    .get(placed.order())
                    .steps()
                    .get(placed.step())
                    .operations()
                    .get(placed.work());
        }

        @Test
        @DisplayName(
                "all minutes of the job cards, each operation rounded up and none lost; what is outside takes none")
        void minutes_of_job_cards() {
            WorkPlan plan = plan(Planned.demo());
            Set<String> outside = Set.of("plasma cut");
            for (int order = 0; order < plan.orders().size(); order++) {
                List<Job> jobs = Job.of(plan.orders().get(order).pricing().costed());
                List<Operation> operations = jobs.stream()
                        .flatMap(job -> job.part().making().operations().stream())
                        .toList();
                BigDecimal exact = jobs.stream()
                        .flatMap(job -> job.part().making().operations().stream()
                                .filter(operation -> !outside.contains(operation.operation()))
                                .map(job::minutes))
                        .reduce(BigDecimal.ZERO, BigDecimal::add);
                Set<String> inHouse = operations.stream()
                        .map(Operation::operation)
                        .filter(operation -> !outside.contains(operation))
                        .collect(java.util.stream.Collectors.toSet());

                assertThat(BigDecimal.valueOf(minutes(plan, order, inHouse)))
                        .isBetween(exact, exact.add(BigDecimal.valueOf(operations.size())));
                assertThat(minutes(plan, order, outside)).isZero();
            }
        }

        /** Of the demo: the longest change of powder takes 45 minutes. */
        @Test
        @DisplayName("the oven's minutes of each order coated alone, with the longest change of powder before each run")
        void oven_minutes() {
            WorkPlan plan = plan(Planned.demo());
            for (int order = 0; order < plan.orders().size(); order++) {
                CoatPlan alone =
                        CoatPlanner.plan(List.of(plan.orders().get(order).kit().bill()), Demo.catalogue());

                assertThat(alone.runs()).isNotEmpty();
                assertThat(minutes(plan, order, Set.of("powder run")))
                        .isEqualTo(45L * alone.runs().size() + inTheOven(alone));
            }
        }

        private static int inTheOven(CoatPlan plan) {
            return plan.runs().stream()
                    .flatMap(run -> run.queues().stream())
                    .flatMapToInt(queue -> queue.loads().stream().mapToInt(queue::minutesOf))
                    .sum();
        }

        @Test
        @DisplayName("no fewer oven minutes than the orders take together, with every change of powder")
        void never_too_few() {
            WorkPlan plan = plan(Planned.demo());
            CoatPlan together = CoatPlanner.plan(
                    plan.orders().stream().map(work -> work.kit().bill()).toList(), Demo.catalogue());
            int changes = together.runs().stream()
                    .flatMap(run -> Stream.ofNullable(run.changeOver()))
                    .mapToInt(change -> change.work().minutes())
                    .sum();

            assertThat(IntStream.range(0, 3)
                            .mapToLong(order -> minutes(plan, order, Set.of("powder run")))
                            .sum())
                    .isGreaterThanOrEqualTo(changes + inTheOven(together));
        }

        @Test
        @DisplayName("in its weeks what is needed, down to the minute, and no more set than there is")
        void weeks() {
            WorkPlan plan = plan(Planned.demo());
            List<WeekLoad> loads = WeekLoad.of(plan);
            long all = plan.schedule().orders().stream()
                    .flatMap(order -> order.steps().stream())
                    .flatMap(step -> step.work().stream())
                    .mapToLong(work -> work.minutes())
                    .sum();

            assertThat(loads.stream().mapToLong(WeekLoad::needed).sum()).isEqualTo(all);
            assertThat(loads).allSatisfy(load -> assertThat(load.set()).isLessThanOrEqualTo(load.available() + 5));
        }
    }

    @Nested
    @DisplayName("takes options:")
    class Options {

        @Test
        @DisplayName("hours that are added finish no order later here, and the sheet compares both")
        void add_hours() {
            TradeResult result =
                    planned(kits(THREE, Planned.demo()), MAY + " --add-hours bend=20 --add-hours laser=10");
            String text = text(result);

            assertThat(text).contains("What the added hours change");
            assertThat(text(planned(kits(THREE, Planned.demo()), MAY))).doesNotContain("What the added hours change");
            WorkPlan before = plan(Planned.demo());
            WorkPlan after = WorkPlan.of(
                    kits(THREE, Planned.demo()),
                    Planned.demo(),
                    LocalDate.of(2026, 5, 11),
                    DispatchRule.EARLIEST_DUE,
                    Map.of("bend", BigDecimal.valueOf(20), "laser", BigDecimal.TEN));
            assertThat(IntStream.range(0, 3).boxed().toList())
                    .allSatisfy(order -> assertThat(after.finish(order)).isBeforeOrEqualTo(before.finish(order)));
        }

        @ParameterizedTest
        @CsvSource({
            "--add-hours wold=10, 'wold', Did you mean 'weld'?",
            "--add-hours weld=9999, 9999 more hours, Add a station in workshop/capacity.json."
        })
        @DisplayName("hours at a work centre that is not there, or that no day has, are refused")
        void impossible_hours(String words, String found, String advice) {
            Given given = ((Outcome.Sound<Given>) typed(words)).value();

            assertThat(Planned.TRADE.faults(given, Demo.catalogue()))
                    .singleElement()
                    .satisfies(fault -> {
                        assertThat(fault.found()).contains(found);
                        assertThat(fault.advice()).isEqualTo(advice);
                    });
        }

        @Test
        @DisplayName("hours that just fit into the day are taken")
        void whole_day() {
            WorkCentre weld = Planned.demo().centres().stream()
                    .filter(centre -> centre.name().equals("weld"))
                    .findFirst()
                    .orElseThrow();
            BigDecimal left = BigDecimal.valueOf(24)
                    .subtract(java.util.Objects.requireNonNull(weld.open()).hoursPerDay())
                    .multiply(BigDecimal.valueOf(5));

            assertThat(faults("--add-hours weld=" + left.toPlainString())).isEmpty();
            assertThat(faults("--add-hours weld=" + left.add(BigDecimal.ONE).toPlainString()))
                    .hasSize(1);
        }

        private static List<Fault> faults(String words) {
            return Planned.TRADE.faults(((Outcome.Sound<Given>) typed(words)).value(), Demo.catalogue());
        }

        @ParameterizedTest
        @CsvSource({"--add-hours weld", "--add-hours weld=-3", "--rule soonest", "--on yesterday"})
        @DisplayName("what cannot be read is refused")
        void unreadable(String words) {
            assertThat(typed(words).faults()).hasSize(1);
        }

        @ParameterizedTest
        @EnumSource(DispatchRule.class)
        @DisplayName("each rule can be taken, and the sheet says which")
        void rules(DispatchRule rule) {
            assertThat(text(planned(kits(THREE, Planned.demo()), MAY + " --rule " + rule.written())))
                    .containsPattern(rule.says() + " +this plan");
        }
    }
}
