package boltlore.catalogue;

import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/**
 * Capacitance of one device on the DC link.
 *
 * @param microfarad between the two poles, in µF
 * @param branch that feeds the device that it is built into, or null where nobody says
 * @param yNanofarad from both poles together to the chassis (Y capacitors), in nF, or null where it is not known
 */
public record Capacitor(
        String name,
        String says,
        Condition when,
        BigDecimal microfarad,
        @Nullable BigDecimal yNanofarad,
        @Nullable String branch) {}
