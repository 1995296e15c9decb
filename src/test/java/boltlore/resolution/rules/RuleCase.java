package boltlore.resolution.rules;

import java.util.ArrayList;
import java.util.List;

/** One row of the table: facts from which a rule draws conclusions, and one change after which it does not. */
record RuleCase(String rule, List<Object> facts, List<Object> conclusions, String change, List<Object> nearMiss) {

    static Given rule(String sentence) {
        return new Given(sentence, List.of());
    }

    record Given(String rule, List<Object> facts) {

        Given given(Object... stated) {
            return new Given(rule, List.of(stated));
        }

        Drawn concludes(Object... conclusions) {
            return new Drawn(rule, facts, List.of(conclusions));
        }
    }

    record Drawn(String rule, List<Object> facts, List<Object> conclusions) {

        RuleCase butNotWith(Object added) {
            List<Object> changed = new ArrayList<>(facts);
            changed.add(added);
            return new RuleCase(rule, facts, conclusions, "with " + added, changed);
        }

        RuleCase butNotWithout(Object taken) {
            return new RuleCase(rule, facts, conclusions, "without " + taken, rest(taken));
        }

        RuleCase butNotWhen(Object fact, Object instead) {
            List<Object> changed = rest(fact);
            changed.add(instead);
            return new RuleCase(rule, facts, conclusions, instead + " instead of " + fact, changed);
        }

        private List<Object> rest(Object taken) {
            List<Object> changed = new ArrayList<>(facts);
            if (!changed.remove(taken)) {
                throw new IllegalArgumentException("Not among the facts of '" + rule + "': " + taken);
            }
            return changed;
        }
    }

    @Override
    public String toString() {
        return rule + " — not " + change;
    }
}
