package boltlore.resolution.rules;

import boltlore.choices.Choices;
import boltlore.measure.LineName;
import boltlore.measure.PartNumber;
import boltlore.measure.PositionName;
import boltlore.resolution.FamilyPlan;
import boltlore.resolution.Finding;
import boltlore.resolution.Reason;
import boltlore.resolution.Requirer;
import boltlore.resolution.rules.Facts.CautionOn;
import boltlore.resolution.rules.Facts.Filled;
import boltlore.resolution.rules.Facts.InKit;
import boltlore.resolution.rules.Facts.LineSelected;
import boltlore.resolution.rules.Facts.OmissionsStageDone;
import boltlore.resolution.rules.Facts.StaysOut;
import boltlore.resolution.rules.Facts.TakesFinish;
import boltlore.resolution.rules.Facts.Unused;
import boltlore.resolution.rules.Facts.UnusedBrackets;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * One order's session with the rules, in its stages: the kit; what the order leaves out of it; what can be said once
 * its quantities are known.
 */
public final class KitRules implements AutoCloseable {

    private final FamilyPlan plan;
    private final RuleSession session;
    private final ConditionKeys keys;
    private final SortedSet<LineName> leftOut = new TreeSet<>();

    public KitRules(FamilyPlan plan, PartFacts partFacts, Choices choices, boolean unusedDecided) {
        this(plan, partFacts, choices, unusedDecided, new RuleSession());
    }

    KitRules(FamilyPlan plan, PartFacts partFacts, Choices choices, boolean unusedDecided, RuleSession session) {
        this.plan = plan;
        this.session = session;
        KitFacts kitFacts = new KitFacts(plan, choices);
        this.keys = kitFacts.keys();
        List<Object> facts = new ArrayList<>(kitFacts.facts());
        facts.addAll(partFacts.of(kitFacts.reached()));
        facts.addAll(RoleFacts.derive(choices, keys));
        facts.addAll(FinishRoles.derive(plan.catalogue(), plan.family(), choices));
        facts.add(new UnusedBrackets(unusedDecided));
        conclude(facts, keys.facts());
    }

    /** Lines whose conditions hold, whether or not the order leaves them out. */
    public SortedSet<LineName> called() {
        return sorted(
                session.all(LineSelected.class).stream().map(LineSelected::line).toList());
    }

    /** Lines in the kit: none before it is said what stays out. */
    public SortedSet<LineName> lines() {
        SortedSet<LineName> lines = new TreeSet<>();
        for (InKit inKit : session.all(InKit.class)) {
            if (inKit.asker() instanceof Requirer.OfLine of) {
                lines.add(of.line());
            }
        }
        return lines;
    }

    public SortedSet<LineName> unused() {
        return sorted(session.all(Unused.class).stream().map(Unused::bracket).toList());
    }

    public SortedSet<PositionName> filled() {
        return sorted(session.all(Filled.class).stream().map(Filled::position).toList());
    }

    /** Says what the order leaves out, if only that it is nothing; all that is called for beside it makes the kit. */
    public void leaveOut(Set<LineName> lines) {
        leftOut.addAll(lines);
        List<Object> said = new ArrayList<>(lines.stream().map(StaysOut::new).toList());
        said.add(new OmissionsStageDone());
        conclude(said, List.of());
    }

    /** Tells the rules how many of each part there are, and draws everything together. */
    public KitConclusions count(SortedMap<PartNumber, BigDecimal> quantities) {
        int stated = keys.facts().size();
        List<Object> counts = new CountFacts(plan, keys, quantities).facts(lines());
        conclude(counts, keys.facts().subList(stated, keys.facts().size()));
        SortedMap<PartNumber, String> finishes = new TreeMap<>();
        session.all(TakesFinish.class).forEach(takes -> finishes.put(takes.part(), takes.finish()));
        SortedMap<String, SortedSet<String>> cautions = new TreeMap<>();
        session.all(CautionOn.class)
                .forEach(on -> cautions.computeIfAbsent(on.sheet(), sheet -> new TreeSet<>())
                        .add(on.caution()));
        return new KitConclusions(
                lines(),
                new TreeSet<>(leftOut),
                unused(),
                filled(),
                sorted(session.all(Reason.class)),
                finishes,
                cautions,
                sorted(session.all(Finding.class)));
    }

    private void conclude(List<Object> facts, List<Object> aboutConditions) {
        session.insert(facts);
        session.insert(aboutConditions);
        session.conclude();
    }

    private static <T extends Comparable<T>> SortedSet<T> sorted(Collection<T> all) {
        return new TreeSet<>(all);
    }

    @Override
    public void close() {
        session.close();
    }
}
