package boltlore.resolution.rules;

import boltlore.catalogue.Expectation;
import boltlore.catalogue.Hand;
import boltlore.catalogue.Handed;
import boltlore.catalogue.Pair;
import boltlore.catalogue.Port;
import boltlore.measure.LineName;
import boltlore.measure.PartNumber;
import boltlore.measure.PositionName;
import boltlore.resolution.FamilyPlan;
import boltlore.resolution.Requirer;
import boltlore.resolution.rules.Facts.Amount;
import boltlore.resolution.rules.Facts.ConditionKey;
import boltlore.resolution.rules.Facts.Expects;
import boltlore.resolution.rules.Facts.FittedPort;
import boltlore.resolution.rules.Facts.PairCount;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/** What can be said only once the quantities are known: pairs, expectations, connectors, and the amounts these ask for. */
final class CountFacts {

    private final FamilyPlan plan;
    private final ConditionKeys keys;
    private final SortedMap<PartNumber, BigDecimal> quantities;
    private final List<Object> facts = new ArrayList<>();
    private final Set<PartNumber> countedParts = new TreeSet<>();
    private final Set<PositionName> countedPositions = new TreeSet<>();

    CountFacts(FamilyPlan plan, ConditionKeys keys, SortedMap<PartNumber, BigDecimal> quantities) {
        this.plan = plan;
        this.keys = keys;
        this.quantities = quantities;
    }

    List<Object> facts(Set<LineName> linesIn) {
        for (LineName name : linesIn) {
            plan.line(name).expects().forEach(expectation -> expects(new Requirer.OfLine(name), expectation));
        }
        for (PartNumber number : quantities.keySet()) {
            plan.expectsOf(number).forEach(expectation -> expects(new Requirer.OfPart(number), expectation));
        }
        pairs();
        ports();
        amounts(linesIn);
        return facts;
    }

    private void expects(Requirer asker, Expectation expectation) {
        ConditionKey key = keys.of(expectation.when());
        if (key.equals(ConditionKey.NEVER)) {
            return;
        }
        Expectation.Target target = expectation.target();
        facts.add(new Expects(asker, target.name(), counted(target), expectation.atLeast(), key));
    }

    private String counted(Expectation.Target target) {
        if (target instanceof Expectation.OfPosition of) {
            countedPositions.add(of.position());
            return Amount.linesAt(of.position());
        }
        if (target instanceof Expectation.OfPart of) {
            countedParts.add(of.part());
        }
        return target.name();
    }

    private void pairs() {
        Map<String, BigDecimal> left = new HashMap<>();
        Map<String, BigDecimal> right = new HashMap<>();
        quantities.forEach((number, quantity) -> {
            Handed handed = plan.part(number).handed();
            if (handed != null) {
                (handed.hand() == Hand.LEFT ? left : right).merge(handed.pair(), quantity, BigDecimal::add);
            }
        });
        for (Pair pair : plan.family().pairs()) {
            if (pair instanceof Pair.Both both) {
                facts.add(new PairCount(both.name(), orNone(left.get(both.name())), orNone(right.get(both.name()))));
            }
        }
    }

    private void ports() {
        PortClosing closing = new PortClosing(plan, quantities);
        for (PartNumber number : quantities.keySet()) {
            for (Port port : plan.part(number).connectors()) {
                String blank = port.blank() == null ? "" : port.blank().text();
                facts.add(new FittedPort(number.text(), port.name(), blank, closing.mayStayOpen(port)));
            }
        }
    }

    /** Only of what something asks for: a kit has hundreds of amounts, and the rules want a few dozen of them. */
    private void amounts(Set<LineName> linesIn) {
        for (PartNumber part : countedParts) {
            BigDecimal quantity = quantities.get(part);
            if (quantity != null) {
                facts.add(new Amount(part.text(), quantity));
            }
        }
        countedPositions.forEach(position ->
                facts.add(new Amount(Amount.linesAt(position), BigDecimal.valueOf(linesAt(position, linesIn)))));
    }

    private long linesAt(PositionName position, Set<LineName> linesIn) {
        return linesIn.stream()
                .filter(line -> plan.positionOf(line).name().equals(position))
                .count();
    }

    private static BigDecimal orNone(@Nullable BigDecimal quantity) {
        return quantity == null ? BigDecimal.ZERO : quantity;
    }
}
