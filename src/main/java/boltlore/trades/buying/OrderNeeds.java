package boltlore.trades.buying;

import boltlore.bill.Item;
import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Contained;
import boltlore.catalogue.Part;
import boltlore.catalogue.Source;
import boltlore.measure.PartNumber;
import boltlore.netting.Netting.Demand;
import boltlore.netting.PlanningData.Component;
import boltlore.netting.StockItem;
import boltlore.order.Extra;
import boltlore.trades.KitInWork;
import boltlore.trades.costing.path.KitTimes;
import boltlore.trades.costing.path.StepDays;
import boltlore.trades.picking.CoatedRow;
import boltlore.trades.picking.PickRow;
import boltlore.trades.picking.PickingTrade;
import java.math.BigDecimal;
import java.math.MathContext;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * What one order asks of the stores, at the level at which they hand it out, with the spares of its bags and its extras; and
 * what that is made of. A part is needed on the last day that does not move the day of shipping.
 *
 * @param due the day on which the kit is due; where the order names none, the first on which it can be ready
 * @param needs by the day
 * @param madeOf what one of an item is made of; a coated item of a bare one
 */
public record OrderNeeds(KitInWork kit, LocalDate due, List<Demand> needs, Map<StockItem, List<Component>> madeOf) {

    /**
     * What one kit asks of the stores.
     *
     * @param today from which a kit without a day is begun
     */
    public static OrderNeeds of(KitInWork kit, LocalDate today) {
        return new Reading(kit, today).needs();
    }

    /** The bare part that a coated one is made of. */
    static StockItem bare(StockItem item) {
        return StockItem.bare(item.part());
    }

    /** What one of an item is made of that is asked for by itself, with all that is in it. */
    static Map<StockItem, List<Component>> madeOf(StockItem item, Catalogue catalogue) {
        Map<StockItem, List<Component>> madeOf = new TreeMap<>();
        if (!item.finish().isEmpty()) {
            madeOf.put(item, List.of(new Component(bare(item), BigDecimal.ONE)));
        }
        contents(item.part(), catalogue, madeOf);
        return madeOf;
    }

    private static void contents(PartNumber number, Catalogue catalogue, Map<StockItem, List<Component>> madeOf) {
        Part part = catalogue.part(number);
        List<Contained> inside = part.source() == Source.MAKE ? part.contains() : List.of();
        madeOf.putIfAbsent(
                StockItem.bare(number),
                inside.stream()
                        .map(child -> new Component(StockItem.bare(child.part()), child.quantity()))
                        .toList());
        inside.forEach(child -> contents(child.part(), catalogue, madeOf));
    }

    /** Goes through the bill once. */
    private static final class Reading {

        private final KitInWork kit;
        private final KitTimes times;
        private final LocalDate due;
        private final SortedMap<StockItem, SortedMap<Integer, BigDecimal>> asked = new TreeMap<>();
        private final Map<StockItem, List<Component>> madeOf = new TreeMap<>();

        Reading(KitInWork kit, LocalDate today) {
            this.kit = kit;
            this.times = KitTimes.of(kit.bill(), kit.catalogue());
            LocalDate told = kit.order().due();
            this.due = told == null ? today.plusDays(times.path().days()) : told;
        }

        OrderNeeds needs() {
            kit.bill().items().forEach(this::take);
            kit.order().extra().forEach(this::extra);
            spares();
            return new OrderNeeds(kit, due, all(), madeOf);
        }

        /** What is put together only in the kit is asked for in its parts. */
        private void take(Item item) {
            if (item.picked() || item.part().source() == Source.BUY) {
                ask(describe(item), day(times.of(item).readyDays()), item.quantity());
            } else {
                item.inside().forEach(this::take);
            }
        }

        private int day(int before) {
            return StoresNow.day(due) - before;
        }

        private void ask(StockItem item, int day, BigDecimal quantity) {
            asked.computeIfAbsent(item, any -> new TreeMap<>()).merge(day, quantity, BigDecimal::add);
        }

        /** The item's name in stock; remembers what it is made of. */
        private StockItem describe(Item item) {
            StockItem whole = new StockItem(item.part().number(), finishes(item));
            if (madeOf.containsKey(whole)) {
                return whole;
            }
            StockItem bare = item.coated() && !item.finish().isEmpty() ? OrderNeeds.bare(whole) : whole;
            if (!bare.equals(whole)) {
                madeOf.put(whole, List.of(new Component(bare, BigDecimal.ONE)));
            }
            madeOf.put(bare, List.of());
            if (item.part().source() == Source.MAKE) {
                madeOf.put(
                        bare,
                        item.inside().stream()
                                .map(child -> new Component(
                                        describe(child),
                                        child.quantity().divide(item.quantity(), MathContext.DECIMAL128)))
                                .toList());
            }
            return whole;
        }

        /** Its own finish, or those of what it is put together of: they lie in stock as different things. */
        private static String finishes(Item item) {
            if (!item.finish().isEmpty() || item.part().source() == Source.BUY) {
                return item.finish();
            }
            return String.join(
                    "+",
                    item.all()
                            .map(Item::finish)
                            .filter(finish -> !finish.isEmpty())
                            .distinct()
                            .sorted()
                            .toList());
        }

        private void extra(Extra extra) {
            if (extra.part() != null && !extra.suppliedByCustomer()) {
                Part part = kit.catalogue().part(extra.part());
                String finish = part.coat() == null || !extra.finish().isEmpty()
                        ? extra.finish()
                        : kit.bill().resolved().kit().finishes().getOrDefault(part.number(), "");
                StockItem item = new StockItem(part.number(), part.coat() == null ? "" : finish);
                if (!item.finish().isEmpty()) {
                    madeOf.putIfAbsent(item, List.of(new Component(bare(item), BigDecimal.ONE)));
                }
                contents(part.number(), kit.catalogue(), madeOf);
                ask(item, day(new StepDays(kit.catalogue()).ofKit()), extra.quantity());
            }
        }

        /** They go into the bags with the first of their kind. */
        private void spares() {
            Stream<PickRow> rows = Stream.concat(
                    PickingTrade.list(kit).walk().stream(),
                    PickingTrade.list(kit).fromCoating().stream().map(CoatedRow::row));
            rows.filter(row -> row.spares().signum() > 0).forEach(row -> {
                StockItem item = new StockItem(row.part().number(), row.finish());
                SortedMap<Integer, BigDecimal> days = asked.get(item);
                if (days != null) {
                    ask(item, days.firstKey(), row.spares());
                }
            });
        }

        private List<Demand> all() {
            List<Demand> all = new ArrayList<>();
            asked.forEach((item, days) -> days.forEach((day, quantity) ->
                    all.add(new Demand(item, day, quantity, kit.order().name()))));
            return List.copyOf(all);
        }
    }
}
