package boltlore.trades.buying;

import static boltlore.sketch.PartSketch.bolt;
import static boltlore.sketch.PartSketch.bought;
import static boltlore.sketch.PartSketch.made;
import static boltlore.sketch.PositionSketch.at;
import static boltlore.sketch.PositionSketch.each;
import static org.assertj.core.api.Assertions.assertThat;

import boltlore.catalogue.Buying;
import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Joined;
import boltlore.catalogue.Offer;
import boltlore.catalogue.Stores;
import boltlore.findings.Finding;
import boltlore.findings.Findings;
import boltlore.measure.PartNumber;
import boltlore.netting.PlannedReceipt;
import boltlore.netting.PlanningData.ScheduledReceipt;
import boltlore.netting.StockItem;
import boltlore.report.Report;
import boltlore.report.text.TextWriter;
import boltlore.sketch.CatalogueSketch;
import boltlore.sketch.OrderSketch;
import boltlore.trades.KitInWork;
import boltlore.trades.TradeResult;
import boltlore.trades.orders.Trades;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Currency;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

/** Each order is due on 30 June 2025, and a kit takes five days to put together: parts are needed on 25 June. */
@DisplayName("Buying for orders together")
class BuyingTest {

    private static final LocalDate MAY = LocalDate.of(2025, 5, 1);
    private static final LocalDate NEEDED = LocalDate.of(2025, 6, 25);

    private static CatalogueSketch shop() {
        return new CatalogueSketch()
                .part(bolt("FX-M8", "M8", null)
                        .leadDays(10)
                        .buying(buying("100", null, "0.20", "0.10"))
                        .bin("F-01-01-A-01"))
                .part(bought("HE-1").leadDays(30).bin("H-01-01-A-01"))
                .part(made("FR-1")
                        .leadDays(4)
                        .contains("TB-1", "2")
                        .joined(Joined.WELDED)
                        .coat("chassis", "0.2"))
                .part(made("TB-1").leadDays(3))
                .position(at("heater").line("heater", "HE-1", "1", each("FX-M8", "30")))
                .position(at("frame").line("frame", "FR-1", "1"));
    }

    /** The second price from 200 on. */
    private static Buying buying(String packOf, String least, String first, String second) {
        Currency euro = Currency.getInstance("EUR");
        return Buying.of(List.of(
                new Offer(
                        "Supplier A",
                        "A-1",
                        euro,
                        10,
                        new BigDecimal(packOf),
                        least == null ? null : new BigDecimal(least),
                        List.of(
                                new Offer.PriceBreak(BigDecimal.ONE, new BigDecimal(first), new BigDecimal(first)),
                                new Offer.PriceBreak(
                                        new BigDecimal("200"), new BigDecimal(second), new BigDecimal(second)))),
                new Offer(
                        "Supplier B",
                        "B-1",
                        euro,
                        2,
                        null,
                        null,
                        List.of(new Offer.PriceBreak(BigDecimal.ONE, BigDecimal.ONE, BigDecimal.ONE)))));
    }

    private static ShopPlan plan(Catalogue catalogue, StoresNow stores, String... orders) {
        return ShopPlan.of(Stream.of(orders).map(order -> kit(catalogue, order)).toList(), stores);
    }

    private static KitInWork kit(Catalogue catalogue, String order) {
        OrderSketch sketch = new OrderSketch(catalogue).named(order);
        return new KitInWork(sketch.plan(), sketch.bill(), MAY);
    }

    private static StoresNow empty() {
        return StoresNow.empty(MAY);
    }

    private static PurchaseLine line(ShopPlan plan, String part) {
        return plan.purchases().stream()
                .filter(line -> line.part().number().text().equals(part))
                .findFirst()
                .orElseThrow();
    }

    private static StoresNow stores(Map<StockItem, BigDecimal> onHand, Map<StockItem, List<ScheduledReceipt>> coming) {
        return new StoresNow(MAY, onHand, coming);
    }

    /** By itself. */
    private static BigDecimal apart(ShopPlan plan, Catalogue catalogue, String... orders) {
        return plan.apart(Stream.of(orders)
                .map(order -> OrderNeeds.of(kit(catalogue, order), MAY).needs())
                .toList());
    }

    private static StockItem item(String part) {
        return StockItem.bare(new PartNumber(part));
    }

    @Nested
    @DisplayName("puts needs together")
    class Together {

