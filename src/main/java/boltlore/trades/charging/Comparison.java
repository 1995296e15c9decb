package boltlore.trades.charging;

import boltlore.findings.Finding;

/**
 * Something that was compared with its limit.
 *
 * @param about in a word or two: 'Precharge'
 * @param finding the figures in a sentence, and what it is where the limit is not kept
 * @param holds whether it is kept, so that nothing was found
 */
public record Comparison(String about, Finding finding, boolean holds) {

    static Comparison of(String about, boolean holds, ChargingFinding kind, Object... named) {
        return new Comparison(about, Finding.of(kind, about, named), holds);
    }

    /** Where the limit is not kept. */
    static Comparison broken(String about, ChargingFinding kind, Object... named) {
        return of(about, false, kind, named);
    }

    /** 'OK', or how serious it is. */
    public String verdict() {
        return holds ? "OK" : finding.severity().says();
    }

    public String says() {
        return finding.says();
    }
}
