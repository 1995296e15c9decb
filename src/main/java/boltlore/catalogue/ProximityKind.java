package boltlore.catalogue;

/** What the proximity contact of an inlet is used for. */
public enum ProximityKind {
    /** A resistor in the plug codes the current of the cable (IEC 61851-1). */
    CABLE_CODE("cable-code"),
    /** A resistor in the handle tells whether it is latched, and no current (SAE J1772). */
    HANDLE("handle"),
    /** It codes no current as IEC 61851-1 does, so the controller needs a setting of its own. */
    NO_CODE("no-code");

    private final String written;

    ProximityKind(String written) {
        this.written = written;
    }

    public String written() {
        return written;
    }
}
