package boltlore.trades.charging;

import static boltlore.trades.charging.ChargingFinding.FUSE_ABOVE_CABLE;
import static boltlore.trades.charging.ChargingFinding.FUSE_AGAINST_SHORT_CIRCUIT_ONLY;
import static boltlore.trades.charging.ChargingFinding.HEAT_ABOVE_CABLE;
import static boltlore.trades.charging.ChargingFinding.LOAD_ABOVE_CABLE;
import static boltlore.trades.charging.ChargingFinding.LOAD_ABOVE_FUSE;
import static boltlore.trades.charging.ChargingFinding.LOAD_ABOVE_PACK;
import static boltlore.trades.charging.ChargingFinding.SHORT_CIRCUIT_ABOVE_FUSE;
import static boltlore.trades.charging.ChargingFinding.VOLTAGE_ABOVE_CABLE;
import static boltlore.trades.charging.ChargingFinding.VOLTAGE_ABOVE_FUSE;

import boltlore.catalogue.Branch;
import boltlore.catalogue.Fuse;
import boltlore.catalogue.Fuse.Guards;
import boltlore.catalogue.Pack;
import boltlore.catalogue.PowerCable;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Compares load, fuse and cable of one branch: load ≤ fuse ≤ cable (IEC 60364-4-43, coordination between conductors and
 * overload protection, from memory), their voltages, the short-circuit current, and the heat of a short circuit.
 */
public final class BranchChecker {

    private final Branch branch;
    private final PowerCable cable;
    private final BigDecimal volts;
    private final Pack pack;
    private final BigDecimal carries;
    private final List<Comparison> comparisons = new ArrayList<>();

    private BranchChecker(Branch branch, PowerCable cable, Pack pack) {
        this.branch = branch;
        this.cable = cable;
        this.pack = pack;
        this.volts = branch.volts() == null ? pack.highestVolts() : branch.volts();
        this.carries = cable.amps().multiply(branch.derating());
    }

    /**
     * All that is compared in one branch.
     *
     * @param fuse null where none is ahead of it in the vehicle
     */
    public static BranchCheck check(Branch branch, @Nullable Fuse fuse, PowerCable cable, Pack pack) {
        BranchChecker checker = new BranchChecker(branch, cable, pack);
        checker.cable();
        checker.pack();
        if (fuse != null) {
            checker.fuse(fuse);
        }
        return new BranchCheck(branch, fuse, cable, checker.carries, List.copyOf(checker.comparisons));
    }

    private void cable() {
        compare(branch.loadAmps(), carries, LOAD_ABOVE_CABLE, "load", "cable", "assumed", cable.assumed());
        compare(volts, cable.volts(), VOLTAGE_ABOVE_CABLE, "volts", "cable");
    }

    /** What the mains feed is no load of the pack. */
    private void pack() {
        if (branch.volts() == null) {
            compare(branch.loadAmps(), pack.continuousAmps(), LOAD_ABOVE_PACK, "load", "pack");
        }
    }

    private void fuse(Fuse fuse) {
        compare(branch.loadAmps(), fuse.amps(), LOAD_ABOVE_FUSE, "load", "fuse");
        boolean protects = fuse.amps().compareTo(carries) <= 0 || fuse.guards() == Guards.OVERLOAD;
        compare(fuse.amps(), carries, protects ? FUSE_ABOVE_CABLE : FUSE_AGAINST_SHORT_CIRCUIT_ONLY, "fuse", "cable");
        voltage(fuse);
        heat(fuse);
    }

    /** What a short circuit of the mains amounts to is not known here. */
    private void voltage(Fuse fuse) {
        compare(volts, fuse.volts(), VOLTAGE_ABOVE_FUSE, "volts", "fuse");
        if (branch.volts() == null) {
            breaking(fuse);
        }
    }

    /** I = U / R of the full pack (Ohm's law), without the cable's own resistance, so on the safe side. */
    private void breaking(Fuse fuse) {
        BigDecimal kiloamps = pack.highestVolts().divide(pack.resistanceMilliohm(), MathContext.DECIMAL128);
        compare(kiloamps, fuse.breakingKiloamps(), SHORT_CIRCUIT_ABOVE_FUSE, "kiloamps", "breaking");
    }

    /** I² t ≤ k² S² (IEC 60364-4-43, 434.5.2). */
    private void heat(Fuse fuse) {
        BigDecimal bearsA2s = cable.kFactor().multiply(cable.areaMm2()).pow(2);
        compare(fuse.letThroughA2s(), bearsA2s, HEAT_ABOVE_CABLE, "through", "withstands");
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
