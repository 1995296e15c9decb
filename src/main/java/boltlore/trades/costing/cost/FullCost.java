package boltlore.trades.costing.cost;

import boltlore.catalogue.PriceBook;
import boltlore.catalogue.Source;
import boltlore.measure.PartNumber;
import boltlore.trades.costing.CostedBill;
import java.math.BigDecimal;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * What a kit and its extras cost in full, in the workshop's currency.
 *
 * @param costed the costed bill that it stands beside
 * @param rows of the kit, all levels, without what is inside bought assemblies
 * @param tasks what is done with the kit as a whole, with its crates
 */
public record FullCost(
        CostedBill costed, PriceBook prices, List<CostedItem> rows, List<CostedExtra> extras, List<KitTask> tasks) {

    public FullCost {
        rows = List.copyOf(rows);
        extras = List.copyOf(extras);
        tasks = List.copyOf(tasks);
    }

    /** Of the kit, without extras. */
    public Elements kit() {
        return Elements.sum(rows.stream().map(CostedItem::elements).toList()).plus(ofTasks());
    }

    /** Of assembling, testing and packing the kit, with its crates. */
    public Elements ofTasks() {
        return Elements.sum(tasks.stream().map(KitTask::elements).toList());
    }

    public Elements ofExtras() {
        return Elements.sum(extras.stream().map(CostedExtra::elements).toList());
    }

    /** Of kit and extras. */
    public BigDecimal total() {
        return kit().total().add(ofExtras().total());
    }

    /** In the workshop's printing order; a sub-system without a row does not appear. */
    public Map<String, Elements> bySubSystem() {
        Map<String, Elements> found = new LinkedHashMap<>();
        rows.forEach(row -> found.merge(row.priced().subSystem(), row.elements(), Elements::plus));
        Map<String, Elements> sums = new LinkedHashMap<>();
        for (String subSystem : costed.catalogue().workshop().subSystems()) {
            Elements elements = found.get(subSystem);
            if (elements != null) {
                sums.put(subSystem, elements);
            }
        }
        return sums;
    }

    /** All work on the kit by operation, the costliest first. */
    public List<Work> work() {
        Map<String, Work> sums = new TreeMap<>();
        Stream.concat(
                        rows.stream().flatMap(row -> row.work().stream()),
                        tasks.stream().map(KitTask::work))
                .filter(work -> work.setUpMin().add(work.runMin()).signum() != 0)
                .forEach(work -> sums.merge(work.rate().operation(), work, Work::plus));
        return sums.values().stream()
                .sorted(Comparator.comparing(Work::cost).reversed())
                .toList();
    }

    /** Bought parts of the kit by number. */
    public List<LandedPart> landed() {
        Map<PartNumber, LandedPart> sums = new TreeMap<>();
        rows.stream()
                .filter(row -> row.part().source() == Source.BUY)
                .map(row -> LandedPart.of(row, prices.landing()))
                .forEach(part -> sums.merge(part.part().number(), part, LandedPart::plus));
        return List.copyOf(sums.values());
    }

    /** Made parts of the kit by number, each without what is inside it. */
    public Map<PartNumber, Elements> made() {
        Map<PartNumber, Elements> sums = new TreeMap<>();
        rows.stream()
                .filter(row -> row.part().source() == Source.MAKE)
                .forEach(row -> sums.merge(row.part().number(), row.elements(), Elements::plus));
        return sums;
    }
}
