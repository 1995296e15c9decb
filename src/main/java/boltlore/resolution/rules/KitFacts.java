package boltlore.resolution.rules;

import boltlore.catalogue.Condition;
import boltlore.catalogue.Contained;
import boltlore.catalogue.Fill;
import boltlore.catalogue.Line;
import boltlore.catalogue.Need;
import boltlore.catalogue.Position;
import boltlore.catalogue.Route;
import boltlore.choices.Choices;
import boltlore.measure.LineName;
import boltlore.measure.PartNumber;
import boltlore.resolution.FamilyPlan;
import boltlore.resolution.Requirer;
import boltlore.resolution.Way;
import boltlore.resolution.rules.Facts.Brings;
import boltlore.resolution.rules.Facts.Cable;
import boltlore.resolution.rules.Facts.Carries;
import boltlore.resolution.rules.Facts.ConditionKey;
import boltlore.resolution.rules.Facts.Due;
import boltlore.resolution.rules.Facts.DueOnly;
import boltlore.resolution.rules.Facts.HeldByOneOf;
import boltlore.resolution.rules.Facts.Holder;
import boltlore.resolution.rules.Facts.Holds;
import boltlore.resolution.rules.Facts.LineOffered;
import boltlore.resolution.rules.Facts.OneLineOnly;
import boltlore.resolution.rules.Facts.RouteWindow;
import boltlore.resolution.rules.Facts.Under;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** States positions, lines and companions of a family as the facts of one order. */
final class KitFacts {

    private final FamilyPlan plan;
    private final List<Object> facts = new ArrayList<>();
    private final ConditionKeys keys;
    private final Set<PartNumber> reached = new LinkedHashSet<>();

    KitFacts(FamilyPlan plan, Choices choices) {
        this.plan = plan;
        this.keys = new ConditionKeys(choices);
    }

    ConditionKeys keys() {
        return keys;
    }

    /** Parts that the lines on offer can bring, directly or through others. */
    Set<PartNumber> reached() {
        return reached;
    }

    List<Object> facts() {
        facts.add(new Holds(ConditionKey.ALWAYS));
        plan.family().positions().forEach(this::position);
        List.copyOf(reached).forEach(this::part);
        return facts;
    }

    private void position(Position position) {
        if (position.under() != null) {
            facts.add(new Under(position.name(), position.under()));
        }
        for (Route route : position.routes()) {
            int most = route.needsMm() + route.slackMm();
            ifEver(route.when(), key -> new RouteWindow(position.name(), route.needsMm(), most, key));
        }
        holders(position);
        List<ConditionKey> offered = offered(position);
        if (position.fill() == Fill.ONE && offered.size() > 1) {
            facts.add(new OneLineOnly(position.name()));
        }
        due(position, offered.contains(ConditionKey.ALWAYS));
    }

    /** States the lines that may be called for; gives the keys of their conditions. */
    private List<ConditionKey> offered(Position position) {
        List<ConditionKey> offered = new ArrayList<>();
        for (Line line : position.lines()) {
            ConditionKey key = keys.of(line.when());
            if (!key.equals(ConditionKey.NEVER)) {
                offered.add(key);
                line(position, line, key);
            }
        }
        return offered;
    }

    /** What is filled for certain, or due for certain, needs no watching. */
    private void due(Position position, boolean filledForCertain) {
        if (position.fill() != Fill.FREE && !filledForCertain) {
            ifEver(position.dueOrAlways(), key -> new Due(position.name(), key));
        }
        if (position.due() != null) {
            ConditionKey key = keys.of(position.due());
            if (!key.equals(ConditionKey.ALWAYS)) {
                facts.add(new DueOnly(position.name(), key));
            }
        }
    }

    private void holders(Position position) {
        int number = 0;
        for (List<LineName> list : position.heldBy()) {
            String names = list.stream().map(LineName::text).sorted().collect(Collectors.joining(", "));
            facts.add(new HeldByOneOf(position.name(), number, names));
            for (LineName bracket : list) {
                facts.add(new Holder(position.name(), number, new Requirer.OfLine(bracket)));
            }
            number++;
        }
    }

    private void line(Position position, Line line, ConditionKey key) {
        Requirer asker = new Requirer.OfLine(line.name());
        facts.add(new LineOffered(line.name(), position.name(), line.isBracket(), key));
        facts.add(new Brings(asker, Way.LINE, line.part(), ConditionKey.ALWAYS));
        reach(line.part());
        line.needs().forEach(need -> need(asker, need));
        line.carries().forEach(carried -> facts.add(new Carries(line.name(), carried)));
        Integer lengthMm = plan.part(line.part()).lengthMm();
        if (lengthMm != null && !position.routes().isEmpty()) {
            facts.add(new Cable(line.name(), asker, position.name(), lengthMm));
        }
    }

    private void part(PartNumber number) {
        Requirer asker = new Requirer.OfPart(number);
        for (Contained child : plan.part(number).contains()) {
            facts.add(new Brings(asker, Way.CONTAINS, child.part(), ConditionKey.ALWAYS));
        }
        plan.needsOf(number).forEach(need -> need(asker, need));
    }

    private void need(Requirer asker, Need need) {
        ifEver(need.when(), key -> {
            reach(need.part());
            return new Brings(asker, Way.NEEDS, need.part(), key);
        });
    }

    private void reach(PartNumber part) {
        Deque<PartNumber> open = new ArrayDeque<>(List.of(part));
        while (!open.isEmpty()) {
            PartNumber next = open.pop();
            if (reached.add(next)) {
                plan.part(next).contains().forEach(child -> open.push(child.part()));
                plan.needsOf(next).forEach(need -> open.push(need.part()));
            }
        }
    }

    private void ifEver(Condition condition, java.util.function.Function<ConditionKey, Object> fact) {
        ConditionKey key = keys.of(condition);
        if (!key.equals(ConditionKey.NEVER)) {
            facts.add(fact.apply(key));
        }
    }
}
