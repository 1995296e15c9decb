package boltlore.resolution.rules;

import java.util.Collection;
import java.util.Collections;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import org.kie.api.event.rule.AfterMatchFiredEvent;
import org.kie.api.event.rule.DefaultAgendaEventListener;
import org.kie.api.runtime.ClassObjectFilter;
import org.kie.api.runtime.KieSession;

/** One resolution's session with the rules: facts go in, conclusions come out, {@link #close()} always follows. */
public final class RuleSession implements AutoCloseable {

    /** Firings allowed for each fact; the demo families need fewer than three. */
    private static final int FIRINGS_PER_FACT = 50;

    /** Firings allowed in any case, so that few facts are not stopped too early. */
    private static final int FIRINGS_AT_LEAST = 1_000;

    private static final int LISTENED_FIRINGS = 200;

    private final KieSession session = RuleBase.newSession();
    private final int firingsAtLeast;
    private final int firingsPerFact;
    private final UnaryOperator<List<Object>> order;
    private long facts;

    public RuleSession() {
        this(FIRINGS_AT_LEAST, FIRINGS_PER_FACT, UnaryOperator.identity());
    }

    /** For tests: another bound, and facts inserted in another order. */
    RuleSession(int firingsAtLeast, int firingsPerFact, UnaryOperator<List<Object>> order) {
        this.firingsAtLeast = firingsAtLeast;
        this.firingsPerFact = firingsPerFact;
        this.order = order;
    }

    /** With facts inserted in another order, which must change nothing. */
    static RuleSession inOrder(UnaryOperator<List<Object>> order) {
        return new RuleSession(FIRINGS_AT_LEAST, FIRINGS_PER_FACT, order);
    }

    public void insert(Collection<?> newFacts) {
        order.apply(List.copyOf(newFacts)).forEach(session::insert);
        facts += newFacts.size();
    }

    /**
     * Fires until nothing more follows.
     *
     * @throws RunawayRules where the rules fire more often than any catalogue of this size can ask for
     */
    public void conclude() {
        int bound = (int) Math.min(Integer.MAX_VALUE, firingsAtLeast + facts * firingsPerFact);
        if (session.fireAllRules(bound) < bound) {
            return;
        }
        SortedMap<String, Integer> stillFiring = firingNow();
        if (!stillFiring.isEmpty()) {
            throw new RunawayRules(bound, stillFiring);
        }
    }

    /** All facts and conclusions of that type, in no particular order. */
    public <T> List<T> all(Class<T> type) {
        return session.getObjects(new ClassObjectFilter(type)).stream()
                .map(type::cast)
                .toList();
    }

    /** Counts how often each rule fires from here on; for tests and for finding what runs away. */
    public SortedMap<String, Integer> countFirings() {
        SortedMap<String, Integer> counts = new TreeMap<>();
        session.addEventListener(new DefaultAgendaEventListener() {
            @Override
            public void afterMatchFired(AfterMatchFiredEvent event) {
                counts.merge(event.getMatch().getRule().getName(), 1, Integer::sum);
            }
        });
        return Collections.unmodifiableSortedMap(counts);
    }

    private SortedMap<String, Integer> firingNow() {
        SortedMap<String, Integer> counts = countFirings();
        session.fireAllRules(LISTENED_FIRINGS);
        return counts;
    }

    @Override
    public void close() {
        session.dispose();
    }
}
