package boltlore.resolution;

import boltlore.catalogue.Contained;
import boltlore.catalogue.Line;
import boltlore.catalogue.Need;
import boltlore.choices.Choices;
import boltlore.choices.Conditions;
import boltlore.measure.LineName;
import boltlore.measure.PartNumber;
import boltlore.measure.PositionName;
import java.math.BigDecimal;
import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * How many of each part a kit holds: the sum over its lines, over what assemblies contain and over what parts and lines
 * need; of the asks that share a joint, the largest, once.
 */
public final class Quantities {

    private final FamilyPlan plan;
    private final Choices choices;
    private final Set<PositionName> filled;
    private final Map<PartNumber, BigDecimal> sums = new HashMap<>();
    private final Map<PartNumber, Map<String, BigDecimal>> joints = new HashMap<>();

    private Quantities(FamilyPlan plan, Choices choices, Set<PositionName> filled) {
        this.plan = plan;
        this.choices = choices;
        this.filled = filled;
    }

    public static SortedMap<PartNumber, BigDecimal> sum(
            FamilyPlan plan, Choices choices, Set<LineName> linesIn, Set<PositionName> filled) {
        Quantities quantities = new Quantities(plan, choices, filled);
        for (LineName name : linesIn) {
            Line line = plan.line(name);
            quantities.add(line.part(), line.quantity());
            line.needs().forEach(need -> quantities.ask(need, line.quantity()));
        }
        return quantities.closed();
    }

    /** Askers come before what they ask for in the plan's order, so each sum is final when its turn comes. */
    private SortedMap<PartNumber, BigDecimal> closed() {
        SortedMap<PartNumber, BigDecimal> result = new TreeMap<>();
        for (PartNumber number : plan.askersFirst()) {
            joints.getOrDefault(number, Map.of()).values().forEach(atLeast -> add(number, atLeast));
            BigDecimal quantity = sums.get(number);
            if (quantity == null) {
                continue;
            }
            result.put(number, quantity);
            for (Contained child : plan.part(number).contains()) {
                add(child.part(), quantity.multiply(child.quantity()));
            }
            plan.needsOf(number).forEach(need -> ask(need, quantity));
        }
        return result;
    }

    private void ask(Need need, BigDecimal askers) {
        if (!Conditions.holds(need.when(), choices, filled::contains)) {
            return;
        }
        if (need.ask() instanceof Need.Each each) {
            add(need.part(), askers.multiply(each.quantity()));
        } else if (need.ask() instanceof Need.AtJoint at) {
            joints.computeIfAbsent(need.part(), part -> new HashMap<>())
                    .merge(at.joint(), at.atLeast(), BigDecimal::max);
        }
    }

    private void add(PartNumber part, BigDecimal quantity) {
        sums.merge(part, quantity, BigDecimal::add);
    }
}
