package boltlore.netting;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.measure.PartNumber;
import boltlore.netting.Netting.Demand;
import boltlore.netting.PlanningData.Component;
import boltlore.netting.PlanningData.ScheduledReceipt;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;

@Label("Whatever is asked for,")
class NettingLaws {

    private static final int ITEMS = 6;
    private static final int NOW = 10;

    @Property(tries = 300)
    @Label("the projected stock is never below the safety stock")
    void never_below(@ForAll long seed) {
        Shop shop = new Shop(seed);
        shop.netting()
                .items()
                .forEach(plan -> IntStream.range(NOW + plan.data().leadPeriods(), 60)
                        .forEach(period -> assertThat(plan.onHandAfter(period)
                                        .add(plan.brought().stream()
                                                .filter(each ->
                                                        each.receipt().period() > period && each.wanted() <= period)
                                                .map(ItemPlan.Brought::quantity)
                                                .reduce(BigDecimal.ZERO, BigDecimal::add)))
                                .isGreaterThanOrEqualTo(plan.data().safetyStock())));
    }

    @Property(tries = 300)
    @Label("each requirement is covered once and whole")
    void covered(@ForAll long seed) {
        new Shop(seed).netting().items().forEach(plan -> {
            BigDecimal pegged = plan.supplies().stream()
                    .flatMap(supply -> supply.pegs().stream())
                    .filter(peg -> !(peg.requirement().asker() instanceof Requirement.Asker.Safety))
                    .map(Supply.Peg::quantity)
                    .reduce(BigDecimal.ZERO, BigDecimal::add);
            BigDecimal asked =
                    plan.gross().stream().map(Requirement::quantity).reduce(BigDecimal.ZERO, BigDecimal::add);
            assertThat(pegged).isEqualByComparingTo(asked);
        });
    }

    @Property(tries = 300)
    @Label("a receipt is for the orders that ask and for stock, and for nothing else")
    void explained(@ForAll long seed) {
        Netting netting = new Shop(seed).netting();
        netting.planned().forEach(receipt -> {
            Netting.Asked asked = netting.askedBy(receipt);
            assertThat(asked.stays()).isGreaterThan(new BigDecimal("-0.001"));
            assertThat(asked.outside().values()).allMatch(quantity -> quantity.signum() >= 0);
        });
    }

    @Property(tries = 100)
    @Label("the order in which demands are told does not matter")
    void shuffled(@ForAll long seed) {
        Shop shop = new Shop(seed);
        Netting before = shop.netting();
        Collections.shuffle(shop.demands, new Random(seed + 1));
        assertThat(shop.netting().planned()).isEqualTo(before.planned());
    }

    @Property(tries = 100)
    @Label("once all that is planned is on its way, nothing more is planned")
    void settled(@ForAll long seed) {
        Shop shop = new Shop(seed);
        List<Demand> demands = new ArrayList<>(shop.demands);
        Netting first = shop.netting();
        Map<StockItem, PlanningData> data = new HashMap<>(shop.data);
        first.planned().forEach(receipt -> {
            data.computeIfPresent(receipt.item(), (item, old) -> {
                List<ScheduledReceipt> more = new ArrayList<>(old.scheduled());
                more.add(new ScheduledReceipt("order", receipt.due(), receipt.quantity()));
                return new PlanningData(
                        old.onHand(),
                        old.safetyStock(),
                        old.leadPeriods(),
                        old.lot(),
                        old.scrapPercent(),
                        old.contains(),
                        more);
            });
            shop.data
                    .getOrDefault(receipt.item(), PlanningData.NONE)
                    .contains()
                    .forEach(part -> demands.add(new Demand(
                            part.item(), receipt.release(), receipt.quantity().multiply(part.quantity()), "above")));
        });
        assertThat(Netting.of(demands, data, NOW).planned()).isEmpty();
    }

    /** A shop made by a seed: items of which some hold the next ones, stock, receipts on their way, orders. */
    private static final class Shop {

        private final Map<StockItem, PlanningData> data = new HashMap<>();
        private final List<Demand> demands = new ArrayList<>();

        Shop(long seed) {
            Random random = new Random(seed);
            for (int i = 0; i < ITEMS; i++) {
                List<Component> contains = new ArrayList<>();
                for (int below = i + 1; below < ITEMS; below++) {
                    if (random.nextInt(3) == 0) {
                        contains.add(new Component(item(below), BigDecimal.valueOf(1 + random.nextInt(3))));
                    }
                }
                List<ScheduledReceipt> coming = random.nextBoolean()
                        ? List.of()
                        : List.of(new ScheduledReceipt("PO", NOW + random.nextInt(20), some(random, 20)));
                LotRule lot = new LotRule(some(random, 10), some(random, 5), 1 + random.nextInt(5));
                data.put(
                        item(i),
                        new PlanningData(
                                some(random, 20),
                                some(random, 4),
                                random.nextInt(6),
                                lot,
                                some(random, 3),
                                contains,
                                coming));
            }
            for (int i = 0; i < 8; i++) {
                demands.add(new Demand(
                        item(random.nextInt(ITEMS)), 5 + random.nextInt(40), some(random, 12), "order-" + i));
            }
        }

        Netting netting() {
            return Netting.of(demands, data, NOW);
        }

        private static BigDecimal some(Random random, int below) {
            return BigDecimal.valueOf(random.nextInt(below));
        }

        private static StockItem item(int number) {
            return StockItem.bare(new PartNumber("P" + number));
        }
    }
}
