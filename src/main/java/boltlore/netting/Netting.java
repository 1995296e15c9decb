package boltlore.netting;

import boltlore.netting.PlanningData.Component;
import boltlore.netting.Requirement.Asker;
import boltlore.netting.Supply.From;
import boltlore.netting.Supply.Peg;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * Nets all items, each after all that is made of it (low-level codes), so that what a planned receipt of an assembly takes is
 * asked of its components when that is released.
 *
 * @param now the current period
 * @param items by their level, then by their number
 * @param supplies what each planned receipt covers
 */
public record Netting(int now, List<ItemPlan> items, IdentityHashMap<PlannedReceipt, Supply> supplies) {

    /** What scrap leaves of a quantity has no end of digits; so many are kept. */
    private static final int DIGITS = 6;

    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);

    /** So much of an item is asked for from outside, without what is lost in use. */
    public record Demand(StockItem item, int period, BigDecimal quantity, String asker) {}

    /**
     * Nets what is asked for.
     *
     * @param data of the items that are known; of another nothing is in stock, and it is there as soon as it is ordered
     * @throws IllegalArgumentException where an item is made of itself
     */
    public static Netting of(List<Demand> demands, Map<StockItem, PlanningData> data, int now) {
        Map<StockItem, List<Requirement>> gross = new HashMap<>();
        for (Demand demand : demands) {
            PlanningData own = data.getOrDefault(demand.item(), PlanningData.NONE);
            gross.computeIfAbsent(demand.item(), any -> new ArrayList<>())
                    .add(new Requirement(
                            demand.period(), issued(demand.quantity(), own), new Asker.FromOutside(demand.asker())));
        }
        List<ItemPlan> plans = new ArrayList<>();
        levels(gross.keySet(), data).forEach((item, level) -> {
            PlanningData own = data.getOrDefault(item, PlanningData.NONE);
            ItemPlan plan = new ItemNetting(item, own, level, gross.getOrDefault(item, List.of()), now).plan();
            plans.add(plan);
            plan.planned().forEach(receipt -> explode(receipt, own, data, gross));
        });
        IdentityHashMap<PlannedReceipt, Supply> supplies = new IdentityHashMap<>();
        plans.stream().flatMap(plan -> plan.supplies().stream()).forEach(supply -> {
            if (supply.from() instanceof From.Planned planned) {
                supplies.put(planned.receipt(), supply);
            }
        });
        return new Netting(now, List.copyOf(plans), supplies);
    }

    private static void explode(
            PlannedReceipt receipt,
            PlanningData own,
            Map<StockItem, PlanningData> data,
            Map<StockItem, List<Requirement>> gross) {
        for (Component part : own.contains()) {
            BigDecimal quantity = issued(
                    receipt.quantity().multiply(part.quantity()), data.getOrDefault(part.item(), PlanningData.NONE));
            gross.computeIfAbsent(part.item(), any -> new ArrayList<>())
                    .add(new Requirement(receipt.release(), quantity, new Asker.ForPlanned(receipt)));
        }
    }

    /** What must be issued so that so much is left: quantity / (1 − scrap). */
    private static BigDecimal issued(BigDecimal quantity, PlanningData data) {
        return data.scrapPercent().signum() == 0
                ? quantity
                : quantity.multiply(HUNDRED)
                        .divide(HUNDRED.subtract(data.scrapPercent()), DIGITS, RoundingMode.HALF_UP);
    }

    /** Low-level codes: an item stands one level below the deepest that it goes into; in the order to net them. */
    private static Map<StockItem, Integer> levels(Iterable<StockItem> asked, Map<StockItem, PlanningData> data) {
        SortedMap<StockItem, Integer> levels = new TreeMap<>();
        asked.forEach(item -> levels.put(item, 0));
        data.keySet().forEach(item -> levels.put(item, 0));
        boolean deeper = true;
        for (int round = 0; deeper; round++) {
            if (round > levels.size() + 1) {
                throw new IllegalArgumentException("An item is made of itself: " + levels.lastKey());
            }
            deeper = false;
            for (StockItem item : List.copyOf(levels.keySet())) {
                for (Component part : data.getOrDefault(item, PlanningData.NONE).contains()) {
                    int below = levels.getOrDefault(item, 0) + 1;
                    if (levels.getOrDefault(part.item(), -1) < below) {
                        levels.put(part.item(), below);
                        deeper = true;
                    }
                }
            }
        }
        Map<StockItem, Integer> sorted = new LinkedHashMap<>();
        levels.entrySet().stream()
                .sorted(Map.Entry.comparingByValue(Comparator.naturalOrder()))
                .forEach(each -> sorted.put(each.getKey(), each.getValue()));
        return sorted;
    }

    public Optional<ItemPlan> of(StockItem item) {
        return items.stream().filter(plan -> plan.item().equals(item)).findFirst();
    }

    /** All planned receipts, those first that must be released first. */
    public List<PlannedReceipt> planned() {
        return items.stream()
                .flatMap(plan -> plan.planned().stream())
                .sorted(Comparator.comparingInt(PlannedReceipt::release).thenComparing(PlannedReceipt::item))
                .toList();
    }

    /** Who asks, down to those outside, for how much; 'safety' and 'spare' are what stays in stock. */
    public Asked askedBy(PlannedReceipt receipt) {
        return askedBy(receipt, asker -> Collections.emptySortedMap());
    }

    /**
     * The same where one asker stands for several.
     *
     * @param behind who stands behind an asker, by name, and what each asks for; none where it stands for itself
     */
    public Asked askedBy(PlannedReceipt receipt, Function<String, SortedMap<String, BigDecimal>> behind) {
        return new Pegging(supplies, behind).of(receipt);
    }

    /**
     * What a receipt is for.
     *
     * @param outside for whom, by name, in the item's unit
     * @param stays what stays in stock: for safety, or because the lot is larger, or that of an assembly above
     */
    public record Asked(SortedMap<String, BigDecimal> outside, BigDecimal stays) {}

    /** Follows the pegs up, slice by slice: the first pieces of a lot go where its first peg points. */
    private static final class Pegging {

        private final IdentityHashMap<PlannedReceipt, Supply> supplies;
        private final Function<String, SortedMap<String, BigDecimal>> behind;
        private final SortedMap<String, BigDecimal> outside = new TreeMap<>();

        Pegging(
                IdentityHashMap<PlannedReceipt, Supply> supplies,
                Function<String, SortedMap<String, BigDecimal>> behind) {
            this.supplies = supplies;
            this.behind = behind;
        }

        Asked of(PlannedReceipt receipt) {
            follow(receipt, BigDecimal.ZERO, receipt.quantity(), BigDecimal.ONE);
            BigDecimal sum = outside.values().stream().reduce(BigDecimal.ZERO, BigDecimal::add);
            return new Asked(outside, receipt.quantity().subtract(sum));
        }

        /** The slice from..to of the receipt's quantity, of which each is so many of the item that was asked about. */
        private void follow(PlannedReceipt receipt, BigDecimal from, BigDecimal to, BigDecimal each) {
            BigDecimal start = BigDecimal.ZERO;
            for (Peg peg : pegs(receipt).toList()) {
                BigDecimal end = start.add(peg.quantity());
                BigDecimal first = from.max(start);
                BigDecimal last = to.min(end);
                if (first.compareTo(last) < 0) {
                    BigDecimal shift = peg.from().subtract(start);
                    slice(peg.requirement(), first.add(shift), last.add(shift), each);
                }
                start = end;
            }
        }

        private Stream<Peg> pegs(PlannedReceipt receipt) {
            return Stream.ofNullable(supplies.get(receipt)).flatMap(supply -> supply.pegs().stream());
        }

        private void slice(Requirement requirement, BigDecimal from, BigDecimal to, BigDecimal each) {
            if (requirement.asker() instanceof Asker.FromOutside asker) {
                outside(asker.name(), requirement.quantity(), from, to, each);
            } else if (requirement.asker() instanceof Asker.ForPlanned above) {
                BigDecimal perOne =
                        requirement.quantity().divide(above.receipt().quantity(), MathContext.DECIMAL128);
                follow(
                        above.receipt(),
                        from.divide(perOne, MathContext.DECIMAL128),
                        to.divide(perOne, MathContext.DECIMAL128),
                        each.multiply(perOne, MathContext.DECIMAL128));
            }
        }

        /** Of several behind one asker each has its slice in turn, by name, as if it had asked itself. */
        private void outside(String asker, BigDecimal whole, BigDecimal from, BigDecimal to, BigDecimal each) {
            SortedMap<String, BigDecimal> all = behind.apply(asker);
            if (all.isEmpty()) {
                take(asker, to.subtract(from), each);
                return;
            }
            BigDecimal sum = all.values().stream().reduce(BigDecimal.ZERO, BigDecimal::add);
            BigDecimal start = BigDecimal.ZERO;
            for (Map.Entry<String, BigDecimal> one : all.entrySet()) {
                BigDecimal end = start.add(one.getValue().multiply(whole).divide(sum, MathContext.DECIMAL128));
                take(one.getKey(), to.min(end).subtract(from.max(start)), each);
                start = end;
            }
        }

        private void take(String asker, BigDecimal slice, BigDecimal each) {
            if (slice.signum() > 0) {
                BigDecimal quantity = slice.multiply(each).setScale(DIGITS, RoundingMode.HALF_UP);
                outside.merge(asker, quantity.stripTrailingZeros(), BigDecimal::add);
            }
        }
    }
}
