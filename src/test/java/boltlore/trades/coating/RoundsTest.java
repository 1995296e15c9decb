package boltlore.trades.coating;

import static boltlore.trades.coating.SampleOrders.order;
import static org.assertj.core.api.Assertions.assertThat;

import boltlore.bill.Bill;
import boltlore.catalogue.Catalogue;
import boltlore.catalogue.EnvelopeMm;
import boltlore.catalogue.Feature;
import boltlore.catalogue.Finish;
import boltlore.catalogue.Part;
import boltlore.catalogue.PowderCoat;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

/** Rounds of ten days; a load takes 45 + 15 of the 480 minutes of a day. */
class RoundsTest {

    private static final Finish BLACK = SampleShop.own("black", SampleShop.BLACK);
    private static final Finish WHITE = SampleShop.own("white", SampleShop.coats("PB-WHITE", "1.5", 80));
    private static final Finish TWO_COAT = SampleShop.own("two-coat", SampleShop.PRIMER, SampleShop.BLACK);
    private static final Part BRACKET = SampleShop.part("BR-1", SampleShop.coat("0.5"));
    private static final Part PLATE = SampleShop.part("PL-1", SampleShop.coat("0.2"));
    private static final Catalogue CATALOGUE = SampleOrders.catalogue(
            SampleShop.costed("PB-BLACK", 10), Map.of(PLATE.number(), PLATE), BLACK, WHITE, TWO_COAT);

    private static List<Bill> bills(SampleOrders... orders) {
        return Stream.of(orders).map(SampleOrders::bill).toList();
    }

    private static CoatPlan plan(SampleOrders... orders) {
        return CoatPlanner.plan(bills(orders), CATALOGUE);
    }

    @Nested
    class In_rounds {

        @Test
        void orders_needed_within_ten_days_go_together() {
            assertThat(plan(
                                    order("BL-1", "2026-06-10").with(1, BRACKET, BLACK),
                                    order("BL-2", "2026-06-19").with(1, BRACKET, BLACK))
                            .rounds())
                    .hasSize(1);
        }

        @Test
        void one_working_day_more_and_they_do_not() {
            assertThat(plan(
                                    order("BL-1", "2026-06-10").with(1, BRACKET, BLACK),
                                    order("BL-2", "2026-06-21").with(1, BRACKET, BLACK))
                            .rounds())
                    .hasSize(2);
        }

        @Test
        void the_next_round_begins_with_what_the_last_one_left_in_the_booth() {
            CoatPlan plan = plan(
                    order("BL-1", "2026-06-10").with(1, BRACKET, WHITE),
                    order("BL-2", "2026-07-20").with(1, BRACKET, WHITE));
            assertThat(plan.changeOvers()).isEqualTo(1);
        }

        @Test
        void numbers_go_on_through_the_rounds() {
            CoatPlan plan = plan(
                    order("BL-1", "2026-06-10").with(1, BRACKET, WHITE),
                    order("BL-2", "2026-07-20").with(1, BRACKET, BLACK));
            assertThat(plan.batches()).extracting(OvenBatch::number).containsExactly(1, 2);
            assertThat(plan.runs()).extracting(PowderRun::number).containsExactly(1, 2);
            assertThat(plan.loads().map(OvenLoad::number)).containsExactly(1, 2);
        }
    }

    @Nested
    class Queues {

        @Test
        @DisplayName("A top coat hangs with pieces of one coat of the same powder and cure")
        void together() {
            CoatPlan plan = plan(order("BL-1").with(2, BRACKET, TWO_COAT).with(2, PLATE, BLACK));
            assertThat(plan.runs()).extracting(PowderRun::powder).containsExactly("PB-PRIMER", "PB-BLACK");
            assertThat(plan.loads()).extracting(OvenLoad::pieces).containsExactly(2, 4);
        }

        @Test
        void another_cure_window_is_another_queue_of_the_same_run() {
            Finish longer = SampleShop.own(
                    "longer",
                    new PowderCoat(
                            "PB-BLACK",
                            SampleShop.BLACK.specificGravity(),
                            60,
                            80,
                            120,
                            180,
                            25,
                            SampleShop.BLACK.utilisationPercent()));
            CoatPlan plan = CoatPlanner.plan(
                    bills(order("BL-1").with(1, BRACKET, BLACK).with(1, PLATE, longer)),
                    SampleOrders.catalogue(SampleShop.costed("", 0), Map.of(), BLACK, longer));
            assertThat(plan.runs()).hasSize(1);
            assertThat(plan.runs().get(0).queues())
                    .extracting(CureQueue::minutes)
                    .containsExactly(15, 25);
        }

        @Test
        @DisplayName("Two coats of one powder are one run, the second coat cured after the first")
        void twice() {
            Finish twice = SampleShop.own("twice", SampleShop.BLACK, SampleShop.BLACK);
            CoatPlan plan = CoatPlanner.plan(
                    bills(order("BL-1").with(1, BRACKET, twice)),
                    SampleOrders.catalogue(SampleShop.costed("", 0), Map.of(), twice));
            assertThat(plan.runs()).hasSize(1);
            assertThat(plan.runs().get(0).passes()).extracting(Pass::coat).containsExactly(1, 2);
            assertThat(plan.loads()).hasSize(2);
        }