        @Test
        @DisplayName("in whole packs at the price of all of them, which each order by itself does not get")
        void packs_and_breaks() {
            Catalogue catalogue = shop().draw();
            // 30 bolts and 2 spares each, one in twenty: 32 and three times that, 96, fill one pack
            PurchaseLine three = line(plan(catalogue, empty(), "A", "B", "C"), "FX-M8");
            assertThat(three.quantity()).isEqualByComparingTo("100");
            assertThat(three.unitCost()).isEqualByComparingTo("0.20");
            // four need 128: two packs, and the lower price
            ShopPlan plan = plan(catalogue, empty(), "A", "B", "C", "D");
            PurchaseLine four = line(plan, "FX-M8");
            assertThat(four.quantity()).isEqualByComparingTo("200");
            assertThat(four.cost()).isEqualByComparingTo("20.00");
            assertThat(plan.forWhom(four.receipt())).isEqualTo("A 32, B 32, C 32, D 32, stock 72");
            assertThat(apart(plan, catalogue, "A", "B", "C", "D").subtract(plan.together()))
                    .as("four packs of 20.00 by themselves, two of 10.00 together")
                    .isEqualByComparingTo("60.00");
        }

        @Test
        @DisplayName("and orders each by the last day on which it comes in time")
        void dates() {
            PurchaseLine heater = line(plan(shop().draw(), empty(), "A"), "HE-1");
            assertThat(heater.neededOn()).isEqualTo(NEEDED);
            assertThat(heater.orderBy()).isEqualTo(NEEDED.minusDays(30));
            assertThat(heater.lateDays()).isZero();
        }

        @Test
        @DisplayName("less what the stores hold, and what is on its way")
        void less_stock() {
            StoresNow stores = stores(
                    Map.of(item("FX-M8"), new BigDecimal("32")),
                    Map.of(item("HE-1"), List.of(new ScheduledReceipt("PO-1", StoresNow.day(NEEDED), BigDecimal.ONE))));
            ShopPlan plan = plan(shop().draw(), stores, "A");
            assertThat(plan.purchases()).isEmpty();
            // one bolt fewer, and a pack must be bought
            StoresNow fewer = stores(Map.of(item("FX-M8"), new BigDecimal("31")), Map.of());
            assertThat(line(plan(shop().draw(), fewer, "A"), "FX-M8").quantity())
                    .isEqualByComparingTo("100");
        }
    }

    @Nested
    @DisplayName("says what is made and coated")
    class Made {

        @Test
        @DisplayName("through levels: the coated frame, the bare one before it, its tubes before that")
        void levels() {
            ShopPlan plan = plan(shop().draw(), empty(), "A", "B");
            assertThat(plan.toCoat())
                    .extracting(receipt -> receipt.item().toString())
                    .containsExactly("FR-1 in black");
            assertThat(plan.toMake())
                    .extracting(receipt -> receipt.item().toString(), PlannedReceipt::release)
                    .containsExactly(
                            org.assertj.core.groups.Tuple.tuple(
                                    "TB-1", plan.toMake().get(1).release() - 3),
                            org.assertj.core.groups.Tuple.tuple(
                                    "FR-1", plan.toCoat().get(0).release() - 4));
            assertThat(plan.toMake().get(0).quantity()).isEqualByComparingTo("4");
            assertThat(plan.forWhom(plan.toMake().get(0))).isEqualTo("A 2, B 2");
        }

        @Test
        @DisplayName("and what lies there in that finish is not coated again")
        void coated_in_stock() {
            StoresNow stores = new StoresNow(
                    MAY, Map.of(new StockItem(new PartNumber("FR-1"), "black"), BigDecimal.ONE), Map.of());
            assertThat(plan(shop().draw(), stores, "A").toMake()).isEmpty();
            StoresNow otherFinish =
                    new StoresNow(MAY, Map.of(new StockItem(new PartNumber("FR-1"), "zinc"), BigDecimal.ONE), Map.of());
            assertThat(plan(shop().draw(), otherFinish, "A").toMake()).hasSize(2);
        }
    }

    @Nested
    @DisplayName("finds")
    class Finds {

        private List<String> kinds(ShopPlan plan) {
            Findings findings =
                    BuyingTrade.work(plan, BigDecimal.ZERO, Findings.NONE).findings();
            return findings.all().stream()
                    .map(Finding::kind)
                    .map(kind -> kind.code())
                    .toList();
        }

