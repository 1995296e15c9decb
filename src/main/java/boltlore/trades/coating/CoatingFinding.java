package boltlore.trades.coating;

import static boltlore.findings.Severity.CHECK;
import static boltlore.findings.Severity.NOTE;

import boltlore.findings.Kind;
import boltlore.findings.Severity;

/** What the coating of orders may show. */
public enum CoatingFinding implements Kind {
    /** Nobody has decided about a bracket that supports nothing; it is decided in the order, not here. */
    ON_HOLD(CHECK),
    /** Does not go into the oven, and no coater is named for it. */
    TOO_LARGE_FOR_OVEN(CHECK),
    MASK_NOT_HELD(CHECK),
    SIZE_NOT_KNOWN(CHECK),
    /** Coated after the day on which the order needs its pieces. */
    COATED_TOO_LATE(CHECK),
    /** Does not go into the oven and goes to the coater that is named for that. */
    TOO_LARGE_SENT_OUT(NOTE),
    LIGHTNESS_NOT_KNOWN(NOTE);

    private final Severity severity;

    CoatingFinding(Severity severity) {
        this.severity = severity;
    }

    @Override
    public Severity severity() {
        return severity;
    }

    @Override
    public String room() {
        return "coat";
    }

    @Override
    public boolean waivable() {
        return severity == CHECK && this != ON_HOLD;
    }
}
