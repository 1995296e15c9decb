package boltlore.oracle;

import boltlore.bill.Bill;
import boltlore.bill.BillMaker;
import boltlore.choices.Choices;
import boltlore.order.LeftOut;
import boltlore.order.Order;
import boltlore.order.OrderAddresses;
import boltlore.order.OrderTerms;
import boltlore.resolution.Resolution;
import boltlore.resolution.Resolver;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;

/** Bills of bare orders: nothing but a family and choices. */
final class Bills {

    private Bills() {}

    static Bill of(Resolver resolver, Choices choices, LeftOut leftOut) {
        Resolution.Resolved resolved = Agreement.resolved(resolver.resolve(choices, leftOut));
        return BillMaker.make(resolver.plan(choices.family().name()), order(choices, leftOut), resolved);
    }

    private static Order order(Choices choices, LeftOut leftOut) {
        return new Order(
                "BL-1",
                choices.family().name(),
                "Customer",
                "",
                "en",
                null,
                null,
                null,
                choices,
                new TreeSet<>(),
                new TreeSet<>(),
                List.of(),
                leftOut,
                List.of(),
                List.of(),
                "",
                OrderTerms.NONE,
                Map.of(),
                "",
                OrderAddresses.NONE);
    }
}
