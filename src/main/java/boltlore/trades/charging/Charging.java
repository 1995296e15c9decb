package boltlore.trades.charging;

import boltlore.bill.Bill;
import boltlore.catalogue.Electrics;
import boltlore.findings.Finding;
import boltlore.findings.Findings;
import java.math.BigDecimal;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Charging and high voltage of one order.
 *
 * @param mains what it charges at first: at home, or as asked for; null where nobody knows
 * @param ac at that supply with each cable, then at public posts; empty where facts are missing
 * @param dc null where the inlet has no contacts for direct current or facts are missing
 * @param export null where the order feeds no load
 * @param precharge null where facts are missing
 * @param isolationOhm least isolation at the pack's highest voltage, or null
 * @param branches each cable that the order has
 * @param others everything compared but the branches
 * @param missing what could not be worked out
 */
public record Charging(
        Electrics electrics,
        Bill bill,
        Fitted fitted,
        @Nullable Mains mains,
        List<AcCharging> ac,
        @Nullable DcCharging dc,
        @Nullable Export export,
        @Nullable Precharge precharge,
        @Nullable BigDecimal isolationOhm,
        List<BranchCheck> branches,
        List<Comparison> others,
        List<Finding> missing) {

    /** All that was compared. */
    public Stream<Comparison> comparisons() {
        return Stream.concat(others.stream(), branches.stream().flatMap(check -> check.comparisons().stream()));
    }

    /** Limits that are not kept, and what could not be judged. */
    public Findings findings() {
        Stream<Finding> broken =
                comparisons().filter(comparison -> !comparison.holds()).map(Comparison::finding);
        return Stream.concat(broken, missing.stream()).collect(Findings.collected());
    }
}
