package boltlore.trades.spares;

import boltlore.findings.Kind;
import boltlore.findings.Severity;

/** What keeps a worn part from being replaced in time; each is checked, and may be waived. */
public enum SparesFinding implements Kind {
    /** A bought part without supplier and without bin: {part}, {name}. */
    SPARE_FROM_NOWHERE,
    /** It comes later than it is due again: {part}, {name}, {days}, {months}. */
    SPARE_TOO_SLOW,
    /** It cannot be replaced by itself: {part}, {name}, {assembly}. */
    SPARE_WELDED_IN;

    @Override
    public Severity severity() {
        return Severity.CHECK;
    }

    @Override
    public String room() {
        return "spares";
    }
}
