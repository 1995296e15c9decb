package boltlore.oracle;

import boltlore.catalogue.Condition;
import boltlore.catalogue.Effectivity;
import boltlore.catalogue.EffectivityScale;
import boltlore.catalogue.Fill;
import boltlore.trial.TrialLine;
import boltlore.trial.TrialPosition;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/** Positions by chance; brackets carry only positions of higher numbers, conditions ask only about lower ones. */
final class RandomPositions {

    private final Dice dice;
    private final int count;
    private final RandomConditions conditions;
    private final RandomParts parts;
    private final List<EffectivityScale> scales;
    private final Map<Integer, List<String>> carriers = new TreeMap<>();
    private final List<String> lineNames = new ArrayList<>();

    RandomPositions(
            Dice dice, int count, RandomConditions conditions, RandomParts parts, List<EffectivityScale> scales) {
        this.scales = scales;
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
        if (!scales.isEmpty() && dice.once(2)) {
            line.effective(effectivity(), scales);
        }
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

    /** Between days and numbers at which the scales are cut, either end open or not. */
    private Effectivity effectivity() {
        Ends days = ends(EffectivityScale.By.PLACED);
        Ends numbers = ends(EffectivityScale.By.CHASSIS);
        return new Effectivity(
                days.first() == null ? null : LocalDate.ofEpochDay(days.first()),
                days.last() == null ? null : LocalDate.ofEpochDay(days.last()),
                numbers.first(),
                numbers.last());
    }

    private record Ends(@Nullable Integer first, @Nullable Integer last) {}

    private Ends ends(EffectivityScale.By by) {
        List<Integer> begins = scales.stream()
                .filter(scale -> scale.by() == by)
                .flatMap(scale -> scale.begins().stream())
                .toList();
        if (begins.isEmpty()) {
            return new Ends(null, null);
        }
        int from = dice.below(begins.size() + 1);
        int until = dice.between(from, begins.size());
        return new Ends(from == 0 ? null : begins.get(from - 1), until == begins.size() ? null : begins.get(until) - 1);
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
