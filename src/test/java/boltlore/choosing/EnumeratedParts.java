package boltlore.choosing;

import boltlore.catalogue.Line;
import boltlore.catalogue.Position;
import boltlore.choices.Choices;
import boltlore.choices.Conditions;
import boltlore.measure.LineName;
import boltlore.measure.PartNumber;
import boltlore.measure.PositionName;
import boltlore.oracle.Completions;
import boltlore.resolution.FamilyPlan;
import boltlore.resolution.Quantities;
import java.math.BigDecimal;
import java.util.HashMap;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/**
 * Parts that every valid completion of a partial choice brings, with their least quantity, by looking at each of them.
 *
 * @param completions how many valid completions there are
 */
record EnumeratedParts(SortedMap<PartNumber, BigDecimal> least, long completions) {

    static EnumeratedParts of(FamilyPlan plan, Choices partial) {
        Search search = new Search(plan);
        Completions.visit(partial, search::see);
        SortedMap<PartNumber, BigDecimal> least = search.least;
        return new EnumeratedParts(least == null ? new TreeMap<>() : least, search.seen);
    }

    private static final class Search {

        private final FamilyPlan plan;
        private @Nullable SortedMap<PartNumber, BigDecimal> least;
        private long seen;

        Search(FamilyPlan plan) {
            this.plan = plan;
        }

        boolean see(Choices choices) {
            seen++;
            SortedMap<PartNumber, BigDecimal> quantities = quantities(choices);
            SortedMap<PartNumber, BigDecimal> sofar = least;
            if (sofar == null) {
                least = quantities;
                return true;
            }
            sofar.keySet().retainAll(quantities.keySet());
            sofar.replaceAll((part, quantity) -> quantity.min(quantities.getOrDefault(part, quantity)));
            return true;
        }

        private SortedMap<PartNumber, BigDecimal> quantities(Choices choices) {
            Map<PositionName, Boolean> filled = new HashMap<>();
            TreeSet<LineName> lines = new TreeSet<>();
            TreeSet<PositionName> filledPositions = new TreeSet<>();
            for (Position position : plan.family().positions()) {
                for (Line line : position.lines()) {
                    if (Conditions.holds(line.when(), choices, other -> filled(other, choices, filled))) {
                        lines.add(line.name());
                        filledPositions.add(position.name());
                    }
                }
            }
            return Quantities.sum(plan, choices, lines, filledPositions);
        }

        private boolean filled(PositionName name, Choices choices, Map<PositionName, Boolean> known) {
            Boolean answer = known.get(name);
            if (answer == null) {
                answer = plan.family().position(name).stream()
                        .flatMap(position -> position.lines().stream())
                        .anyMatch(
                                line -> Conditions.holds(line.when(), choices, other -> filled(other, choices, known)));
                known.put(name, answer);
            }
            return answer;
        }
    }
}
