package boltlore.trades.charging;

import boltlore.bill.Bill;
import boltlore.catalogue.Electrics;
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
 * @param missing what could not be worked out, in sentences
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
        List<Judgement> others,
        List<String> missing) {

    /** All that was compared. */
    public Stream<Judgement> judgements() {
        return Stream.concat(others.stream(), branches.stream().flatMap(check -> check.judgements().stream()));
    }

    /** Whether something is too much. */
    public boolean stops() {
        return judgements().anyMatch(judgement -> judgement.verdict() == Verdict.TOO_MUCH);
    }
}
