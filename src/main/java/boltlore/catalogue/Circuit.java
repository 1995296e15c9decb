package boltlore.catalogue;

/** What the high-voltage circuit is like while a group of tests is made, in the order in which it may be tested. */
public enum Circuit {
    /** Service disconnect out, locked off, proved dead. */
    DEAD("dead"),
    /** The strings of modules bear their voltage, nothing behind their contactors does. */
    CONTACTORS_OPEN("contactors-open"),
    /** The link is charged through its resistor for the first time. */
    PRECHARGE("precharge"),
    LIVE("live");

    private final String written;

    Circuit(String written) {
        this.written = written;
    }

    public String written() {
        return written;
    }
}
