package boltlore.trades.cutting;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/**
 * The rack of remnants.
 *
 * @param remnants at hand
 * @param usedUp those that lay there before and were cut up; their marks are never given again, so that a heat number can
 *     be followed by them
 */
public record RemnantRack(List<Remnant> remnants, List<Remnant> usedUp) {

    public static final RemnantRack EMPTY = new RemnantRack(List.of(), List.of());

    public RemnantRack {
        remnants = List.copyOf(remnants);
        usedUp = List.copyOf(usedUp);
    }

    /** All marks that are on a bar or have been. */
    Set<String> marks() {
        Set<String> marks = new HashSet<>();
        Stream.concat(remnants.stream(), usedUp.stream()).map(Remnant::name).forEach(marks::add);
        return marks;
    }

    /** What it is when all is cut. */
    RemnantRack after(CutPlan plan) {
        List<Remnant> left = plan.left().toList();
        Stream<Remnant> taken = remnants.stream().filter(remnant -> !left.contains(remnant));
        return new RemnantRack(left, Stream.concat(usedUp.stream(), taken).toList());
    }
}
