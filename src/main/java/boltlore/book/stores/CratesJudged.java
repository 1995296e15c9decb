package boltlore.book.stores;

import boltlore.faults.Fault;
import boltlore.trades.KitInWork;
import boltlore.trades.shipping.Shipment;
import boltlore.trades.shipping.ShippingTrade;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Crates that were closed, against those that the kit is planned to lie in. Another number, or another mass than the plan's by
 * more than a tenth, has a reason; what is less than half of the plan or more than twice as much is a slip of typing.
 *
 * @param planned how many crates, those too that are made for what fits into none of ours
 * @param plannedKg their gross mass; 0 where nothing is known of it
 */
public record CratesJudged(String order, int planned, BigDecimal plannedKg) {

    /** Common practice, no source. */
    private static final BigDecimal NEAR = new BigDecimal("0.10");

    private static final BigDecimal SLIP = BigDecimal.valueOf(2);

    /** Of a kit by its plan. */
    public static CratesJudged of(KitInWork kit) {
        Shipment plan = ShippingTrade.planned(kit);
        boolean whole = plan.tooLarge().isEmpty();
        return new CratesJudged(
                kit.order().name(),
                plan.crates().size() + plan.tooLarge().size(),
                whole ? plan.grossKg().setScale(1, RoundingMode.HALF_UP) : BigDecimal.ZERO);
    }

    List<Fault> faults(int crates, @Nullable BigDecimal massKg, String reason) {
        List<Fault> faults = new ArrayList<>();
        if (planned > 0) {
            judge(
                    crates + " crates",
                    BigDecimal.valueOf(crates),
                    BigDecimal.valueOf(planned),
                    "crates",
                    reason,
                    faults);
        }
        if (massKg != null && plannedKg.signum() > 0) {
            judge(massKg.toPlainString() + " kg", massKg, plannedKg, "kg", reason, faults);
        }
        return faults;
    }

    private void judge(String found, BigDecimal is, BigDecimal plan, String unit, String reason, List<Fault> faults) {
        BigDecimal off = is.subtract(plan).abs();
        boolean near = unit.equals("kg") ? off.compareTo(plan.multiply(NEAR)) <= 0 : off.signum() == 0;
        boolean slip =
                is.compareTo(plan.multiply(SLIP)) > 0 || is.multiply(SLIP).compareTo(plan) < 0;
        String planned = plan.toPlainString() + " " + unit + " as planned";
        if (slip) {
            faults.add(Fault.of(
                    "order " + order,
                    found,
                    planned + ", or between half and twice of that with a reason",
                    "Look again."));
        } else if (!near && reason.isBlank()) {
            faults.add(Fault.of("order " + order, found, planned + ", or a reason why it differs", "Add --reason."));
        }
    }
}
