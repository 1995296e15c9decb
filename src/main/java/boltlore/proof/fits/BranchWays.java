package boltlore.proof.fits;

import boltlore.catalogue.Branch;
import boltlore.catalogue.Condition;
import boltlore.catalogue.Fits;
import boltlore.catalogue.Flow;
import boltlore.logic.All;
import boltlore.logic.Any;
import boltlore.measure.PositionName;
import boltlore.proof.KitView;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * How the cables of the power wiring lie on the energy paths of fits.json: which way energy goes through each of them, from
 * what, and which cables come behind it.
 */
final class BranchWays {

    /** What a path takes its energy from. */
    enum Origin {
        /** A battery, which it discharges: other paths of its flow end where it begins. */
        STORE,
        /** The outside, or a device that changes one kind of current into another. */
        SOURCE
    }

    /**
     * A branch on one path.
     *
     * @param when the branch is there and the path goes through it
     * @param next branches that come behind it, each with when it does
     */
    record Way(Branch branch, Fits.Run run, Origin origin, Condition when, List<Next> next) {

        Flow flow() {
            return run.flow();
        }

        PositionName begins() {
            return run.steps().get(0).position();
        }

        PositionName ends() {
            return run.steps().get(run.steps().size() - 1).position();
        }
    }

    record Next(Branch branch, Condition when) {}

    private final KitView kit;
    private final List<Fits.Run> runs;
    private final List<Branch> branches;

    BranchWays(KitView kit) {
        this.kit = kit;
        this.runs = kit.family().fits().runs().stream()
                .filter(run -> !run.closed() && electric(run.flow()))
                .toList();
        this.branches = kit.family().electrics().branches();
    }

    private static boolean electric(Flow flow) {
        return switch (flow) {
            case HV_DC, AC_MAINS, TWELVE_VOLT -> true;
            case COOLANT, REFRIGERANT -> false;
        };
    }

    /** All ways of all branches, those that discharge a battery first. */
    List<Way> all() {
        return branches.stream().flatMap(branch -> of(branch).stream()).toList();
    }

    /** What charges the battery goes backwards through cables that also discharge it: the larger current is the latter's. */
    private List<Way> of(Branch branch) {
        List<Way> ways = runs.stream().flatMap(run -> on(run, branch)).toList();
        boolean discharges = ways.stream().anyMatch(way -> way.origin() == Origin.STORE);
        return ways.stream()
                .filter(way -> !discharges || way.origin() == Origin.STORE)
                .sorted(Comparator.comparing(Way::origin))
                .toList();
    }

    private Stream<Way> on(Fits.Run run, Branch branch) {
        List<Way> ways = new ArrayList<>();
        for (int at = 0; at < run.steps().size(); at++) {
            Fits.Step step = run.steps().get(at);
            if (step.position().equals(branch.position())) {
                Condition when = All.of(there(branch), required(run), unfolded(step.when()));
                ways.add(new Way(branch, run, origin(run), when, behind(run, at)));
            }
        }
        return ways.stream();
    }

    private Origin origin(Fits.Run run) {
        PositionName begins = run.steps().get(0).position();
        PositionName ends = run.steps().get(run.steps().size() - 1).position();
        boolean filled = ended(run.flow()).contains(begins);
        boolean fills = begun(run.flow()).contains(ends);
        return run.flow() != Flow.AC_MAINS && (filled || !fills) ? Origin.STORE : Origin.SOURCE;
    }

    /** Where paths of that flow end. */
    Set<PositionName> ended(Flow flow) {
        return ends(flow, run -> run.steps().get(run.steps().size() - 1).position());
    }

    /** Where paths of that flow begin. */
    Set<PositionName> begun(Flow flow) {
        return ends(flow, run -> run.steps().get(0).position());
    }

    private Set<PositionName> ends(Flow flow, Function<Fits.Run, PositionName> end) {
        Set<PositionName> found = new TreeSet<>(Comparator.comparing(PositionName::text));
        runs.stream().filter(run -> run.flow() == flow).map(end).forEach(found::add);
        return found;
    }

    /** The branches behind one step of a path; where it ends at a battery, the first of those that this one feeds. */
    private List<Next> behind(Fits.Run run, int at) {
        List<Next> found = new ArrayList<>();
        Condition before = first(run, at + 1, Condition.ALWAYS, found);
        PositionName end = run.steps().get(run.steps().size() - 1).position();
        runs.stream()
                .filter(other -> !other.equals(run) && other.flow() == run.flow())
                .filter(other -> other.steps().get(0).position().equals(end) && origin(other) == Origin.STORE)
                .forEach(other -> first(other, 0, before, found));
        return List.copyOf(found);
    }

    /** Gathers the branches at the first passed position that has some; returns when there is none on the path. */
    private Condition first(Fits.Run run, int from, Condition so, List<Next> found) {
        Condition before = All.of(so, required(run));
        for (Fits.Step step : run.steps().subList(from, run.steps().size())) {
            List<Branch> here = branches.stream()
                    .filter(branch -> branch.position().equals(step.position()))
                    .toList();
            if (!here.isEmpty()) {
                Condition passed = All.of(before, unfolded(step.when()));
                here.forEach(branch -> found.add(new Next(branch, All.of(there(branch), passed))));
                before = All.of(before, Any.but(unfolded(step.when())));
            }
        }
        return before;
    }

    Condition there(Branch branch) {
        return All.of(unfolded(branch.when()), kit.kit().filled(branch.position()));
    }

    private Condition required(Fits.Run run) {
        return unfolded(run.required());
    }

    private Condition unfolded(Condition condition) {
        return kit.kit().unfolded(condition);
    }
}
