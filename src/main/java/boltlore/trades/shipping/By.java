package boltlore.trades.shipping;

/** How crates travel, and by which rules for dangerous goods. */
public enum By {
    /** Text of special provision 310 and number of 2.2.9.1.7.1 looked up in it (gefahrgutbrumme.de/ADR2025). */
    ROAD("ADR 2025"),
    /** In force from 1 January 2026: resolution MSC.556(108). */
    SEA("IMDG Code, amendment 42-24"),
    /** Biennial edition: from memory. */
    AIR("ICAO Technical Instructions 2025-2026");

    private final String rules;

    By(String rules) {
        this.rules = rules;
    }

    /** The rules with their edition, as they are named wherever they are printed. */
    String rules() {
        return rules;
    }
}
