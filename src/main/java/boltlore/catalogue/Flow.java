package boltlore.catalogue;

/** What flows through a port: volts and amps through some, a liquid or a gas through others. */
public enum Flow {
    HV_DC("hv-dc"),
    AC_MAINS("ac-mains"),
    TWELVE_VOLT("12-v"),
    COOLANT("coolant"),
    REFRIGERANT("refrigerant");

    private final String written;

    Flow(String written) {
        this.written = written;
    }

    public String written() {
        return written;
    }

    public boolean highVoltage() {
        return this == HV_DC || this == AC_MAINS;
    }
}
