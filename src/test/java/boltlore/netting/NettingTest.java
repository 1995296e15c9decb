package boltlore.netting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import boltlore.measure.PartNumber;
import boltlore.netting.ItemPlan.Brought;
import boltlore.netting.Netting.Demand;
import boltlore.netting.PlanningData.Component;
import boltlore.netting.PlanningData.ScheduledReceipt;
import boltlore.netting.Supply.From;
import java.math.BigDecimal;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

@DisplayName("Netting")
class NettingTest {

    private static final StockItem FRAME = StockItem.bare(new PartNumber("FRAME"));
    private static final StockItem BOLT = StockItem.bare(new PartNumber("BOLT"));
    private static final int NOW = 100;

    @Nested
    @DisplayName("tells who asks:")
    class Pegs {

        @Test
        void stock_goes_to_the_earliest_order_and_the_rest_is_planned_for_the_later_one() {
            Netting netting = net(
                    Map.of(BOLT, bolts("12", List.of())), need(BOLT, 120, "10", "late"), need(BOLT, 110, "8", "early"));

            PlannedReceipt only = netting.planned().get(0);
            assertThat(only.quantity()).isEqualByComparingTo("6");
            assertThat(netting.askedBy(only).outside()).containsExactly(Map.entry("late", new BigDecimal("6")));
        }

        @Test
        void a_component_is_asked_for_by_the_orders_of_its_assembly_slice_by_slice() {
            Map<StockItem, PlanningData> data =
                    Map.of(FRAME, frames("0", LotRule.fixed(BigDecimal.TEN)), BOLT, bolts("13", List.of()));
            Netting netting = net(data, need(FRAME, 110, "3", "A"), need(FRAME, 120, "4", "B"));

            PlannedReceipt bolts = netting.planned().stream()
                    .filter(receipt -> receipt.item().equals(BOLT))
                    .findFirst()
                    .orElseThrow();
            // a lot of 10 frames takes 40 bolts; 13 lie there, which are the 12 of A and the first of B
            assertThat(bolts.quantity()).isEqualByComparingTo("27");
            assertThat(netting.askedBy(bolts).outside()).containsExactly(Map.entry("B", new BigDecimal("15")));
            assertThat(netting.askedBy(bolts).stays()).isEqualByComparingTo("12");
        }

        @Test
        void one_asker_for_all_of_a_day_tells_the_same_orders_as_each_by_itself() {
            Map<StockItem, PlanningData> data =
                    Map.of(FRAME, frames("1", LotRule.AS_NEEDED), BOLT, bolts("13", List.of()));
            Netting each =
                    net(data, need(FRAME, 110, "3", "A"), need(FRAME, 110, "4", "B"), need(FRAME, 120, "1", "C"));
            Netting summed = net(data, need(FRAME, 110, "7", "day 110"), need(FRAME, 120, "1", "C"));

            assertThat(summed.planned()).isEqualTo(each.planned());
            SortedMap<String, BigDecimal> day =
                    new TreeMap<>(Map.of("A", new BigDecimal("3"), "B", new BigDecimal("4")));
            for (int i = 0; i < summed.planned().size(); i++) {
                Netting.Asked asked = summed.askedBy(
                        summed.planned().get(i), asker -> asker.equals("day 110") ? day : Collections.emptySortedMap());
                assertThat(asked).isEqualTo(each.askedBy(each.planned().get(i)));
            }
        }

        @Test
        void what_the_safety_stock_asks_for_stays() {
            PlanningData data = new PlanningData(
                    BigDecimal.ONE, new BigDecimal("5"), 0, LotRule.AS_NEEDED, BigDecimal.ZERO, List.of(), List.of());
            Netting netting = net(Map.of(BOLT, data), need(BOLT, 110, "2", "A"));

            assertThat(netting.planned()).extracting(PlannedReceipt::due).containsExactly(NOW, 110);
            assertThat(netting.askedBy(netting.planned().get(0)).outside()).isEmpty();
            assertThat(netting.askedBy(netting.planned().get(0)).stays()).isEqualByComparingTo("4");
            assertThat(netting.askedBy(netting.planned().get(1)).outside()).containsOnlyKeys("A");
        }
    }

    @Nested
    @DisplayName("takes what is on its way:")
    class OnTheWay {

        @Test
        void a_receipt_that_comes_too_late_is_brought_forward_before_more_is_ordered() {
            ScheduledReceipt coming = new ScheduledReceipt("PO-7", 130, new BigDecimal("10"));
            Netting netting = net(Map.of(BOLT, bolts("0", List.of(coming))), need(BOLT, 110, "4", "A"));

            assertThat(netting.planned()).isEmpty();
            assertThat(netting.of(BOLT).orElseThrow().brought())
                    .containsExactly(new Brought(coming, 110, new BigDecimal("4")));
        }

