package boltlore.trades.charging;

/**
 * Something that was compared with its limit.
 *
 * @param about in a word or two: 'Precharge'
 * @param says a sentence with the figures, whatever the verdict
 */
public record Judgement(String about, Verdict verdict, String says) {

    static Judgement of(String about, boolean good, Verdict otherwise, String says) {
        return new Judgement(about, good ? Verdict.FINE : otherwise, says);
    }
}
