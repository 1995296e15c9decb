package boltlore.book;

import boltlore.measure.Digits;
import java.math.BigDecimal;

/**
 * A value that was read of a kit.
 *
 * @param person key of who read it
 */
public record BuiltReading(long entry, BuiltHappening.Measured measured, String person) {

    /** 'isolation resistance: 2.4 MΩ, at least 1 MΩ: within'. */
    @Override
    public String toString() {
        BigDecimal least = measured.least();
        BigDecimal most = measured.most();
        return measured.of() + ": " + with(measured.value())
                + (least == null ? "" : ", at least " + with(least))
                + (most == null ? "" : ", at most " + with(most))
                + (least == null && most == null ? "" : measured.within() ? ": within" : ": NOT within");
    }

    private String with(BigDecimal value) {
        return Digits.plain(value) + (measured.unit().isEmpty() ? "" : " " + measured.unit());
    }
}
