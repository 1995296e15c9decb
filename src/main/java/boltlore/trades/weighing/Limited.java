package boltlore.trades.weighing;

/** What has a limit. */
public enum Limited {
    FRONT("the front axle"),
    REAR("the rear axle"),
    GROSS("the whole vehicle");

    private final String says;

    Limited(String says) {
        this.says = says;
    }

    public String says() {
        return says;
    }
}
