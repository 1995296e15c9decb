package boltlore.trades.charging;

import static boltlore.trades.charging.ChargingFinding.DROP_ABOVE_LIMIT;
import static boltlore.trades.charging.ChargingFinding.FUSE_ABOVE_CABLE;
import static boltlore.trades.charging.ChargingFinding.FUSE_AGAINST_SHORT_CIRCUIT_ONLY;
import static boltlore.trades.charging.ChargingFinding.FUSE_FAR_FROM_SOURCE;
import static boltlore.trades.charging.ChargingFinding.HEAT_ABOVE_CABLE;
import static boltlore.trades.charging.ChargingFinding.LOAD_ABOVE_CABLE;
import static boltlore.trades.charging.ChargingFinding.LOAD_ABOVE_FUSE;
import static boltlore.trades.charging.ChargingFinding.LOAD_ABOVE_PACK;
import static boltlore.trades.charging.ChargingFinding.PEAK_ABOVE_PACK;
import static boltlore.trades.charging.ChargingFinding.SHORT_CIRCUIT_ABOVE_FUSE;
import static boltlore.trades.charging.ChargingFinding.VOLTAGE_ABOVE_CABLE;
import static boltlore.trades.charging.ChargingFinding.VOLTAGE_ABOVE_FUSE;

import boltlore.catalogue.Branch;
import boltlore.catalogue.Branch.FedBy;
import boltlore.catalogue.Branch.Protection;
import boltlore.catalogue.ElectricLimits;
import boltlore.catalogue.Electrics;
import boltlore.catalogue.Feeds;
import boltlore.catalogue.Fuse;
import boltlore.catalogue.Fuse.Guards;
import boltlore.catalogue.Pack;
import boltlore.catalogue.PowerCable;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Compares load, fuse and cable of one branch: load ≤ fuse ≤ cable (IEC 60364-4-43, coordination between conductors and
 * overload protection, from memory), their voltages, the short-circuit current, and the heat of a short circuit. What
 * pack, 12 V battery or charger can feed has a fuse, or says what else limits its current.
 */
public final class BranchChecker {

    private final Branch branch;
    private final Electrics electrics;
    private final PowerCable cable;
    private final @Nullable Pack pack;
    private final @Nullable BranchSource source;
    private final BigDecimal carries;
    private final List<Comparison> comparisons = new ArrayList<>();

    private BranchChecker(Branch branch, Electrics electrics, PowerCable cable, @Nullable Pack pack) {
        this.branch = branch;
        this.electrics = electrics;
        this.cable = cable;
        this.pack = branch.fedBy() instanceof FedBy.Pack ? pack : null;
        this.source = BranchSource.of(branch, electrics, pack).orElse(null);
        this.carries = cable.amps().multiply(branch.derating());
    }

    /**
     * All that is compared in one branch.
     *
     * @param cable of the branch
     * @param pack null where it is not known
     * @param load null where it is not known
     * @param lengthMm of the cable one way, or null where it is not known
     */
    public static BranchCheck check(
            Branch branch,
            Electrics electrics,
            PowerCable cable,
            @Nullable Pack pack,
            @Nullable BranchLoad load,
            @Nullable Integer lengthMm) {
        BranchChecker checker = new BranchChecker(branch, electrics, cable, pack);
        Protection.Fuse ahead = branch.protection().fuse();
        Protection.FarEnd farEnd = branch.protection().farEnd();
        Fuse fuse = ahead == null ? null : electrics.fuse(ahead.name()).orElse(null);
        Fuse farFuse = farEnd == null ? null : electrics.fuse(farEnd.fuse()).orElse(null);
        checker.known(load);
        checker.cable(load);
        checker.fuses(fuse, farFuse, load);
        VoltageDrop drop = checker.drop(load, lengthMm);
        return new BranchCheck(
                branch, fuse, farFuse, cable, checker.carries, load, drop, List.copyOf(checker.comparisons));
    }

    private void known(@Nullable BranchLoad load) {
        if (source == null || load == null) {
            found(ChargingFinding.BRANCH_NOT_JUDGED);
        } else if (!load.derived()) {
            found(ChargingFinding.LOAD_NOT_DERIVED, "load", NumberFormats.rounded(load.mostAmps(), 1));
        }
    }

    private void cable(@Nullable BranchLoad load) {
        if (load != null) {
            compare(load.mostAmps(), carries, LOAD_ABOVE_CABLE, "load", "cable", "assumed", cable.assumed());
        }
        if (source != null) {
            compare(source.highestVolts(), cable.volts(), VOLTAGE_ABOVE_CABLE, "volts", "cable");
        }
        if (load != null && pack != null) {
            compare(load.hoursAmps(), pack.continuousAmps(), LOAD_ABOVE_PACK, "load", "pack");
            compare(load.mostAmps(), pack.peakAmps(), PEAK_ABOVE_PACK, "load", "pack");
        }
    }

