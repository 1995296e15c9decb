package boltlore.trades.charging;

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
final class BranchChecker {

    private final Branch branch;
    private final PowerCable cable;
    private final BigDecimal volts;
    private final Pack pack;
    private final BigDecimal carries;
    private final List<Judgement> judgements = new ArrayList<>();

    private BranchChecker(Branch branch, PowerCable cable, Pack pack) {
        this.branch = branch;
        this.cable = cable;
        this.pack = pack;
        this.volts = branch.volts() == null ? pack.highestVolts() : branch.volts();
        this.carries = cable.amps().multiply(branch.derating());
    }

    static BranchCheck check(Branch branch, @Nullable Fuse fuse, PowerCable cable, Pack pack) {
        BranchChecker checker = new BranchChecker(branch, cable, pack);
        checker.cable();
        checker.pack();
        if (fuse != null) {
            checker.fuse(fuse);
        }
        return new BranchCheck(branch, fuse, cable, checker.carries, List.copyOf(checker.judgements));
    }

    private void cable() {
        judge(
                branch.loadAmps().compareTo(carries) <= 0,
                "The load of " + Figures.amps(branch.loadAmps()) + " against the " + Figures.amps(carries)
                        + " that the cable carries here for hours (" + cable.assumed() + ").");
        judge(
                volts.compareTo(cable.volts()) <= 0,
                "Up to " + Figures.volts(volts) + " on a cable for " + Figures.volts(cable.volts()) + ".");
    }

    /** What the mains feed is no load of the pack. */
    private void pack() {
        if (branch.volts() == null) {
            judge(
                    branch.loadAmps().compareTo(pack.continuousAmps()) <= 0,
                    "The load of " + Figures.amps(branch.loadAmps()) + " against the "
                            + Figures.amps(pack.continuousAmps()) + " that the pack bears for hours.");
        }
    }

    private void fuse(Fuse fuse) {
        String rated = Figures.amps(fuse.amps());
        judge(
                branch.loadAmps().compareTo(fuse.amps()) <= 0,
                "The load of " + Figures.amps(branch.loadAmps()) + " through a fuse of " + rated + ".");
        overload(fuse, "A fuse of " + rated + " before a cable for " + Figures.amps(carries) + ".");
        voltage(fuse);
        heat(fuse);
    }

    /** What a short circuit of the mains amounts to is not known here. */
    private void voltage(Fuse fuse) {
        judge(
                volts.compareTo(fuse.volts()) <= 0,
                "Up to " + Figures.volts(volts) + " on a fuse for " + Figures.volts(fuse.volts()) + ".");
        if (branch.volts() == null) {
            breaking(fuse);
        }
    }

    private void overload(Fuse fuse, String says) {
        boolean guarded = fuse.amps().compareTo(carries) <= 0;
        if (guarded || fuse.guards() == Guards.OVERLOAD) {
            judge(guarded, says);
        } else {
            String set =
                    " It guards against short circuits only: set the limit of the current that keeps the cable from"
                            + " overload, " + Figures.amps(carries) + " at most, and note who set it.";
            judgements.add(new Judgement(branch.says(), Verdict.LOOK, says + set));
        }
    }

    /** I = U / R of the full pack (Ohm's law), without the cable's own resistance, so on the safe side. */
    private void breaking(Fuse fuse) {
        BigDecimal kiloamps = pack.highestVolts().divide(pack.resistanceMilliohm(), MathContext.DECIMAL128);
        judge(
                kiloamps.compareTo(fuse.breakingKiloamps()) <= 0,
                "A short circuit of up to " + Figures.number(kiloamps, 1) + " kA, and the fuse breaks "
                        + Figures.number(fuse.breakingKiloamps(), 1) + " kA.");
    }

    /** I² t ≤ k² S² (IEC 60364-4-43, 434.5.2). */
    private void heat(Fuse fuse) {
        BigDecimal bearsA2s = cable.kFactor().multiply(cable.areaMm2()).pow(2);
        judge(
                fuse.letThroughA2s().compareTo(bearsA2s) <= 0,
                "The fuse lets " + squared(fuse.letThroughA2s()) + " through a short circuit, the cable bears "
                        + squared(bearsA2s) + ".");
    }

    private static String squared(BigDecimal a2s) {
        return Figures.number(a2s, 0) + " A² s";
    }

    private void judge(boolean good, String says) {
        judgements.add(Judgement.of(branch.says(), good, Verdict.TOO_MUCH, says));
    }
}
