package boltlore.trades.charging;

import boltlore.catalogue.Branch;
import boltlore.catalogue.Condition;
import boltlore.catalogue.Family;
import boltlore.catalogue.Fits;
import boltlore.catalogue.Flow;
import boltlore.catalogue.Part;
import boltlore.catalogue.Port;
import boltlore.measure.PositionName;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * The ports that the current of a branch passes: those of its cable, and those that the energy paths of fits.json join to it.
 * Of mains they are held against inlet and charger elsewhere, so they are left out here.
 */
record BranchPorts(PositionName position, String port) {

    static Set<BranchPorts> of(Family family, Branch branch) {
        Set<BranchPorts> found = new LinkedHashSet<>();
        for (Fits.Run run : family.fits().runs()) {
            if (!run.closed() && (run.flow() == Flow.HV_DC || run.flow() == Flow.TWELVE_VOLT)) {
                List<Fits.Step> steps = run.steps();
                for (int at = 0; at < steps.size(); at++) {
                    if (steps.get(at).position().equals(branch.position())) {
                        add(found, steps.get(at), steps.get(at).in());
                        add(found, steps.get(at), steps.get(at).out());
                        before(found, steps.subList(0, at));
                        behind(found, steps.subList(at + 1, steps.size()));
                    }
                }
            }
        }
        return found;
    }

    private static void before(Set<BranchPorts> found, List<Fits.Step> steps) {
        for (int at = steps.size() - 1; at >= 0; at--) {
            add(found, steps.get(at), steps.get(at).out());
            if (steps.get(at).when().equals(Condition.ALWAYS)) {
                return;
            }
        }
    }

    private static void behind(Set<BranchPorts> found, List<Fits.Step> steps) {
        for (Fits.Step step : steps) {
            add(found, step, step.in());
            if (step.when().equals(Condition.ALWAYS)) {
                return;
            }
        }
    }

    private static void add(Set<BranchPorts> found, Fits.Step step, String port) {
        if (!port.isEmpty()) {
            found.add(new BranchPorts(step.position(), port));
        }
    }

    /** Of a part at the position; empty where it bears the load, or nobody says what it is rated for. */
    Optional<Comparison> of(Branch branch, @Nullable BranchLoad load, Part part) {
        Port found = part.port(port);
        Port.Joint joint = found == null ? null : found.joint();
        return load == null
                        || joint == null
                        || joint.amps() == null
                        || load.mostAmps().compareTo(joint.amps()) <= 0
                ? Optional.empty()
                : Optional.of(Comparison.broken(
                        branch.says(),
                        ChargingFinding.LOAD_ABOVE_PORT,
                        "branch",
                        branch.says(),
                        "load",
                        NumberFormats.rounded(load.mostAmps(), 1),
                        "port",
                        port,
                        "part",
                        part.number(),
                        "rated",
                        NumberFormats.rounded(joint.amps(), 1)));
    }
}
