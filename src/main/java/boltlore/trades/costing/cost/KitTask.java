package boltlore.trades.costing.cost;

import boltlore.bill.Bill;
import boltlore.bill.Origin;
import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Condition;
import boltlore.catalogue.CrateType;
import boltlore.catalogue.Family;
import boltlore.catalogue.KitTest;
import boltlore.catalogue.KitWork;
import boltlore.catalogue.Operation;
import boltlore.catalogue.OperationRate;
import boltlore.catalogue.Position;
import boltlore.catalogue.PriceBook;
import boltlore.catalogue.TestGroup;
import boltlore.catalogue.UsualCrate;
import boltlore.choices.Conditions;
import boltlore.measure.PositionName;
import boltlore.trades.costing.MinorUnit;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Work on a kit as a whole, with the crates that it leaves in: what lies at one position is put together, a group of tests
 * is made, a crate is packed. Each task of a family costs the same in every kit that has it, rounded to the minor unit by
 * itself, so that all sums add what is printed.
 *
 * @param presence ways in which a kit has it, any of which is enough
 * @param work minutes and their cost
 * @param elements all that it costs, overhead with it
 */
public record KitTask(List<Presence> presence, Work work, Elements elements) {

    /**
     * A way in which a kit has a task.
     *
     * @param when condition that holds for it
     * @param some positions of which one has a line of its own in the kit with a part that the workshop sends, for a part
     *     of the donor vehicle lies at the customer's; empty where that does not matter
     */
    public record Presence(Condition when, List<PositionName> some) {}

    /** What may have to be done with kits of the family. */
    public static List<KitTask> of(Family family, Catalogue catalogue, PriceBook prices) {
        Maker maker = new Maker(catalogue, prices);
        List<KitTask> tasks = new ArrayList<>();
        family.positions().forEach(position -> tasks.add(maker.assembly(position)));
        family.endOfLine().groups().forEach(group -> tasks.add(maker.test(group)));
        catalogue.shipping().usual().forEach(usual -> tasks.add(maker.packing(usual, family)));
        return tasks.stream()
                .filter(task -> task.elements().total().signum() != 0)
                .toList();
    }

    /** What is to be done with that kit. */
    static List<KitTask> of(Bill bill, Catalogue catalogue, PriceBook prices) {
        Set<PositionName> there = bill.items().stream()
                .filter(item ->
                        item.origin() instanceof Origin.OwnLine && !item.part().reused())
                .map(item -> item.position().name())
                .collect(Collectors.toSet());
        return of(bill.resolved().choices().family(), catalogue, prices).stream()
                .filter(task -> task.presence().stream().anyMatch(way -> isThere(way, bill, there)))
                .toList();
    }

    private static boolean isThere(Presence way, Bill bill, Set<PositionName> there) {
        return (way.some().isEmpty() || way.some().stream().anyMatch(there::contains))
                && Conditions.holds(
                        way.when(),
                        bill.resolved().choices(),
                        bill.resolved().kit().filled()::contains);
    }

    /** Makes the tasks of one family. */
    private record Maker(Catalogue catalogue, PriceBook prices, MinorUnit unit, List<String> ownCrates) {

        Maker(Catalogue catalogue, PriceBook prices) {
            this(
                    catalogue,
                    prices,
                    new MinorUnit(catalogue.workshop().currency()),
                    catalogue.shipping().ownCrates().stream()
                            .map(own -> own.bag())
                            .toList());
        }

        KitTask assembly(Position position) {
            return task(
                    List.of(new Presence(Condition.ALWAYS, List.of(position.name()))),
                    Element.KIT_ASSEMBLY,
                    prices.kitWork().minutes(position.stage()),
                    BigDecimal.ZERO);
        }

        /** Made where any of its tests is. */
        KitTask test(TestGroup group) {
            List<Presence> ways = group.tests().stream().map(Maker::made).toList();
            return task(ways, Element.KIT_TEST, group.minutes(), BigDecimal.ZERO);
        }

        /** What is made at every earth point is made with every kit. */
        private static Presence made(KitTest test) {
            return new Presence(test.when(), test.earthPoints() ? List.of() : test.at());
        }

        KitTask packing(UsualCrate usual, Family family) {
            List<PositionName> lying = family.positions().stream()
                    .filter(position -> usual.takes(position, ownCrates))
                    .map(Position::name)
                    .toList();
            CrateType type = catalogue.shipping().crate(usual.crate());
            BigDecimal count = BigDecimal.valueOf(usual.count());
            // A family that has nothing of it never takes it.
            List<Presence> ways = lying.isEmpty() ? List.of() : List.of(new Presence(Condition.ALWAYS, lying));
            return task(
                    ways,
                    Element.KIT_PACKING,
                    type.packMin().multiply(count),
                    type.cost().multiply(count));
        }

        private KitTask task(List<Presence> ways, Element element, BigDecimal minutes, BigDecimal crates) {
            KitWork kitWork = prices.kitWork();
            String called = element.says();
            OperationRate usual = prices.labour().of(called);
            OperationRate rate =
                    kitWork.perHour() == null ? usual : new OperationRate(called, kitWork.perHour(), false);
            Work work = Work.of(new Operation(called, BigDecimal.ZERO, minutes), rate, BigDecimal.ONE, 1, unit);
            BigDecimal material = unit.round(crates);
            BigDecimal overhead = PartCosting.overheadOn(
                    Elements.NONE.with(Element.LABOUR, work.cost()).with(Element.MATERIAL, material),
                    prices.overhead());
            Elements elements = Elements.NONE
                    .with(element, work.cost())
                    .with(Element.CRATES, material)
                    .with(Element.OVERHEAD, unit.round(overhead));
            return new KitTask(ways, work, elements);
        }
    }
}
