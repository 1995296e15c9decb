package boltlore.trades.weighing;

/** How the vehicle stands on the scales. */
public enum Stand {
    /** As it came, ready to drive, nobody in it. */
    DONOR("Donor before work begins"),
    /** With the kit, nobody in it. */
    CONVERTED("Converted, nobody in it"),
    DRIVER("Converted, with driver"),
    PASSENGERS("Converted, with driver and passengers"),
    LADEN("Converted, fully laden");

    private final String says;

    Stand(String says) {
        this.says = says;
    }

    public String says() {
        return says;
    }
}
