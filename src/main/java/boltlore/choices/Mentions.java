package boltlore.choices;

import boltlore.catalogue.Companion;
import boltlore.catalogue.Condition;
import boltlore.catalogue.Expectation;
import boltlore.catalogue.Family;
import boltlore.catalogue.Limit;
import boltlore.catalogue.Line;
import boltlore.catalogue.Need;
import boltlore.catalogue.Pair;
import boltlore.catalogue.Position;
import boltlore.catalogue.Route;
import boltlore.measure.OptionName;
import java.util.ArrayDeque;
import java.util.Collections;
import java.util.Deque;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;

/** The options that stand in some condition of a family; all others are free. */
public final class Mentions {

    private final SortedSet<OptionName> mentioned = new TreeSet<>();

    /** Conditions that have been looked through: unfolded ones share much of what they say. */
    private final Set<Condition> met = Collections.newSetFromMap(new IdentityHashMap<>());

    private Mentions() {}

    public static SortedSet<OptionName> find(Family family) {
        Mentions mentions = new Mentions();
        for (Limit limit : family.limits()) {
            mentions.add(limit.forbids());
        }
        for (Pair pair : family.pairs()) {
            if (pair instanceof Pair.One one) {
                mentions.mentioned.add(one.follows());
                mentions.add(one.due());
            }
        }
        family.positions().forEach(mentions::position);
        for (Companion companion : family.companions()) {
            mentions.needs(companion.needs());
            mentions.expects(companion.expects());
        }
        return mentions.mentioned;
    }

    /** The options that stand in the condition. */
    public static SortedSet<OptionName> find(Condition condition) {
        Mentions mentions = new Mentions();
        mentions.add(condition);
        return mentions.mentioned;
    }

    private void position(Position position) {
        add(position.dueOrAlways());
        position.routes().stream().map(Route::when).forEach(this::add);
        for (Line line : position.lines()) {
            add(line.when());
            needs(line.needs());
            expects(line.expects());
        }
    }

    private void needs(List<Need> needs) {
        needs.stream().map(Need::when).forEach(this::add);
    }

    private void expects(List<Expectation> expects) {
        expects.stream().map(Expectation::when).forEach(this::add);
    }

    private void add(Condition condition) {
        Deque<Condition> open = new ArrayDeque<>(List.of(condition));
        while (!open.isEmpty()) {
            Condition next = open.pop();
            if (next instanceof Condition.Is is) {
                mentioned.add(is.option());
            } else if (met.add(next)) {
                next.parts().forEach(open::push);
            }
        }
    }
}
