package boltlore.resolution;

/** What a finding does to the sheets. */
public enum Severity {
    STOPS("stops the sheets"),
    LOOK("look at it"),
    INFORMS("for information");

    private final String says;

    Severity(String says) {
        this.says = says;
    }

    public String says() {
        return says;
    }
}
