package boltlore.oracle;

import boltlore.catalogue.Condition;
import boltlore.catalogue.Fill;
import boltlore.trial.TrialLine;
import boltlore.trial.TrialPosition;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Positions by chance; brackets carry only positions of higher numbers, conditions ask only about lower ones. */
final class RandomPositions {

    private final Dice dice;
    private final int count;
    private final RandomConditions conditions;
    private final RandomParts parts;
    private final Map<Integer, List<String>> carriers = new TreeMap<>();
    private final List<String> lineNames = new ArrayList<>();

    RandomPositions(Dice dice, int count, RandomConditions conditions, RandomParts parts) {
        this.dice = dice;
        this.count = count;
        this.conditions = conditions;
        this.parts = parts;
    }

    List<TrialPosition> draw() {
        List<TrialPosition> positions = new ArrayList<>();
        for (int number = 0; number < count; number++) {
            positions.add(position(number));
        }
        return positions;
    }

    private TrialPosition position(int number) {
        TrialPosition position = TrialPosition.position("position-" + number);
        Fill fill = dice.oneOf(List.of(Fill.ONE, Fill.ONE, Fill.SOME, Fill.FREE));
        position.fill(fill);
        if (fill != Fill.FREE && dice.once(2)) {
            position.due(conditions.before(number));
        }
        if (number > 0 && dice.once(3)) {
            position.under("position-" + dice.below(number));
        }
        if (dice.once(3)) {
            position.route(conditions.anywhere(), dice.oneOf(List.of(950, 1_000, 1_050)), 100);
            position.route(Condition.ALWAYS, 1_000, 200);
        }
        for (int line = dice.between(1, 3); line > 0; line--) {
            position.line(line(number, "line-" + number + "-" + line));
        }
        held(number, position);
        return position;
    }

    private TrialLine line(int position, String name) {
        TrialLine line =
                TrialLine.line(name, parts.any()).quantity(dice.quantity()).when(conditions.before(position));
        for (int carried = position + 1; carried < count; carried++) {
            if (dice.once(4)) {
                line.carries("position-" + carried);
                carriers.computeIfAbsent(carried, at -> new ArrayList<>()).add(name);
            }
        }
        if (dice.once(3)) {
            line.needs(conditions.need(parts.any()));
        }
        if (dice.once(3)) {
            line.expects(conditions.expectation(parts.any()));
        }
        lineNames.add(name);
        return line;
    }

    /** By all that carry it, as where nothing is written; by each of them; or by any lines at all. */
    private void held(int number, TrialPosition position) {
        List<String> carrying = carriers.getOrDefault(number, List.of());
        if (!carrying.isEmpty() && dice.once(2)) {
            position.heldBy(carrying.toArray(String[]::new));
        } else if (!carrying.isEmpty()) {
            carrying.forEach(position::heldBy);
        } else if (dice.once(4)) {
            position.heldBy(dice.some(lineNames).toArray(String[]::new));
        }
    }
}
