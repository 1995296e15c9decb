package boltlore.trades.charging;

/** What a comparison with a limit comes to, in rising order of concern. */
public enum Verdict {
    FINE("fine"),
    LOOK("look at it"),
    TOO_MUCH("too much");

    private final String says;

    Verdict(String says) {
        this.says = says;
    }

    public String says() {
        return says;
    }

    Verdict worse(Verdict other) {
        return compareTo(other) >= 0 ? this : other;
    }
}