        @Test
        void one_that_comes_in_time_is_not() {
            ScheduledReceipt coming = new ScheduledReceipt("PO-7", 110, new BigDecimal("10"));
            Netting netting = net(Map.of(BOLT, bolts("0", List.of(coming))), need(BOLT, 110, "4", "A"));

            assertThat(netting.of(BOLT).orElseThrow().brought()).isEmpty();
        }

        @Test
        void what_nobody_asks_for_is_spare() {
            ScheduledReceipt coming = new ScheduledReceipt("PO-7", 105, new BigDecimal("10"));
            Netting netting = net(Map.of(BOLT, bolts("0", List.of(coming))), need(BOLT, 110, "4", "A"));

            assertThat(netting.of(BOLT).orElseThrow().supplies())
                    .filteredOn(supply -> supply.from() instanceof From.Scheduled)
                    .extracting(Supply::spare)
                    .containsExactly(new BigDecimal("6"));
        }
    }

    @Nested
    @DisplayName("counts what is lost:")
    class Scrap {

        @Test
        void of_each_hundred_issued_eight_are_lost() {
            PlanningData data = new PlanningData(
                    BigDecimal.ZERO,
                    BigDecimal.ZERO,
                    0,
                    new LotRule(BigDecimal.ZERO, BigDecimal.ONE, 1),
                    new BigDecimal("8"),
                    List.of(),
                    List.of());
            // 46 / 0.92 = 50, and a near miss: 47 / 0.92 = 51.09
            assertThat(net(Map.of(BOLT, data), need(BOLT, 110, "46", "A"))
                            .planned()
                            .get(0)
                            .quantity())
                    .isEqualByComparingTo("50");
            assertThat(net(Map.of(BOLT, data), need(BOLT, 110, "47", "A"))
                            .planned()
                            .get(0)
                            .quantity())
                    .isEqualByComparingTo("52");
        }
    }

    @Nested
    @DisplayName("of what is past due:")
    class PastDue {

        @Test
        void it_comes_first() {
            Netting netting = net(
                    Map.of(BOLT, bolts("4", List.of())), need(BOLT, 101, "4", "soon"), need(BOLT, 90, "4", "missed"));

            PlannedReceipt only = netting.planned().get(0);
            assertThat(netting.askedBy(only).outside()).containsOnlyKeys("soon");
        }

        @Test
        void the_safety_stock_is_there_to_be_used_until_an_order_of_today_can_be_in() {
            PlanningData data = new PlanningData(
                    BigDecimal.TEN, BigDecimal.TEN, 7, LotRule.AS_NEEDED, BigDecimal.ZERO, List.of(), List.of());
            Netting netting = net(Map.of(BOLT, data), need(BOLT, 103, "4", "soon"));

            assertThat(netting.planned())
                    .extracting(PlannedReceipt::due, PlannedReceipt::release)
                    .containsExactly(org.assertj.core.groups.Tuple.tuple(NOW + 7, NOW));
        }

        @Test
        void the_safety_stock_is_no_reason_to_have_ordered_earlier() {
            PlanningData data = new PlanningData(
                    BigDecimal.TEN, BigDecimal.TEN, 0, LotRule.AS_NEEDED, BigDecimal.ZERO, List.of(), List.of());
            Netting netting = net(Map.of(BOLT, data), need(BOLT, 90, "4", "missed"));

            assertThat(netting.planned()).extracting(PlannedReceipt::due).containsExactly(NOW);
        }
    }

    @Test
    void an_item_that_is_made_of_itself_is_refused() {
        PlanningData round = new PlanningData(
                BigDecimal.ZERO,
                BigDecimal.ZERO,
                0,
                LotRule.AS_NEEDED,
                BigDecimal.ZERO,
                List.of(new Component(BOLT, BigDecimal.ONE)),
                List.of());

        assertThatThrownBy(() -> net(Map.of(BOLT, round), need(BOLT, 110, "1", "A")))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("BOLT");
    }

    private static Netting net(Map<StockItem, PlanningData> data, Demand... demands) {
        return Netting.of(List.of(demands), data, NOW);
    }

    private static Demand need(StockItem item, int period, String quantity, String order) {
        return new Demand(item, period, new BigDecimal(quantity), order);
    }

    private static PlanningData bolts(String onHand, List<ScheduledReceipt> scheduled) {
        return new PlanningData(
                new BigDecimal(onHand), BigDecimal.ZERO, 5, LotRule.AS_NEEDED, BigDecimal.ZERO, List.of(), scheduled);
    }

    private static PlanningData frames(String onHand, LotRule lot) {
        return new PlanningData(
                new BigDecimal(onHand),
                BigDecimal.ZERO,
                5,
                lot,
                BigDecimal.ZERO,
                List.of(new Component(BOLT, new BigDecimal("4"))),
                List.of());
    }
}
