package boltlore.resolution.rules;

import java.util.Collection;
import java.util.Collections;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import org.kie.api.event.rule.AfterMatchFiredEvent;
import org.kie.api.event.rule.DefaultAgendaEventListener;
import org.kie.api.runtime.ClassObjectFilter;
import org.kie.api.runtime.KieSession;

/** One resolution's session with the rules: facts go in, conclusions come out, {@link #close()} always follows. */
public final class RuleSession implements AutoCloseable {

    /** Firings allowed for each fact; the demo families need fewer than three. */
    private static final int FIRINGS_PER_FACT = 50;

    private static final int LISTENED_FIRINGS = 200;

    private final KieSession session;
    private long facts;

    public RuleSession() {
        this.session = RuleBase.get().newKieSession();
    }

    public void insert(Collection<?> newFacts) {
        newFacts.forEach(session::insert);
        facts += newFacts.size();
    }

    /**
     * Fires until nothing more follows.
     *
     * @throws RunawayRules where the rules fire more often than any catalogue of this size can ask for
     */
    public void conclude() {
        int bound = (int) Math.min(Integer.MAX_VALUE, 1_000 + facts * FIRINGS_PER_FACT);
        if (session.fireAllRules(bound) >= bound) {
            throw new RunawayRules(bound, firingNow());
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
