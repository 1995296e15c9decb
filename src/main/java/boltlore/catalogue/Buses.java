package boltlore.catalogue;

/**
 * How the high-voltage buses of a vehicle are parted, which decides the isolation that they need. A machine's windings
 * count as an AC bus; behind an inverter without a transformer they are joined with the DC bus.
 */
public enum Buses {
    SEPARATE_DC("separate-dc", "a DC bus apart from every AC bus"),
    SEPARATE_AC("separate-ac", "an AC bus apart from the DC bus"),
    JOINED("joined", "AC and DC buses joined"),
    JOINED_AC_PROTECTED(
            "joined-ac-protected", "AC and DC buses joined, the AC side double insulated or robustly guarded");

    private final String written;
    private final String says;

    Buses(String written, String says) {
        this.written = written;
        this.says = says;
    }

    public String written() {
        return written;
    }

    public String says() {
        return says;
    }
}
