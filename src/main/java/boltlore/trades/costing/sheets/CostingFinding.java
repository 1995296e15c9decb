package boltlore.trades.costing.sheets;

import static boltlore.findings.Severity.CHECK;
import static boltlore.findings.Severity.NOTE;

import boltlore.findings.Kind;
import boltlore.findings.Severity;

/** What price and lead time of an order may show. */
public enum CostingFinding implements Kind {
    LOSS(CHECK),
    NO_PRICE(CHECK),
    DISCOUNT_ABOVE_AGREED(CHECK),
    DUE_DATE_TOO_SOON(CHECK),
    ORDER_BY_DATE_PAST(CHECK),
    MARGIN_BELOW_TARGET(NOTE);

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
