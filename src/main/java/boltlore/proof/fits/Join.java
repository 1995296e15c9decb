package boltlore.proof.fits;

import boltlore.catalogue.Condition;
import boltlore.catalogue.Fits;
import boltlore.catalogue.Line;
import boltlore.catalogue.Port;
import boltlore.logic.All;
import boltlore.logic.Any;
import boltlore.measure.PositionName;
import boltlore.proof.KitView;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Two steps of a run that follow one another in some orders, so that a port of the one is joined to a port of the other.
 *
 * @param when they do, as a condition over options
 */
record Join(Fits.Run run, Fits.Step from, Fits.Step to, Condition when) {

    /** One part at each end. */
    record Ends(
            Line from,
            @Nullable Port out,
            Line to,
            @Nullable Port in,
            Condition when) {

        boolean fit() {
            return out != null && in != null && out.fits(in);
        }
    }

    /** A port of a position that a join takes. */
    record Taken(PositionName position, String port) {}

    /**
     * Each join of the family once, although several runs go through it: the battery's cable is part of many paths. What a
     * run itself joins several times over, as plate to plate, is as many joins.
     */
    static List<Join> once(KitView kit) {
        Map<Set<Taken>, List<Join>> byEnds = new LinkedHashMap<>();
        for (Fits.Run run : kit.family().fits().runs()) {
            Map<Set<Taken>, Integer> met = new HashMap<>();
            for (Join join : of(kit, run)) {
                Set<Taken> ends = join.taken().collect(Collectors.toSet());
                List<Join> known = byEnds.computeIfAbsent(ends, first -> new ArrayList<>());
                int at = met.merge(ends, 1, Integer::sum) - 1;
                if (at < known.size()) {
                    known.set(at, known.get(at).or(join.when()));
                } else {
                    known.add(join);
                }
            }
        }
        return byEnds.values().stream().flatMap(List::stream).toList();
    }

    private Join or(Condition also) {
        return new Join(run, from, to, Any.of(when, also));
    }

    static List<Join> of(KitView kit, Fits.Run run) {
        Condition required = kit.kit().unfolded(run.required());
        List<Fits.Step> steps = run.steps();
        List<Join> joins = new ArrayList<>();
        for (int at = 0; at < steps.size(); at++) {
            Condition before = All.of(required, kit.kit().unfolded(steps.get(at).when()));
            int end = run.closed() ? at + steps.size() : steps.size();
            for (int next = at + 1; next < end && !before.equals(Any.NEVER); next++) {
                Fits.Step to = steps.get(next % steps.size());
                Condition passes = kit.kit().unfolded(to.when());
                joins.add(new Join(run, steps.get(at), to, All.of(before, passes)));
                before = All.of(before, Any.but(passes));
            }
        }
        return joins;
    }

    /** Each two parts that may stand at the two ends in one order. */
    Stream<Ends> ends(KitView kit) {
        return Lines.at(kit, from).flatMap(left -> Lines.at(kit, to).map(right -> ends(kit, left, right)));
    }

    private Ends ends(KitView kit, Line left, Line right) {
        return new Ends(
                left,
                Lines.port(kit, left, from.out()),
                right,
                Lines.port(kit, right, to.in()),
                All.of(when, kit.kit().in(left.name()), kit.kit().in(right.name())));
    }

    Stream<Taken> taken() {
        return Stream.of(new Taken(from.position(), from.out()), new Taken(to.position(), to.in()));
    }

    /** The lines at a step, and the ports of their parts. */
    static final class Lines {

        private Lines() {}

        static Stream<Line> at(KitView kit, Fits.Step step) {
            return kit.kit().position(step.position()).lines().stream();
        }

        static @Nullable Port port(KitView kit, Line line, String name) {
            return kit.catalogue().part(line.part()).port(name);
        }

        /** The ports at which the run goes through the part. */
        static Stream<Port> ports(KitView kit, Fits.Step step, Line line) {
            return Stream.of(step.in(), step.out())
                    .filter(name -> !name.isEmpty())
                    .map(name -> port(kit, line, name))
                    .filter(Objects::nonNull);
        }
    }
}
