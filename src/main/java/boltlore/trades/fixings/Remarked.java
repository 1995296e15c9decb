package boltlore.trades.fixings;

/** Something about a joint that a person must look at, in a sentence. */
public record Remarked(String joint, Verdict verdict, String says) {}
