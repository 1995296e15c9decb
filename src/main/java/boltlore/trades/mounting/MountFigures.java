package boltlore.trades.mounting;

import boltlore.catalogue.Fixing;
import boltlore.catalogue.Mounting.Bolts;
import boltlore.catalogue.Mounting.Mount;
import boltlore.catalogue.Mounting.Shock;
import boltlore.findings.Finding;
import boltlore.measure.PositionName;
import boltlore.trades.fixings.BoltedJoint;
import boltlore.trades.fixings.PropertyClass;
import boltlore.trades.fixings.ScrewThread;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Whether the figures that mounts are judged with are those of the kit, and hang the whole mass on something. */
final class MountFigures {

    /** Shares that are rounded to two digits come to no less. */
    private static final BigDecimal LEAST_SHARES = new BigDecimal("0.99");

    /** The weaker side of each mount rounded up comes to no more: common practice, no source. */
    private static final BigDecimal MOST_SHARES = new BigDecimal("1.2");

    /**
     * Multiples of the weight that a battery of a car or van must bear ahead and across: least peaks of the mechanical shock
     * test of UN Regulation 100 for M1 and N1, from memory.
     */
    static final BigDecimal USUAL_AHEAD = BigDecimal.valueOf(20);

    static final BigDecimal USUAL_ACROSS = BigDecimal.valueOf(8);

    /** Rounding of a stress area in a table. */
    static final double TOLERANCE = 0.02;

    private static final double NEWTON_IN_KN = 1000;

    /** So many bolts alike that a kit has at a mount. */
    record Brought(Fixing fixing, BigDecimal quantity) {}

    private MountFigures() {}

    /** Of one order's mounts and shocks, against the joints of its kit. */
    static List<Finding> findings(List<Mount> mounts, List<Shock> shocks, List<BoltedJoint> joints) {
        List<Finding> found = new ArrayList<>();
        if (mounts.isEmpty()) {
            return found;
        }
        shares(mounts).forEach(found::add);
        mounts.stream()
                .filter(mount -> mount.bolts() != null)
                .flatMap(mount -> bolts(mount, at(declared(mount), joints)).stream())
                .forEach(found::add);
        shock(shocks, Shock::ahead, USUAL_AHEAD, 0).ifPresent(found::add);
        shock(shocks, Shock::across, USUAL_ACROSS, 1).ifPresent(found::add);
        return found;
    }

    /** Mounts that carry the same positions share their mass. */
    private static List<Finding> shares(List<Mount> mounts) {
        Map<Set<PositionName>, List<Mount>> sharing = new LinkedHashMap<>();
        mounts.forEach(mount -> sharing.computeIfAbsent(new HashSet<>(mount.carries()), key -> new ArrayList<>())
                .add(mount));
        List<Finding> found = new ArrayList<>();
        for (List<Mount> some : sharing.values()) {
            BigDecimal sum = some.stream()
                    .map(mount -> mount.share().multiply(BigDecimal.valueOf(mount.alike())))
                    .reduce(BigDecimal.ZERO, BigDecimal::add);
            if (sum.compareTo(LEAST_SHARES) < 0) {
                found.add(share(MountingFinding.MOUNT_SHARES_BELOW_ONE, some, sum));
            } else if (sum.compareTo(MOST_SHARES) > 0) {
                found.add(share(MountingFinding.MOUNT_SHARES_ABOVE_ONE, some, sum));
            }
        }
        return found;
    }

    private static Finding share(MountingFinding kind, List<Mount> some, BigDecimal sum) {
        return Finding.of(
                kind,
                some.get(0).name(),
                "mounts",
                some.stream().map(Mount::says).collect(Collectors.joining(", ")),
                "sum",
                sum,
                "most",
                MOST_SHARES);
    }

    /** Of a mount that is bolted. */
    static Bolts declared(Mount mount) {
        return Objects.requireNonNull(mount.bolts(), "the mount is bolted");
    }

    private static List<Brought> at(Bolts declared, List<BoltedJoint> joints) {
        return joints.stream()
                .filter(joint -> declared.at().contains(joint.position().name()))
                .map(joint -> new Brought(joint.fixing(), joint.quantity()))
                .toList();
    }

    /** What the positions that the mount names bring into the kit, against what it is judged with. */
    static Optional<Finding> bolts(Mount mount, List<Brought> there) {
        Bolts declared = declared(mount);
        if (declared.at().isEmpty()) {
            return Optional.of(Finding.of(MountingFinding.MOUNT_BOLTS_NOT_NAMED, mount.name(), "mount", mount.says()));
        }
        double bears = there.stream().mapToDouble(MountFigures::bears).sum() / mount.alike();
        double judged = MountLoad.bears(declared);
        boolean alike = count(there).compareTo(BigDecimal.valueOf((long) declared.count() * mount.alike())) == 0
                && bears <= judged * (1 + TOLERANCE);
        if (alike && bears >= judged * (1 - TOLERANCE)) {
            return Optional.empty();
        }
        MountingFinding kind = bears < judged * (1 - TOLERANCE)
                ? MountingFinding.MOUNT_BOLTS_WEAKER_IN_KIT
                : MountingFinding.MOUNT_BOLTS_OTHER_IN_KIT;
        return Optional.of(differ(kind, mount, declared, there, bears));
    }

    private static BigDecimal count(List<Brought> there) {
        return there.stream().map(Brought::quantity).reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    private static Finding differ(
            MountingFinding kind, Mount mount, Bolts declared, List<Brought> there, double bears) {
        return Finding.of(
                kind,
                mount.name(),
                "mount",
                mount.says(),
                "count",
                count(there),
                "bolts",
                there.stream().map(MountFigures::named).distinct().collect(Collectors.joining(", ")),
                "bears",
                BigDecimal.valueOf(bears / NEWTON_IN_KN).setScale(1, RoundingMode.FLOOR),
                "judged",
                BigDecimal.valueOf(MountLoad.bears(declared) / NEWTON_IN_KN).setScale(1, RoundingMode.FLOOR),
                "declared",
                (long) declared.count() * mount.alike(),
                "area",
                declared.stressAreaMm2(),
                "mpa",
                declared.ultimateMpa());
    }

    private static String named(Brought some) {
        Fixing bolt = some.fixing();
        return bolt.thread() + (bolt.propertyClass() == null ? "" : " " + bolt.propertyClass());
    }

    /** A bolt of a thread or class that nobody knows bears nothing. */
    static double bears(Brought some) {
        return ScrewThread.of(some.fixing().thread())
                .flatMap(thread -> PropertyClass.of(some.fixing().propertyClass())
                        .map(known -> MountLoad.bears(new Bolts(
                                        List.of(),
                                        1,
                                        thread.stressAreaMm2(),
                                        BigDecimal.valueOf(known.strength(thread.diameterMm())
                                                .tensile())))
                                * some.quantity().doubleValue()))
                .orElse(0.0);
    }

    private static Optional<Finding> shock(
            List<Shock> shocks, Function<Shock, BigDecimal> of, BigDecimal least, int direction) {
        BigDecimal most = shocks.stream().map(of).reduce(BigDecimal.ZERO, BigDecimal::max);
        return most.compareTo(least) >= 0
                ? Optional.empty()
                : Optional.of(Finding.of(
                        MountingFinding.SHOCK_BELOW_USUAL,
                        direction == 0 ? "ahead" : "across",
                        "direction",
                        direction,
                        "least",
                        least,
                        "most",
                        most));
    }
}