        @Test
        void masks_of_a_two_coat_finish_are_fetched_for_each_coat() {
            Feature thread = new Feature(Feature.Kind.THREAD, "M8", 4, Feature.Treat.MASKED);
            Part masked = SampleShop.part("MA-1", SampleShop.coat("0.5", thread));
            List<PowderRun> runs =
                    plan(order("BL-1").with(12, masked, TWO_COAT)).runs();
            assertThat(runs).hasSize(2).allSatisfy(run -> {
                assertThat(MasksToFetch.of(run).get(0).spots().count()).isEqualTo(48);
                assertThat(MasksToFetch.of(run).get(0).mostInOneLoad()).isEqualTo(40);
            });
        }
    }

    @Nested
    class Too_large {

        private static final Part RAIL =
                SampleShop.part("RA-1", SampleShop.coat("0.5", new EnvelopeMm(2100, 100, 100)));

        @Test
        @DisplayName("It goes out by itself with its reason, for 20.00 a m² and coat")
        void goes_out() {
            CoatPlan plan = plan(order("BL-1").with(2, RAIL, TWO_COAT).with(1, PLATE, TWO_COAT));
            SendOut out = plan.sendOuts().get(0);
            assertThat(out.coater().name()).isEqualTo("Coater B");
            assertThat(out.tooBig()).extracting(TooBig::why).allMatch(why -> why.startsWith("2100 × 100 × 100 mm"));
            assertThat(out.price()).isEqualByComparingTo("40");
            assertThat(plan.loads()).extracting(OvenLoad::pieces).containsExactly(1, 1);
        }

        @Test
        void all_too_large_leave_no_batch() {
            CoatPlan plan = plan(order("BL-1").with(2, RAIL, BLACK));
            assertThat(plan.batches()).isEmpty();
            assertThat(plan.runs()).isEmpty();
        }
    }

    @Nested
    class Extras {

        @Test
        void an_extra_bracket_is_coated_after_those_of_the_kit() {
            BatchRow extra = plan(order("BL-1").with(2, PLATE, BLACK).extra(1, PLATE, "black", false))
                    .batches()
                    .get(0)
                    .rows()
                    .get(1);
            assertThat(extra.status()).isEqualTo(CoatingStatus.EXTRA);
            assertThat(extra.marks()).extracting(PieceMarks::written).containsExactly("BL-1 3");
        }

        @Test
        @DisplayName("Coating one plate of 0.2 m² costs 2.00 of labour and gas and 0.04 kg of powder at 8.00")
        void costs() {
            Bill bill = order("BL-1").extra(1, PLATE, "black", false).bill();
            assertThat(ExtraCoating.ofOne(bill.order().extra().get(0), bill, CATALOGUE))
                    .isEqualByComparingTo("2.32");
        }

        @Test
        void one_that_the_customer_brings_costs_nothing() {
            Bill bill = order("BL-1").extra(1, PLATE, "black", true).bill();
            assertThat(ExtraCoating.ofOne(bill.order().extra().get(0), bill, CATALOGUE))
                    .isZero();
        }

        @Test
        void one_that_the_customer_brings_is_not() {
            assertThat(plan(order("BL-1").extra(1, PLATE, "black", true)).isEmpty())
                    .isTrue();
        }
    }

    @Nested
    class Days {

        @Test
        @DisplayName("Eight loads of 60 minutes fill a day, the ninth is cured on day 2")
        void eight_a_day() {
            CoatPlan plan = plan(order("BL-1").with(81, BRACKET, BLACK));
            Timetable timetable = Timetable.of(plan, CATALOGUE.workshop().coating());
            assertThat(plan.loads()).hasSize(9);
            assertThat(timetable.day(8)).isEqualTo(1);
            assertThat(timetable.day(9)).isEqualTo(2);
        }

        @Test
        @DisplayName("45 minutes of cleaning first, and the eighth load does not fit either")
        void cleaning_counts() {
            CoatPlan plan = plan(order("BL-1").with(80, BRACKET, WHITE));
            assertThat(Timetable.of(plan, CATALOGUE.workshop().coating()).day(8))
                    .isEqualTo(2);
        }

        @Test
        void an_order_is_through_on_the_day_of_its_last_load_and_late_where_that_is_after_its_need() {
            CoatPlan plan = plan(order("BL-1", "2026-06-10").with(81, BRACKET, BLACK));
            OrderThrough through = OrderThrough.of(
                            plan, Timetable.of(plan, CATALOGUE.workshop().coating()), SampleOrders.ASSEMBLY_DAYS)
                    .get(0);
            assertThat(through.on(LocalDate.parse("2026-06-03"))).isEqualTo(LocalDate.parse("2026-06-04"));
            assertThat(through.late(LocalDate.parse("2026-06-03"))).isFalse();
            assertThat(through.late(LocalDate.parse("2026-06-04"))).isTrue();
        }

        @Test
        @DisplayName("From Friday 2026-06-05: day 2 is Monday; a start on Saturday is Monday")
        void weekends() {
            assertThat(WorkDays.date(LocalDate.parse("2026-06-05"), 2)).isEqualTo(LocalDate.parse("2026-06-08"));
            assertThat(WorkDays.date(LocalDate.parse("2026-06-06"), 1)).isEqualTo(LocalDate.parse("2026-06-08"));
        }
    }
}
