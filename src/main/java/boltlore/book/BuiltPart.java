package boltlore.book;

import java.math.BigDecimal;

/**
 * A part that went into a kit.
 *
 * @param entry with which it went in
 * @param out number of the entry with which it came out again, or 0
 */
public record BuiltPart(
        String order,
        long entry,
        String part,
        String revision,
        BigDecimal quantity,
        String serial,
        String lot,
        String heat,
        long out) {
    /** 'fitted: 1, serial 4711, lot L-7'. */
    public String says() {
        return "fitted: " + quantity.toPlainString() + (serial.isEmpty() ? "" : ", serial " + serial)
                + (lot.isEmpty() ? "" : ", lot " + lot) + (heat.isEmpty() ? "" : ", heat " + heat);
    }
}
