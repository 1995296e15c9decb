package boltlore.resolution.rules;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Limit;
import boltlore.choices.Choices;
import boltlore.faults.Fault;
import boltlore.faults.Outcome;
import boltlore.measure.LineName;
import boltlore.measure.PartNumber;
import boltlore.order.LeftOut;
import boltlore.resolution.FamilyPlan;
import boltlore.resolution.Finding;
import boltlore.resolution.FindingKind;
import boltlore.resolution.Quantities;
import boltlore.resolution.Resolution;
import boltlore.resolution.Resolver;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;

/** Resolves settled choices by the rules. Safe to share between threads. */
public final class RuleResolver implements Resolver {

    private record Prepared(FamilyPlan plan, PartFacts partFacts) {}

    private final Catalogue catalogue;
    private final Map<String, Prepared> prepared = new ConcurrentHashMap<>();

    public RuleResolver(Catalogue catalogue) {
        this.catalogue = catalogue;
    }

    /** Loads the rules now, so that the first resolution does not have to. */
    public static void makeReady() {
        try (RuleSession none = new RuleSession()) {
            none.conclude();
        }
    }

    @Override
    public Catalogue catalogue() {
        return catalogue;
    }

    @Override
    public FamilyPlan plan(String family) {
        return prepared(family).plan();
    }

    @Override
    public Outcome<Resolution> resolve(Choices choices, LeftOut leftOut) {
        List<Limit> broken = Resolver.brokenLimits(choices);
        if (!broken.isEmpty()) {
            return Outcome.sound(new Resolution.Contradicted(choices, broken, conflicts(broken)));
        }
        if (!choices.settled()) {
            return Outcome.sound(incomplete(choices));
        }
        Prepared family = prepared(choices.family().name());
        boolean decided = !(leftOut instanceof LeftOut.Undecided);
        try (KitRules rules = new KitRules(family.plan(), family.partFacts(), choices, decided)) {
            Set<LineName> staysOut = staysOut(leftOut, rules);
            List<Fault> wrong = WrongLeftOut.among(staysOut, rules.unused(), rules.called(), family.plan());
            if (!wrong.isEmpty()) {
                return Outcome.faulty(wrong);
            }
            rules.leaveOut(staysOut);
            return Outcome.sound(resolved(choices, family.plan(), rules));
        }
    }

    private static Resolution resolved(Choices choices, FamilyPlan plan, KitRules rules) {
        SortedMap<PartNumber, BigDecimal> quantities = Quantities.sum(plan, choices, rules.lines(), rules.filled());
        KitConclusions concluded = rules.count(quantities);
        return new Resolution.Resolved(choices, concluded.kit(quantities), concluded.findings());
    }

    private static Set<LineName> staysOut(LeftOut leftOut, KitRules rules) {
        if (leftOut instanceof LeftOut.AllUnused) {
            return rules.unused();
        }
        return leftOut instanceof LeftOut.These these ? these.lines() : Set.of();
    }

    private static SortedSet<Finding> conflicts(List<Limit> broken) {
        SortedSet<Finding> findings = new TreeSet<>();
        broken.forEach(limit -> findings.add(new Finding(FindingKind.CONFLICT, limit.name())));
        return findings;
    }

    private static Resolution incomplete(Choices choices) {
        SortedSet<Finding> findings = new TreeSet<>();
        choices.unsettled()
                .forEach(option -> findings.add(
                        new Finding(FindingKind.INCOMPLETE, option.name().text())));
        return new Resolution.Incomplete(
                choices,
                choices.unsettled().stream().map(option -> option.name()).toList(),
                findings);
    }

    private Prepared prepared(String family) {
        return prepared.computeIfAbsent(family, name -> {
            FamilyPlan plan = new FamilyPlan(catalogue, catalogue.family(name));
            return new Prepared(plan, new PartFacts(plan));
        });
    }
}