        @Test
        @DisplayName("an order whose parts should have been ordered by now, and the worst of them")
        void too_late() {
            Catalogue catalogue = shop().draw();
            StoresNow last = StoresNow.empty(NEEDED.minusDays(30));
            assertThat(kinds(plan(catalogue, last, "A"))).isEmpty();
            StoresNow dayAfter = StoresNow.empty(NEEDED.minusDays(29));
            ShopPlan plan = plan(catalogue, dayAfter, "A");
            assertThat(kinds(plan)).containsExactly("ordered too late");
            assertThat(BuyingTrade.work(plan, BigDecimal.ZERO, Findings.NONE)
                            .findings()
                            .all()
                            .get(0)
                            .says())
                    .contains("A, due 2025-06-30: one item should have been ordered")
                    .contains("HE-1, a day late");
        }

        @Test
        @DisplayName("what is on its way and needed sooner")
        void sooner() {
            StoresNow late = new StoresNow(
                    MAY,
                    Map.of(),
                    Map.of(
                            item("HE-1"),
                            List.of(new ScheduledReceipt("PO-1", StoresNow.day(NEEDED) + 1, BigDecimal.ONE))));
            assertThat(kinds(plan(shop().draw(), late, "A"))).containsExactly("needed sooner");
            StoresNow onTime = new StoresNow(
                    MAY,
                    Map.of(),
                    Map.of(item("HE-1"), List.of(new ScheduledReceipt("PO-1", StoresNow.day(NEEDED), BigDecimal.ONE))));
            assertThat(kinds(plan(shop().draw(), onTime, "A"))).isEmpty();
        }

        @Test
        @DisplayName("an order to a supplier below the least that he takes")
        void least_order() {
            // one heater at 1.00 and a pack of bolts at 20.00
            assertThat(kinds(plan(shop().stores(least("21.00")).draw(), empty(), "A")))
                    .isEmpty();
            assertThat(kinds(plan(shop().stores(least("21.01")).draw(), empty(), "A")))
                    .containsExactly("below least order");
        }

        private Stores least(String value) {
            return new Stores(null, 1, Map.of(), Map.of("Supplier A", new BigDecimal(value)));
        }

        @Test
        @DisplayName("a bought part that names no supplier")
        void no_supplier() {
            CatalogueSketch shop =
                    shop().part(bought("KN-1").buying(null)).position(at("knob").line("knob", "KN-1", "1"));
            assertThat(kinds(plan(shop.draw(), empty(), "A"))).containsExactly("no supplier");
        }

        @Test
        @DisplayName("in a sentence of each language")
        void sentences() {
            for (BuyingFinding kind : BuyingFinding.values()) {
                for (String language : List.of("en", "de", "fr")) {
                    assertThat(new Finding(
                                            kind,
                                            "",
                                            Map.ofEntries(
                                                    Map.entry("order", "A"),
                                                    Map.entry("due", MAY),
                                                    Map.entry("items", 2),
                                                    Map.entry("part", "P"),
                                                    Map.entry("days", 3),
                                                    Map.entry("day", MAY),
                                                    Map.entry("receipt", "PO-1"),
                                                    Map.entry("quantity", "4"),
                                                    Map.entry("expected", MAY),
                                                    Map.entry("needed", MAY),
                                                    Map.entry("supplier", "S"),
                                                    Map.entry("cost", "EUR 1"),
                                                    Map.entry("least", "EUR 2"),
                                                    Map.entry("name", "N")))
                                    .says(language))
                            .doesNotContain("{")
                            .isNotBlank();
                }
            }
        }
    }

    @Test
    @DisplayName("is a sheet that reads so")
    void sheet() {
        ShopPlan plan = plan(shop().draw(), empty(), "A", "B");
        BigDecimal apart = apart(plan, plan.catalogue(), "A", "B");
        TradeResult result = BuyingTrade.work(plan, apart, Findings.NONE);
        Report report = result.sheets().get(0).report().get();
        boltlore.report.Approved.check("trades/buying/purchase-list", new TextWriter(150).text(report));
    }

    @Test
    @DisplayName("is a matter of all orders together, so no sheet of a single kit")
    void not_with_a_kit() {
        assertThat(Trades.ALL).noneMatch(trade -> trade instanceof BuyingTrade);
    }
}
