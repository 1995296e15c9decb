package boltlore.netting;

import java.math.BigDecimal;

/**
 * What should be ordered or made.
 *
 * @param due the period in which it must be in
 * @param release the period in which it must be ordered; may lie before the current one
 * @param net requirement that called for it; the lot may be larger
 */
public record PlannedReceipt(StockItem item, int due, int release, BigDecimal net, BigDecimal quantity) {

    /** Periods by which its release is past due; 0 where there is still time. */
    public int lateBy(int now) {
        return Math.max(0, now - release);
    }
}
