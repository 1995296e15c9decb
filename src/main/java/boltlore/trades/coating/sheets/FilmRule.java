package boltlore.trades.coating.sheets;

import boltlore.measure.Digits;
import boltlore.trades.coating.FilmDemand;
import boltlore.trades.coating.FilmVerdict;
import boltlore.trades.coating.ReadingSample;

/** The rules by which film is accepted, in words with their figures and where they come from. */
public final class FilmRule {

    private FilmRule() {}

    /** When one piece is good. */
    static String piece(FilmDemand demand) {
        return "A piece is good where the mean of the five is at least " + demand.leastUm() + " µm and none is under "
                + Digits.plain(demand.acceptance().floorUm()) + " µm; over " + demand.mostUm()
                + " µm tell engineering.";
    }

    /** When a batch of that many pieces is. */
    static String batch(ReadingSample sample, int pieces) {
        String shortfall = sample.acceptUpTo() == 0 ? "none" : "at most " + sample.acceptUpTo();
        return "At least " + sample.pieces() + " of " + pieces + " are read, and " + shortfall
                + " of them may fall short, or the batch is held.";
    }

    static final String SOURCES =
            "Film is read on steel to ISO 2178, on aluminium to ISO 2360. Mean, lowest reading and how many are read"
                    + " and may fall short are the workshop's own values, check before use.";

    /** Both rules with their figures and sources. */
    public static String of(FilmVerdict verdict) {
        return piece(verdict.demand()) + " "
                + batch(verdict.sample(), verdict.batch().pieces()) + " " + SOURCES;
    }

    /** 'accepted: 10 read, 1 falls short, at most 1 may'. */
    public static String decision(FilmVerdict verdict) {
        String figures = verdict.pieces().size() + " read of at least "
                + verdict.sample().pieces() + ", "
                + verdict.shortfalls() + (verdict.shortfalls() == 1 ? " falls" : " fall") + " short, at most "
                + verdict.sample().acceptUpTo() + " may";
        return switch (verdict.decision()) {
            case ACCEPTED -> "accepted: " + figures;
            case REJECTED -> "rejected: " + figures;
            case READ_MORE -> "read more: " + figures;
        };
    }
}
