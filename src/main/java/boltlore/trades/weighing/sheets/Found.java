package boltlore.trades.weighing.sheets;

/**
 * Something that a weighing shows.
 *
 * @param about in a word or two: 'Limits'
 * @param says a sentence, or a few
 */
public record Found(String about, String says) {}
