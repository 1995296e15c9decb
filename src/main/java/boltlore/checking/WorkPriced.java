package boltlore.checking;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Family;
import boltlore.catalogue.KitWork;
import boltlore.catalogue.PriceBook;
import boltlore.catalogue.TestGroup;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Where a workshop makes prices, they hold the work on a kit as a whole: putting it together, testing it, packing it. */
final class WorkPriced {

    private WorkPriced() {}

    static Stream<Remark> remarks(Catalogue catalogue) {
        PriceBook prices = catalogue.prices();
        return prices == null
                ? Stream.of()
                : Stream.of(
                                assembly(catalogue, prices.kitWork()),
                                packing(catalogue),
                                catalogue.families().values().stream().flatMap(WorkPriced::tests))
                        .flatMap(remarks -> remarks);
    }

    private static Stream<Remark> assembly(Catalogue catalogue, KitWork work) {
        boolean takesTime = work.positionMin().signum() > 0
                || work.stages().values().stream().anyMatch(minutes -> minutes.signum() > 0);
        boolean some = catalogue.families().values().stream()
                .anyMatch(family -> !family.positions().isEmpty());
        return takesTime || !some
                ? Stream.of()
                : Stream.of(new Remark(
                        "work on kits",
                        Check.NOT_IN_PRICE,
                        "no minutes of 'kitWork' in pricing.json",
                        "what it takes to put together what lies at one position",
                        "Write \"kitWork\": {\"positionMin\": ...}; until then each kit is assembled for nothing"));
    }

    /** Who has no crates at all says nothing of packing. */
    private static Stream<Remark> packing(Catalogue catalogue) {
        boolean known = catalogue.shipping().crates().isEmpty()
                || !catalogue.shipping().usual().isEmpty();
        return known
                ? Stream.of()
                : Stream.of(new Remark(
                        "crates",
                        Check.NOT_IN_PRICE,
                        "no 'usualCrates' in shipping.json",
                        "the crates that a kit usually takes, whose cost and packing its price holds",
                        "Write them down; until then each kit is packed for nothing"));
    }

    private static Stream<Remark> tests(Family family) {
        String untimed = family.endOfLine().groups().stream()
                .filter(group -> !group.tests().isEmpty() && group.minutes().signum() == 0)
                .map(TestGroup::name)
                .collect(Collectors.joining(", "));
        return untimed.isEmpty()
                ? Stream.of()
                : Stream.of(new Remark(
                        "tests of " + family.name(),
                        Check.NOT_IN_PRICE,
                        "no 'minutes' in tests.json of " + untimed,
                        "the minutes that each group of tests takes with one kit",
                        "Time one; until then each kit is tested for nothing"));
    }
}
