package boltlore.trades.costing.cost;

import java.math.BigDecimal;

/**
 * How one gets from the direct cost of the costed bill to the full cost of the same kit.
 *
 * @param direct cost as the costed bill adds it up
 * @param held labour that the part master's costs of made parts hold, which goes out
 * @param work labour, set-up and outside operations at their own rates, which come in
 * @param kitWork assembly, test and packing of the kit, and its crates, which come in
 * @param delivery freight, duty and clearance
 */
public record Bridge(
        BigDecimal direct,
        BigDecimal held,
        BigDecimal work,
        BigDecimal kitWork,
        BigDecimal delivery,
        BigDecimal overhead) {

    public static Bridge of(FullCost cost) {
        Elements kit = cost.kit();
        BigDecimal work = cost.rows().stream()
                .flatMap(row -> row.work().stream())
                .map(Work::cost)
                .reduce(BigDecimal.ZERO, BigDecimal::add);
        Elements tasks = cost.ofTasks();
        BigDecimal material = Elements.sum(cost.made().values())
                .of(Element.MATERIAL)
                .add(Elements.sum(cost.made().values()).of(Element.SCRAP));
        BigDecimal delivery = kit.of(Element.FREIGHT).add(kit.of(Element.DUTY)).add(kit.of(Element.CLEARANCE));
        return new Bridge(
                cost.costed().totals().cost(),
                cost.costed().totals().made().subtract(material),
                work,
                tasks.total().subtract(tasks.of(Element.OVERHEAD)),
                delivery,
                kit.of(Element.OVERHEAD));
    }

    public BigDecimal full() {
        return direct.subtract(held).add(work).add(kitWork).add(delivery).add(overhead);
    }
}
