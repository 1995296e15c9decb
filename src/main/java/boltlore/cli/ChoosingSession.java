package boltlore.cli;

import boltlore.choices.Choices;
import boltlore.choosing.BestKits;
import boltlore.choosing.Chooser;
import boltlore.choosing.FamilyQuestions;
import boltlore.choosing.Importance;
import boltlore.choosing.Repairer;
import boltlore.logic.Deadline;
import boltlore.measure.OptionName;
import boltlore.order.Order;
import boltlore.trades.costing.quote.QuoteRequest;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;

/**
 * All that is asked of while choosing in one family.
 *
 * @param order what is known of the order so far
 * @param newest options that were answered only now, the last answer first
 */
record ChoosingSession(
        Order order,
        List<OptionName> newest,
        Chooser chooser,
        BestKits best,
        Repairer repairer,
        FamilyQuestions questions,
        Deadline time) {

    /**
     * For these choices.
     *
     * @param deadline of figures and repairs
     * @param reasons until when open values and reasons are wanted
     */
    static ChoosingSession of(
            CatalogueSession session, Order order, List<OptionName> newest, Deadline deadline, Deadline reasons) {
        Chooser chooser = new Chooser(order.choices().family(), reasons);
        BestKits best = new BestKits(
                session.resolver().resolver(),
                order,
                QuoteRequest.usual(order, LocalDate.now(ZoneId.systemDefault())),
                deadline);
        return new ChoosingSession(
                order,
                newest,
                chooser,
                best,
                new Repairer(chooser, best),
                new FamilyQuestions(session.catalogue(), chooser, deadline),
                deadline);
    }

    Choices choices() {
        return order.choices();
    }

    /** Of choices without a rank the newest means most. */
    Importance importance() {
        return Importance.of(order).thenNewest(newest);
    }
}
