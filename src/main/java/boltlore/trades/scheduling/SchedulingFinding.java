package boltlore.trades.scheduling;

import boltlore.findings.Kind;
import boltlore.findings.Severity;

/** What keeps orders from being finished in time. */
public enum SchedulingFinding implements Kind {
    /** It is finished after its date: {order}, {due}, {finish}, {days}, {why}. */
    ORDER_LATE(Severity.CHECK),
    /** Its date was over before the plan began: {order}, {due}, {on}, {finish}, {why}. */
    DUE_DATE_PAST(Severity.CHECK),
    /** A centre has less than is needed: {centre}, {week}, {from}, {needed}, {available}, {over}, {orders}. */
    WEEK_OVERLOADED(Severity.CHECK),
    /** Even alone it takes longer than its price says: {order}, {priced}, {finish}, {days}, {why}. */
    LEAD_TIME_TOO_SHORT(Severity.CHECK),
    /** Nobody is named who does it: {operation}, {orders}. */
    OPERATION_WITHOUT_CENTRE(Severity.NOTE),
    /** Nobody has said how much it can do: {centre}, {operations}, {orders}. */
    CENTRE_WITHOUT_HOURS(Severity.NOTE);

    private final Severity severity;

    SchedulingFinding(Severity severity) {
        this.severity = severity;
    }

    @Override
    public Severity severity() {
        return severity;
    }

    @Override
    public String room() {
        return "schedule";
    }

    /** What sets the day on which an order is finished; told inside the findings above. */
    enum SetBy implements Kind {
        /** All stations work on something else: {centre}, {days}. */
        CENTRE_FULL,
        /** The work of a part takes longer than its days: {part}, {name}, {days}, {taken}, {off}. */
        PART_BEYOND_ITS_DAYS,
        /** The work on the kit takes longer than its days: {days}, {taken}, {off}. */
        KIT_BEYOND_ITS_DAYS,
        /** {part}, {name}, {days}. */
        PART_DELIVERED,
        /** {part}, {name}, {days}. */
        PART_MADE,
        /** {part}, {name}, {days}. */
        PART_COATED,
        /** {days}. */
        KIT_FINISHED;

        @Override
        public Severity severity() {
            return Severity.NOTE;
        }

        @Override
        public String room() {
            return "schedule";
        }
    }
}
