package boltlore.trades.costing.sheets;

import static boltlore.findings.Severity.CHECK;

import boltlore.findings.Kind;
import boltlore.findings.Severity;

/** What price and lead time of an order may show. */
public enum CostingFinding implements Kind {
    /** To check and no stop: a workshop may sell one kit below cost on purpose. */
    LOSS(CHECK),
    NO_PRICE(CHECK),
    /** What stands in the order's terms is agreed; only a discount beyond that, or the partner's, needs a second look. */
    DISCOUNT_ABOVE_AGREED(CHECK),
    DUE_DATE_TOO_SOON(CHECK),
    ORDER_BY_DATE_PAST(CHECK),
    /** To check: what is paid for bought parts is converted by a rate that may have moved. */
    BUYING_RATE_OLD(CHECK),
    /** To check: who quotes below the workshop's own margin answers for it before the customer has the price. */
    MARGIN_BELOW_TARGET(CHECK);

    private final Severity severity;

    CostingFinding(Severity severity) {
        this.severity = severity;
    }

    @Override
    public Severity severity() {
        return severity;
    }

    @Override
    public String room() {
        return "price";
    }
}
