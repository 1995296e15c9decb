package boltlore.checking;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Part;
import boltlore.catalogue.Source;
import boltlore.measure.Digits;
import boltlore.measure.PartNumber;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** Nothing is had for nothing, and nothing is paid for twice. */
final class CostGiven {

    private CostGiven() {}

    static Stream<Remark> remarks(Catalogue catalogue) {
        Set<PartNumber> boughtWhole = BoughtWhole.inside(catalogue);
        Set<PartNumber> costing = costing(catalogue);
        return catalogue.parts().values().stream()
                .flatMap(part ->
                        check(part, boughtWhole.contains(part.number()), costing.contains(part.number())).stream());
    }

    private static Optional<Remark> check(Part part, boolean boughtWhole, boolean costs) {
        if (boughtWhole && part.cost().signum() > 0) {
            return Optional.of(new Remark(
                    Said.part(part),
                    Check.COST_TWICE,
                    "a cost of " + Digits.plain(part.cost()) + " inside a bought assembly",
                    "0, for the assembly's cost is all of it",
                    "Set its cost to 0, or give what is also sold alone a number of its own"));
        }
        return boughtWhole || costs || part.reused()
                ? Optional.empty()
                : Optional.of(new Remark(
                        Said.part(part),
                        Check.COSTS_NOTHING,
                        "a cost of 0",
                        part.source() == Source.BUY ? "its price" : "its own cost, or that of its parts",
                        "Ask purchasing for the price, or fabrication for the time"));
    }

    /** What has a cost of its own, and what is made of such parts, however deep. */
    private static Set<PartNumber> costing(Catalogue catalogue) {
        Map<PartNumber, List<Part>> madeOf = new HashMap<>();
        Set<PartNumber> costing = new HashSet<>();
        Deque<PartNumber> open = new ArrayDeque<>();
        for (Part part : catalogue.parts().values()) {
            if (part.cost().signum() > 0 && costing.add(part.number())) {
                open.add(part.number());
            }
            part.contains().stream()
                    .filter(child -> part.source() == Source.MAKE)
                    .forEach(child -> madeOf.computeIfAbsent(child.part(), any -> new ArrayList<>())
                            .add(part));
        }
        while (!open.isEmpty()) {
            madeOf.getOrDefault(open.remove(), List.of()).stream()
                    .map(Part::number)
                    .filter(costing::add)
                    .forEach(open::add);
        }
        return costing;
    }
}
