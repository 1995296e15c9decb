package boltlore.catalogue;

/** What an option means to the program; nothing in code knows an option by its name. */
public enum Role {
    ERA("era"),
    DRIVE_SIDE("drive-side"),
    MARKET("market"),
    INLET("inlet"),
    /** An inlet of its own for direct current, beside that for alternating current. */
    DC_INLET("dc-inlet"),
    CHARGER("charger"),
    SUPPLY("supply"),
    EXPORT("export"),
    LANGUAGE("language"),
    COLOUR("colour");

    private final String written;

    Role(String written) {
        this.written = written;
    }

    public String written() {
        return written;
    }
}
