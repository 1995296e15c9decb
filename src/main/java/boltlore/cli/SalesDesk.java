package boltlore.cli;

import boltlore.choices.Choices;
import boltlore.choosing.BestKits;
import boltlore.choosing.Chooser;
import boltlore.choosing.FamilyQuestions;
import boltlore.choosing.Importance;
import boltlore.choosing.Repairer;
import boltlore.logic.Deadline;
import boltlore.order.Order;

/**
 * All that is asked of while choosing in one family.
 *
 * @param order what is known of the order so far
 */
record SalesDesk(
        Order order, Chooser chooser, BestKits best, Repairer repairer, FamilyQuestions questions, Deadline time) {

    static SalesDesk of(Bench bench, Order order, Deadline deadline) {
        Chooser chooser = new Chooser(order.choices().family());
        BestKits best = new BestKits(bench.resolver().resolver(), order, QuoteOption.usual(order), deadline);
        return new SalesDesk(
                order,
                chooser,
                best,
                new Repairer(chooser, best),
                new FamilyQuestions(bench.catalogue(), chooser, deadline),
                deadline);
    }

    Choices choices() {
        return order.choices();
    }

    Importance importance() {
        return Importance.of(order);
    }
}
