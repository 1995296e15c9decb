package boltlore.trades.coating;

import static boltlore.findings.Severity.CHECK;
import static boltlore.findings.Severity.NOTE;
import static boltlore.findings.Severity.STOP;

import boltlore.findings.Kind;
import boltlore.findings.Severity;

/** What film readings and powder issued may show. No order can waive it: a record is of pieces, not of choices. */
public enum FilmFinding implements Kind {
    BATCH_REJECTED(STOP),
    BATCH_NOT_READ(STOP),
    TOO_FEW_READINGS(STOP),
    PIECES_TO_REWORK(STOP),
    /** Of the batch now, and not among those that were coated and read together: {batch}, {finish}, {count}, {pieces}. */
    PIECES_IN_NO_RECORD(STOP),
    /** Read on a coat that the order does not ask for any more: {order}, {count}, {pieces}, {read}, {asked}. */
    OTHER_COAT_ASKED(STOP),
    LIMITS_CHANGED_SINCE(STOP),
    MEAN_BELOW_MINIMUM(STOP),
    READING_BELOW_MINIMUM(STOP),
    MEAN_ABOVE_MAXIMUM(STOP),
    READING_ABOVE_MAXIMUM(STOP),
    REJECTED_BY_EYE(STOP),
    SLIP_OF_TYPING(CHECK),
    /** Read, but no order among these asks for them now. */
    PIECES_NOT_ASKED(CHECK),
    PART_NOT_READ(CHECK),
    RUN_CHANGED_SINCE(CHECK),
    POWDER_ABOVE_THEORETICAL(CHECK),
    POWDER_BELOW_THEORETICAL(CHECK),
    POWDER_HARDLY_POSSIBLE(CHECK),
    /** Pieces came or went since the record was written, or the batch had another number then. */
    BATCH_CHANGED_SINCE(NOTE);

    private final Severity severity;

    FilmFinding(Severity severity) {
        this.severity = severity;
    }

    @Override
    public Severity severity() {
        return severity;
    }

    @Override
    public String room() {
        return "film-check";
    }

    @Override
    public boolean waivable() {
        return false;
    }
}
