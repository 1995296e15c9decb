package boltlore.desk.sales;

import boltlore.book.orders.Bench;
import boltlore.choices.Choices;
import boltlore.choosing.BestKit;
import boltlore.choosing.BestKits;
import boltlore.choosing.Chooser;
import boltlore.choosing.QuestionOrder;
import boltlore.choosing.Repairer;
import boltlore.logic.Deadline;
import boltlore.order.Order;
import boltlore.order.OrderBuilder;
import boltlore.trades.costing.quote.QuoteRequest;
import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayDeque;
import java.util.Collections;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.Function;

/**
 * What is kept ready for drafts that are sold alike: solvers that have learnt the family, each for one thread at a time, and
 * the cheapest kits that were found. Several at once ask without waiting for each other.
 */
final class Choosings {

    private static final int MOST_TERMS = 12;
    private static final int MOST_IDLE = 4;
    private static final int MOST_KITS = 20_000;
    private static final Duration LONGEST = Duration.ofSeconds(20);

    private final Bench bench;
    private final Map<Terms, SoldAlike> alike = new LinkedHashMap<>(MOST_TERMS, 0.75f, true) {
        @Override
        protected boolean removeEldestEntry(Map.Entry<Terms, SoldAlike> eldest) {
            return size() > MOST_TERMS;
        }
    };

    Choosings(Bench bench) {
        this.bench = bench;
    }

    /** All that a kit's price depends on beside its choices. */
    private record Terms(Order rest, LocalDate on) {

        static Terms of(Order order, LocalDate today) {
            Order rest = new OrderBuilder(order)
                    .name(OrderBuilder.NO_NUMBER)
                    .customer(OrderBuilder.NO_CUSTOMER)
                    .choices(Choices.of(order.choices().family(), Map.of()))
                    .settledByDate(new TreeSet<>())
                    .due(null)
                    .language("en")
                    .build();
            return new Terms(rest, QuoteRequest.usual(order, today).on());
        }
    }

    /** Drafts of the same terms. */
    private static final class SoldAlike {
        private final Deque<Choosing> idle = new ArrayDeque<>();
        private final Map<Choices, Optional<BestKit>> known =
                Collections.synchronizedMap(new LinkedHashMap<>(64, 0.75f, true) {
                    @Override
                    protected boolean removeEldestEntry(Map.Entry<Choices, Optional<BestKit>> eldest) {
                        return size() > MOST_KITS;
                    }
                });
    }

    /** What one thread asks. */
    record Choosing(
            Chooser chooser,
            BestKits best,
            Repairer repairer,
            QuestionOrder order,
            Deadline time,
            Map<Choices, Optional<BestKit>> known) {}

    /** Asks with solvers of one's own for as long as it takes. */
    <T> T with(Order order, LocalDate today, Function<Choosing, T> asking) {
        Terms terms = Terms.of(order, today);
        SoldAlike sold;
        Choosing choosing;
        synchronized (alike) {
            sold = alike.computeIfAbsent(terms, same -> new SoldAlike());
            choosing = sold.idle.poll();
        }
        if (choosing == null) {
            choosing = begin(terms, sold);
        }
        choosing.time().begin();
        T answer = asking.apply(choosing);
        synchronized (alike) {
            if (sold.idle.size() < MOST_IDLE) {
                sold.idle.push(choosing);
            }
        }
        return answer;
    }

    private Choosing begin(Terms terms, SoldAlike sold) {
        Deadline time = Deadline.in(LONGEST.toNanos(), System::nanoTime);
        Chooser chooser = new Chooser(terms.rest().choices().family());
        BestKits best =
                new BestKits(bench.resolver().resolver(), terms.rest(), new QuoteRequest(terms.on(), null, null), time);
        return new Choosing(chooser, best, new Repairer(chooser, best), new QuestionOrder(chooser), time, sold.known);
    }
}