    /** What only the mains feed is protected by the charging point. */
    private void fuses(@Nullable Fuse fuse, @Nullable Fuse farFuse, @Nullable BranchLoad load) {
        Protection protection = branch.protection();
        if (fuse != null) {
            fuse(fuse, load);
            distance(protection.fuse());
        } else if (!(branch.fedBy() instanceof FedBy.Mains)) {
            unfused(protection.limitedBy());
        }
        if (farFuse != null) {
            fuse(farFuse, load);
        }
        Protection.FarEnd farEnd = protection.farEnd();
        boolean unsaid =
                farEnd == null || (farFuse == null && farEnd.limitedBy().isEmpty());
        if (unsaid && (farEnd != null || fedFromItsFarEnd())) {
            found(ChargingFinding.FAR_END_NOT_PROTECTED);
        }
    }

    /**
     * Whether what lies at its other end drives a current into a short circuit of it, whatever the data says of its
     * protection: another string of the pack, of which it carries its share, or what charges the pack.
     */
    private boolean fedFromItsFarEnd() {
        return branch.fedBy() instanceof FedBy.Pack
                && (branch.feeds() == Feeds.Chosen.CHARGER_OUTPUT
                        || branch.feeds() == Feeds.Chosen.DIRECT_CHARGING
                        || (branch.feeds() instanceof Feeds.Branches all
                                && all.share().compareTo(BigDecimal.ONE) < 0));
    }

    private void unfused(String limitedBy) {
        if (limitedBy.isEmpty()) {
            found(ChargingFinding.NOT_PROTECTED);
        } else {
            found(ChargingFinding.PROTECTED_WITHOUT_FUSE, "limited", limitedBy.replaceFirst("\\.$", ""));
        }
    }

    private void distance(Protection.@Nullable Fuse ahead) {
        ElectricLimits limits = electrics.limits();
        if (ahead != null && ahead.afterMm() != null && limits != null && limits.unfusedMm() != null) {
            compare(
                    BigDecimal.valueOf(ahead.afterMm()),
                    BigDecimal.valueOf(limits.unfusedMm()),
                    FUSE_FAR_FROM_SOURCE,
                    "after",
                    "most",
                    "source",
                    limits.source());
        }
    }

    private void fuse(Fuse fuse, @Nullable BranchLoad load) {
        if (load != null) {
            compare(load.mostAmps(), fuse.amps(), LOAD_ABOVE_FUSE, "load", "fuse");
        }
        boolean protects = fuse.amps().compareTo(carries) <= 0 || fuse.guards() == Guards.OVERLOAD;
        compare(fuse.amps(), carries, protects ? FUSE_ABOVE_CABLE : FUSE_AGAINST_SHORT_CIRCUIT_ONLY, "fuse", "cable");
        if (source != null) {
            voltage(fuse, source);
        }
        heat(fuse);
    }

    /** What a short circuit of the mains amounts to is not known here. */
    private void voltage(Fuse fuse, BranchSource from) {
        compare(from.highestVolts(), fuse.volts(), VOLTAGE_ABOVE_FUSE, "volts", "fuse");
        if (from.shortCircuitKiloamps() != null) {
            compare(
                    from.shortCircuitKiloamps(),
                    fuse.breakingKiloamps(),
                    SHORT_CIRCUIT_ABOVE_FUSE,
                    "kiloamps",
                    "breaking");
        }
    }

    /** I² t ≤ k² S² (IEC 60364-4-43, 434.5.2). */
    private void heat(Fuse fuse) {
        BigDecimal bearsA2s = cable.kFactor().multiply(cable.areaMm2()).pow(2);
        compare(fuse.letThroughA2s(), bearsA2s, HEAT_ABOVE_CABLE, "through", "withstands");
    }

    private @Nullable VoltageDrop drop(@Nullable BranchLoad load, @Nullable Integer lengthMm) {
        if (load == null || lengthMm == null || source == null) {
            return null;
        }
        VoltageDrop drop = VoltageDrop.of(cable, lengthMm, load.mostAmps(), source.phases(), source.lowestVolts());
        ElectricLimits limits = electrics.limits();
        if (limits != null && limits.dropPercent() != null) {
            compare(drop.percent(), limits.dropPercent(), DROP_ABOVE_LIMIT, "drop", "most", "source", limits.source());
        }
        return drop;
    }

    private void found(ChargingFinding kind, Object... more) {
        List<Object> named = new ArrayList<>(List.of("branch", branch.says()));
        named.addAll(List.of(more));
        comparisons.add(Comparison.broken(branch.says(), kind, named.toArray()));
    }

    /** Kept where the value is not above the limit. */
    private void compare(
            BigDecimal value, BigDecimal limit, ChargingFinding kind, String valueIs, String limitIs, Object... more) {
        int decimals = kind == HEAT_ABOVE_CABLE ? 0 : 1;
        List<Object> named = new ArrayList<>(List.of("branch", branch.says()));
        named.addAll(List.of(
                valueIs, NumberFormats.rounded(value, decimals), limitIs, NumberFormats.rounded(limit, decimals)));
        named.addAll(List.of(more));
        boolean holds = value.compareTo(limit) <= 0;
        comparisons.add(Comparison.of(branch.says(), holds, kind, named.toArray()));
    }
}
