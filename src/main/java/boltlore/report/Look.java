package boltlore.report;

/**
 * The faces that a cell can have. There are few, and each is legible on a black-and-white printer: black rules, light
 * grey bands, weight and size; never a colour.
 */
public enum Look {
    TITLE,
    HEADING,
    NOTE,
    CAUTION,
    /** The name of a particular. */
    LABEL,
    /** The value of a particular. */
    VALUE,
    COLUMN_HEADING,
    PLAIN,
    GROUP,
    SUBTOTAL,
    TOTAL,
    /** A box to be filled in by hand: a tick, a count, a reading, a serial number. */
    HANDWRITTEN,
    /** A line to sign on, with a place for the date. */
    SIGNATURE
}
