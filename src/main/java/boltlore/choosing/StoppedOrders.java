package boltlore.choosing;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Condition;
import boltlore.catalogue.Family;
import boltlore.catalogue.Option;
import boltlore.catalogue.Role;
import boltlore.choices.Choice;
import boltlore.choices.Choices;
import boltlore.choices.Mentions;
import boltlore.logic.All;
import boltlore.logic.Deadline;
import boltlore.logic.Truth;
import boltlore.measure.OptionName;
import boltlore.proof.FindingStatements;
import boltlore.proof.KitView;
import boltlore.proof.PossibleFinding;
import boltlore.proof.kinds.Kinds;
import boltlore.resolution.Finding;
import boltlore.resolution.FindingKind;
import java.util.Collection;
import java.util.Collections;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Which orders a finding stops, besides the one that it was found in. */
final class StoppedOrders {

    /** So many findings that no formula says may be met: then what is left may be as many orders as there are. */
    private static final int MOST_WITHOUT_FORMULA = 500;

    private static final Map<FindingKind, Set<Role>> LOOKS_AT = Map.of(
            FindingKind.V2L_OUTLET_OF_ANOTHER_MARKET, Set.of(Role.EXPORT, Role.MARKET),
            FindingKind.V2L_OUTLET_NEEDS_BIDIRECTIONAL_CHARGER, Set.of(Role.EXPORT, Role.CHARGER),
            FindingKind.V2L_OUTLET_ABOVE_CHARGER, Set.of(Role.EXPORT, Role.CHARGER),
            FindingKind.CHARGER_ABOVE_INLET, Set.of(Role.CHARGER, Role.INLET));

    private final Catalogue catalogue;
    private final Family family;
    private final Deadline deadline;
    private final Map<FindingKind, Map<Finding, Condition>> formulas = new EnumMap<>(FindingKind.class);
    private final Set<Condition> met = Collections.newSetFromMap(new IdentityHashMap<>());
    private @Nullable KitView kit;
    private int withoutFormula;

    StoppedOrders(Catalogue catalogue, Family family, Deadline deadline) {
        this.catalogue = catalogue;
        this.family = family;
        this.deadline = deadline;
    }

    /**
     * The orders that have the finding, as a proof states it; where it states none, those with the same values of all that
     * the finding looks at.
     *
     * @throws Deadline.Passed where too many were met of which no formula says when they stop orders
     */
    Condition with(Choices order, Finding finding) {
        Condition formula =
                formulas.computeIfAbsent(finding.kind(), this::stated).get(finding);
        if (formula != null && new Truth(order).of(formula)) {
            met.add(formula);
            return formula;
        }
        if (++withoutFormula > MOST_WITHOUT_FORMULA) {
            throw new Deadline.Passed("more than " + MOST_WITHOUT_FORMULA
                    + " kits have findings that stop them, and not all other kits were tried");
        }
        Condition stopped = alike(order, finding);
        met.add(stopped);
        return stopped;
    }

    /** All that was told so far. */
    Collection<Condition> met() {
        return met;
    }

    private Map<Finding, Condition> stated(FindingKind kind) {
        Map<Finding, Condition> stated = new HashMap<>();
        for (FindingStatements statements : Kinds.ofFindings()) {
            if (statements.finding() == kind) {
                for (PossibleFinding possible : statements.findings(kit())) {
                    Finding finding = new Finding(kind, possible.subject(), possible.detail());
                    possible.when().ifPresent(when -> stated.put(finding, when));
                }
            }
        }
        return stated;
    }

    private KitView kit() {
        KitView known = kit;
        if (known == null) {
            known = KitView.of(catalogue, family, false, deadline);
            kit = known;
        }
        return known;
    }

    private static Condition alike(Choices choices, Finding finding) {
        Set<OptionName> deciding = Mentions.find(choices.family());
        Set<Role> roles = LOOKS_AT.get(finding.kind());
        List<Choice> same = Chooser.list(choices).stream()
                .filter(choice -> roles == null
                        ? deciding.contains(choice.option())
                        : roles.stream().anyMatch(role -> inRole(choices.family(), choice, role)))
                .toList();
        return All.of(Wanted.all(same));
    }

    private static boolean inRole(Family family, Choice choice, Role role) {
        return family.inRole(role)
                .map(Option::name)
                .filter(choice.option()::equals)
                .isPresent();
    }
}
