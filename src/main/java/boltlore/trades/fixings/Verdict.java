package boltlore.trades.fixings;

/** What a comparison of a joint comes to. */
public enum Verdict {
    LOOK("look at it"),
    WRONG("wrong");

    private final String says;

    Verdict(String says) {
        this.says = says;
    }

    public String says() {
        return says;
    }
}
