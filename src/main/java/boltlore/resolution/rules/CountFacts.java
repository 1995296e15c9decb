package boltlore.resolution.rules;

import boltlore.catalogue.Expectation;
import boltlore.catalogue.Hand;
import boltlore.catalogue.Line;
import boltlore.catalogue.Pair;
import boltlore.catalogue.Part;
import boltlore.catalogue.Port;
import boltlore.catalogue.Position;
import boltlore.measure.LineName;
import boltlore.measure.PartNumber;
import boltlore.resolution.Asker;
import boltlore.resolution.FamilyPlan;
import boltlore.resolution.rules.facts.Amount;
import boltlore.resolution.rules.facts.Expects;
import boltlore.resolution.rules.facts.FittedPort;
import boltlore.resolution.rules.facts.Holds;
import boltlore.resolution.rules.facts.PairCount;
import boltlore.resolution.rules.facts.PortMate;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;

/** What can be said only once the quantities are known: amounts, pairs, expectations, connectors. */
final class CountFacts {

    private final FamilyPlan plan;
    private final ConditionKeys keys;
    private final SortedMap<PartNumber, BigDecimal> quantities;
    private final List<Object> facts = new ArrayList<>();

    CountFacts(FamilyPlan plan, ConditionKeys keys, SortedMap<PartNumber, BigDecimal> quantities) {
        this.plan = plan;
        this.keys = keys;
        this.quantities = quantities;
    }

    List<Object> facts(Set<LineName> linesIn) {
        quantities.forEach((part, quantity) -> facts.add(new Amount(part.text(), quantity)));
        for (Position position : plan.family().positions()) {
            position(position, linesIn);
        }
        for (PartNumber number : quantities.keySet()) {
            plan.expectsOf(number).forEach(expectation -> expects(new Asker.OfPart(number), expectation));
        }
        pairs();
        ports();
        return facts;
    }

    private void position(Position position, Set<LineName> linesIn) {
        int lines = 0;
        for (Line line : position.lines()) {
            if (linesIn.contains(line.name())) {
                lines++;
                line.expects().forEach(expectation -> expects(new Asker.OfLine(line.name()), expectation));
            }
        }
        facts.add(new Amount(Amount.linesAt(position.name()), BigDecimal.valueOf(lines)));
    }

    private void expects(Asker asker, Expectation expectation) {
        String key = keys.of(expectation.when());
        if (key.equals(Holds.NEVER)) {
            return;
        }
        Expectation.Target target = expectation.target();
        facts.add(new Expects(asker, target.name(), counted(target), expectation.atLeast(), key));
    }

    private static String counted(Expectation.Target target) {
        return target instanceof Expectation.OfPosition of ? Amount.linesAt(of.position()) : target.name();
    }

    private void pairs() {
        for (Pair pair : plan.family().pairs()) {
            if (pair instanceof Pair.Both both) {
                facts.add(new PairCount(both.name(), count(both.name(), Hand.LEFT), count(both.name(), Hand.RIGHT)));
            }
        }
    }

    private BigDecimal count(String pair, Hand hand) {
        BigDecimal sum = BigDecimal.ZERO;
        for (Map.Entry<PartNumber, BigDecimal> entry : quantities.entrySet()) {
            Part part = plan.part(entry.getKey());
            if (part.handed() != null
                    && part.handed().pair().equals(pair)
                    && part.handed().hand() == hand) {
                sum = sum.add(entry.getValue());
            }
        }
        return sum;
    }

    private void ports() {
        Map<PartNumber, BigDecimal> asked = new HashMap<>();
        quantities.forEach((number, quantity) -> plan.part(number)
                .ports()
                .forEach(port -> port.mates().forEach(mate -> asked.merge(mate, quantity, BigDecimal::add))));
        quantities.forEach((number, quantity) -> {
            for (Port port : plan.part(number).ports()) {
                String blank = port.blank() == null ? "" : port.blank().text();
                facts.add(new FittedPort(number.text(), port.name(), quantity, blank));
                for (PartNumber mate : port.mates()) {
                    BigDecimal all = asked.getOrDefault(mate, BigDecimal.ZERO);
                    facts.add(new PortMate(number.text(), port.name(), mate.text(), all));
                }
            }
        });
    }
}
