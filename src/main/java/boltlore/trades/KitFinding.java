package boltlore.trades;

import boltlore.findings.Kind;
import boltlore.findings.Severity;

/** What any trade may say of an order. */
public enum KitFinding implements Kind {
    /**
     * The file that the trade works from is not there or says nothing of this order: {trade}, {file}. A note, since a
     * workshop need not work with every trade.
     */
    NOT_JUDGED(Severity.NOTE),
    /** The choices of {order} make no kit, so that {trades} have nothing to judge. */
    TRADES_WITHOUT_KIT(Severity.NOTE),
    /** Something keeps the trade from working: {found}, {expected}, {advice}. */
    NOT_WORKED(Severity.CHECK),
    /** The order stays out of what is made of several together: {order}, {due}, {why}. */
    ORDER_STOPPED(Severity.STOP),
    /** Somebody answers for it: {finding}, {who}, {when}, {why}. */
    WAIVED_IN_ORDER(Severity.NOTE),
    /** So it is in every kit of the family, and meant to be: {finding}, {why}. */
    ACCEPTED_IN_FAMILY(Severity.NOTE),
    /** A waiver of this order speaks of nothing that was found: {waiver}. A note, since it hides nothing. */
    WAIVER_WITHOUT_FINDING(Severity.NOTE);

    private final Severity severity;

    KitFinding(Severity severity) {
        this.severity = severity;
    }

    @Override
    public Severity severity() {
        return severity;
    }

    @Override
    public String room() {
        return "kit";
    }
}
