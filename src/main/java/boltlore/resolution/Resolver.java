package boltlore.resolution;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Limit;
import boltlore.catalogue.Line;
import boltlore.choices.Choices;
import boltlore.choices.Conditions;
import boltlore.faults.Fault;
import boltlore.faults.Outcome;
import boltlore.measure.LineName;
import boltlore.measure.PartNumber;
import boltlore.order.LeftOut;
import boltlore.resolution.rules.KitConclusions;
import boltlore.resolution.rules.KitRules;
import boltlore.resolution.rules.PartFacts;
import boltlore.resolution.rules.RuleSession;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;

/** Resolves settled choices of one catalogue into kits. Safe to share between threads. */
public final class Resolver {

    private record Prepared(FamilyPlan plan, PartFacts partFacts) {}

    private final Catalogue catalogue;
    private final Map<String, Prepared> prepared = new ConcurrentHashMap<>();

    public Resolver(Catalogue catalogue) {
        this.catalogue = catalogue;
    }

    /** Loads the rules now, so that the first resolution does not have to. */
    public static void makeReady() {
        try (RuleSession none = new RuleSession()) {
            none.conclude();
        }
    }

    public Catalogue catalogue() {
        return catalogue;
    }

    public FamilyPlan plan(String family) {
        return prepared(family).plan();
    }

    /** Faulty only where the order leaves out lines that are not unused brackets of its kit. */
    public Outcome<Resolution> resolve(Choices choices, LeftOut leftOut) {
        List<Limit> broken = brokenLimits(choices);
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
        SortedMap<PartNumber, BigDecimal> quantities = Quantities.of(plan, choices, rules.lines(), rules.filled());
        KitConclusions concluded = rules.count(quantities);
        return new Resolution.Resolved(choices, concluded.kit(quantities), concluded.findings());
    }

    private static Set<LineName> staysOut(LeftOut leftOut, KitRules rules) {
        if (leftOut instanceof LeftOut.AllUnused) {
            return rules.unused();
        }
        return leftOut instanceof LeftOut.These these ? these.lines() : Set.of();
    }

    /** Limits that these choices break whatever is chosen beside them, in the family's order. */
    public static List<Limit> brokenLimits(Choices choices) {
        return choices.family().limits().stream()
                .filter(limit -> Conditions.certain(limit.forbids(), choices))
                .toList();
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

    static List<LineName> names(List<Line> lines) {
        return lines.stream().map(Line::name).sorted().toList();
    }
}
