package boltlore.catalogue;

/** What the proximity contact of an inlet is used for. */
public enum ProximityKind {
    /** A resistor in the plug codes the current of the cable (IEC 61851-1). */
    CABLE_CODE("cable-code"),
    /** A resistor in the handle tells whether it is latched, and no current (SAE J1772). */
    HANDLE("handle"),
    /**
     * A resistor in the plug codes the rating of the cable by another table than that of IEC 61851-1 (GB/T 18487.1), so the
     * controller needs a setting of its own.
     */
    OTHER_CODE("other-code");

    private final String written;

    ProximityKind(String written) {
        this.written = written;
    }

    public String written() {
        return written;
    }
}
