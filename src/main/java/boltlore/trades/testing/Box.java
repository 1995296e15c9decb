package boltlore.trades.testing;

import boltlore.catalogue.Scale;
import org.jspecify.annotations.Nullable;

/**
 * A value to be written down.
 *
 * @param key unique on the sheet, stable from print to print of the same kit
 * @param scale what its instrument shows; null where a state is written down
 */
public record Box(String key, Quantity quantity, @Nullable Scale scale) {

    /** What is written down: most tests read their result at once, some work it out from several readings. */
    public enum Quantity {
        RESULT("", ""),
        PACK_VOLTS("vb", "Vb"),
        CHASSIS_VOLTS("v1", "V1"),
        OTHER_POLE_VOLTS("v2", "V2"),
        WITH_RESISTOR_VOLTS("v1-ro", "V1'"),
        RESISTOR("ro", "Ro"),
        METER("meter", "Rm"),
        LINK_VOLTS("link", "Vc");

        private final String key;
        private final String sign;

        Quantity(String key, String sign) {
            this.key = key;
            this.sign = sign;
        }

        public String key() {
            return key;
        }

        /** In the formula; empty where the reading is the result. */
        public String sign() {
            return sign;
        }
    }

    /** Unit to be written down, empty with a state. */
    public String unit() {
        return scale == null ? "" : scale.unit();
    }
}
