package boltlore.logic;

import boltlore.catalogue.BottomUp;
import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Condition;
import boltlore.catalogue.Family;
import boltlore.catalogue.Line;
import boltlore.catalogue.Position;
import boltlore.choices.Choices;
import boltlore.measure.LineName;
import boltlore.measure.PositionName;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * When a position is filled, a line called for, a bracket useful, a line in the kit: as conditions over options alone,
 * unfolded once. Says by formulas what the rules conclude of one order; neither uses the other.
 */
public final class KitConditions {

    private final Catalogue catalogue;
    private final Family family;
    private final Predicate<LineName> leftOut;
    private final @Nullable Choices settled;
    private final Map<PositionName, Position> positions = new LinkedHashMap<>();
    private final Map<LineName, Line> lines = new LinkedHashMap<>();
    private final BottomUp<PositionName, Condition> filled =
            new BottomUp<>(new HashMap<>(), this::positionsAskedBy, this::anyLine);
    private final Map<LineName, Condition> called = new HashMap<>();
    private final BottomUp<LineName, Condition> useful =
            new BottomUp<>(new HashMap<>(), this::bracketsOn, this::carries);
    private final Map<LineName, Condition> in = new HashMap<>();
    private final BottomUp<Condition, Condition> unfolded =
            new BottomUp<>(new IdentityHashMap<>(), Condition::parts, this::unfold);

    /** @param unusedLeftOut whether orders leave out every bracket that carries nothing, or none */
    public KitConditions(Catalogue catalogue, Family family, boolean unusedLeftOut) {
        this(catalogue, family, (LineName bracket) -> unusedLeftOut);
    }

    /** @param leftOut which brackets stay out where they carry nothing */
    public KitConditions(Catalogue catalogue, Family family, Predicate<LineName> leftOut) {
        this(catalogue, family, leftOut, null);
    }

    /**
     * Of one order: each condition comes to always or never.
     *
     * @param leftOut which brackets stay out where they carry nothing
     * @param settled the order's choices, complete; or null for those of any order
     */
    public KitConditions(Catalogue catalogue, Family family, Predicate<LineName> leftOut, @Nullable Choices settled) {
        this.catalogue = catalogue;
        this.family = family;
        this.leftOut = leftOut;
        this.settled = settled;
        for (Position position : family.positions()) {
            positions.put(position.name(), position);
            position.lines().forEach(line -> lines.put(line.name(), line));
        }
    }

    public Catalogue catalogue() {
        return catalogue;
    }

    public Family family() {
        return family;
    }

    /** The condition with each 'filled' replaced by what it stands for. */
    public Condition unfolded(Condition condition) {
        return unfolded.of(condition);
    }

    private Condition unfold(Condition condition) {
        if (condition instanceof Condition.Filled at) {
            return filled(at.position());
        }
        if (condition instanceof Condition.Not not) {
            return Any.but(unfolded(not.condition()));
        }
        if (condition instanceof Condition.All all) {
            return All.of(all.conditions().stream().map(this::unfolded).toList());
        }
        if (condition instanceof Condition.AnyOf any) {
            return Any.of(any.conditions().stream().map(this::unfolded).toList());
        }
        if (settled != null && condition instanceof Condition.Is is) {
            return is.values().contains(settled.value(is.option()).orElse("")) ? Condition.ALWAYS : Any.NEVER;
        }
        return condition;
    }

    /** When some line of the position is called for. */
    public Condition filled(PositionName name) {
        return filled.of(name);
    }

    private Condition anyLine(PositionName name) {
        return Any.of(
                position(name).lines().stream().map(line -> called(line.name())).toList());
    }

    /** Positions whose being filled decides on lines of this one. */
    private Set<PositionName> positionsAskedBy(PositionName name) {
        Set<PositionName> asked = new LinkedHashSet<>();
        Deque<Condition> open = new ArrayDeque<>();
        position(name).lines().forEach(line -> open.push(line.when()));
        while (!open.isEmpty()) {
            Condition next = open.pop();
            next.parts().forEach(open::push);
            if (next instanceof Condition.Filled at) {
                asked.add(at.position());
            }
        }
        return asked;
    }

    public Condition called(LineName name) {
        Condition known = called.get(name);
        if (known == null) {
            known = unfolded(line(name).when());
            called.put(name, known);
        }
        return known;
    }

    /** When the bracket line carries something that is itself of use. */
    public Condition useful(LineName bracket) {
        return useful.of(bracket);
    }

    private Condition carries(LineName bracket) {
        return Any.of(carriedBy(bracket)
                .map(upper ->
                        upper.isBracket() ? All.of(called(upper.name()), useful(upper.name())) : called(upper.name()))
                .toList());
    }

    private List<LineName> bracketsOn(LineName bracket) {
        return carriedBy(bracket).filter(Line::isBracket).map(Line::name).toList();
    }

    private Stream<Line> carriedBy(LineName bracket) {
        return line(bracket).carries().stream().flatMap(position -> position(position).lines().stream());
    }

    /** When the line is in the kit: called for, and not left out. */
    public Condition in(LineName name) {
        Condition known = in.get(name);
        if (known == null) {
            known = leftOut.test(name) && line(name).isBracket()
                    ? All.of(List.of(called(name), useful(name)))
                    : called(name);
            in.put(name, known);
        }
        return known;
    }

    public Position position(PositionName name) {
        Position position = positions.get(name);
        if (position == null) {
            throw new IllegalArgumentException("No position " + name + " in family " + family.name());
        }
        return position;
    }

    public Line line(LineName name) {
        Line line = lines.get(name);
        if (line == null) {
            throw new IllegalArgumentException("No line " + name + " in family " + family.name());
        }
        return line;
    }
}
