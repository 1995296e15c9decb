package boltlore.trades.buying;

import boltlore.findings.Kind;
import boltlore.findings.Severity;

/** What keeps orders from being ready when they are due, as far as buying and making go. */
public enum BuyingFinding implements Kind {
    /**
     * Something should have been ordered or begun before today: {order}, {due}, {items}, {part}, {days}. One for each order, of
     * the worst item.
     */
    ORDERED_TOO_LATE(Severity.CHECK),
    /** The order names no day, so it is planned for the first on which it can be ready: {order}, {day}. */
    NO_DAY_DUE(Severity.NOTE),
    /** Something that is ordered is needed before it is expected: {receipt}, {part}, {quantity}, {expected}, {needed}. */
    NEEDED_SOONER(Severity.CHECK),
    /** A supplier takes no order so small: {supplier}, {cost}, {least}. */
    BELOW_LEAST_ORDER(Severity.CHECK),
    /** A bought part names no supplier: {part}, {name}. */
    NO_SUPPLIER(Severity.CHECK);

    private final Severity severity;

    BuyingFinding(Severity severity) {
        this.severity = severity;
    }

    @Override
    public Severity severity() {
        return severity;
    }

    @Override
    public String room() {
        return "buy";
    }
}
