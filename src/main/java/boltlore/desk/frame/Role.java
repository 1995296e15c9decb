package boltlore.desk.frame;

import java.util.Locale;

/** What somebody works as. */
public enum Role {
    SALES,
    STORES,
    FABRICATION,
    BENCH,
    ENGINEER,
    OWNER,
    /** Whoever works here at all. */
    ANY;

    /** As it is typed and kept. */
    public String written() {
        return name().toLowerCase(Locale.ROOT);
    }
}
