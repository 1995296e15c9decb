package boltlore.trades.coating;

import static boltlore.findings.Severity.CHECK;
import static boltlore.findings.Severity.STOP;

import boltlore.findings.Kind;
import boltlore.findings.Severity;

/** What film readings and powder issued may show. No order can waive it: a record is of pieces, not of choices. */
public enum FilmFinding implements Kind {
    BATCH_REJECTED(STOP),
    TOO_FEW_READINGS(STOP),
    PART_NOT_READ(CHECK),
    MEAN_BELOW_MINIMUM(CHECK),
    READING_BELOW_MINIMUM(CHECK),
    MEAN_ABOVE_MAXIMUM(CHECK),
    POWDER_ABOVE_THEORETICAL(CHECK),
    POWDER_BELOW_THEORETICAL(CHECK),
    POWDER_HARDLY_POSSIBLE(CHECK);

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
