package boltlore.checking;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Part;
import boltlore.catalogue.Source;
import boltlore.measure.Digits;
import boltlore.measure.PartNumber;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** Nothing is had for nothing, and nothing is paid for twice. */
final class CostGiven {

    private CostGiven() {}

    static Stream<Remark> remarks(Catalogue catalogue) {
        Set<PartNumber> boughtWhole = BoughtWhole.inside(catalogue);
        return catalogue.parts().values().stream()
                .flatMap(part -> of(part, boughtWhole.contains(part.number()), catalogue).stream());
    }

    private static Optional<Remark> of(Part part, boolean boughtWhole, Catalogue catalogue) {
        if (boughtWhole && part.cost().signum() > 0) {
            return Optional.of(new Remark(
                    Said.part(part),
                    Check.COST_TWICE,
                    "a cost of " + Digits.plain(part.cost()) + " inside a bought assembly",
                    "0, for the assembly's cost is all of it",
                    "Set its cost to 0, or give what is also sold alone a number of its own"));
        }
        return boughtWhole || costsSomething(part, catalogue)
                ? Optional.empty()
                : Optional.of(new Remark(
                        Said.part(part),
                        Check.COSTS_NOTHING,
                        "a cost of 0",
                        part.source() == Source.BUY ? "its price" : "its own cost, or that of its parts",
                        "Ask purchasing for the price, or fabrication for the time"));
    }

    private static boolean costsSomething(Part part, Catalogue catalogue) {
        return part.cost().signum() > 0
                || (part.source() == Source.MAKE
                        && part.contains().stream()
                                .anyMatch(child -> costsSomething(catalogue.part(child.part()), catalogue)));
    }
}
