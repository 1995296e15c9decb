package boltlore.catalogue.json;

import boltlore.catalogue.Condition;
import boltlore.catalogue.Family;
import boltlore.catalogue.Line;
import boltlore.catalogue.Position;
import boltlore.json.SourceLocation;
import boltlore.measure.LineName;
import boltlore.measure.PositionName;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;

/** Positions and lines of one family may not refer to one another in a loop. */
final class PositionLoops {

    private final Family family;
    private final Reading reading;
    private final Map<PositionName, Position> positions = new HashMap<>();

    PositionLoops(Family family, Reading reading) {
        this.family = family;
        this.reading = reading;
        family.positions().forEach(position -> positions.putIfAbsent(position.name(), position));
    }

    void check() {
        positionLoops(
                PositionLoops::asksFor,
                "no position whose conditions ask, by any way round, whether it is filled itself");
        positionLoops(PositionLoops::parent, "no position under itself");
        bracketLoops();
    }

    private void positionLoops(Function<Position, Collection<PositionName>> references, String expected) {
        Collection<PositionName> names = new TreeSet<>(positions.keySet());
        for (List<PositionName> loop : Loops.in(names, name -> known(name, references))) {
            SourceLocation location = reading.sources().of(positions.get(loop.get(0)));
            reading.faults()
                    .add(location.fault("the loop " + Loops.says(loop), expected, "Remove one of these steps."));
        }
    }

    private Collection<PositionName> known(PositionName name, Function<Position, Collection<PositionName>> references) {
        Position position = positions.get(name);
        return position == null ? List.of() : references.apply(position);
    }

    private static Collection<PositionName> parent(Position position) {
        return position.under() == null ? List.of() : List.of(position.under());
    }

    private static Collection<PositionName> asksFor(Position position) {
        Set<PositionName> asked = new TreeSet<>();
        filled(position.dueOrAlways(), asked);
        for (Line line : position.lines()) {
            filled(line.when(), asked);
            line.needs().forEach(need -> filled(need.when(), asked));
            line.expects().forEach(expectation -> filled(expectation.when(), asked));
        }
        return asked;
    }

    private static void filled(Condition condition, Set<PositionName> into) {
        if (condition instanceof Condition.Filled filled) {
            into.add(filled.position());
        } else if (condition instanceof Condition.Not not) {
            filled(not.condition(), into);
        } else if (condition instanceof Condition.All all) {
            all.conditions().forEach(each -> filled(each, into));
        } else if (condition instanceof Condition.AnyOf any) {
            any.conditions().forEach(each -> filled(each, into));
        }
    }

    /** A bracket carries the brackets at the positions that it carries. */
    private void bracketLoops() {
        Map<LineName, Line> brackets = new TreeMap<>();
        Map<LineName, List<LineName>> carried = new HashMap<>();
        family.lines().filter(Line::isBracket).forEach(line -> {
            brackets.putIfAbsent(line.name(), line);
            carried.putIfAbsent(line.name(), carried(line));
        });
        for (List<LineName> loop : Loops.in(brackets.keySet(), name -> carried.getOrDefault(name, List.of()))) {
            SourceLocation location = reading.sources().of(brackets.get(loop.get(0)));
            reading.faults()
                    .add(location.fault(
                            "the loop " + Loops.says(loop),
                            "no bracket that carries itself",
                            "Remove one of these steps from 'carries'."));
        }
    }

    private List<LineName> carried(Line bracket) {
        List<LineName> carried = new ArrayList<>();
        for (PositionName name : bracket.carries()) {
            Position position = positions.get(name);
            List<Line> lines = position == null ? Collections.emptyList() : position.lines();
            lines.stream().filter(Line::isBracket).map(Line::name).forEach(carried::add);
        }
        return carried;
    }
}
