package boltlore.book;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;

/** Where a purchase order stands now. */
public record PurchaseStanding(
        String purchase, String supplier, String currency, LocalDate on, boolean open, List<LineStanding> lines) {

    /**
     * One line of it.
     *
     * @param received so far
     */
    public record LineStanding(
            String part,
            String orderCode,
            BigDecimal quantity,
            String unit,
            BigDecimal unitCost,
            LocalDate due,
            BigDecimal received) {

        /** What is still to come, 0 or more. */
        public BigDecimal left() {
            return PurchaseStanding.left(quantity, received);
        }
    }

    /** What is still to come of a line, 0 or more. */
    public static BigDecimal left(BigDecimal quantity, BigDecimal received) {
        return quantity.subtract(received).max(BigDecimal.ZERO);
    }
}
