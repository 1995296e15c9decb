package boltlore.resolution.rules.facts;

import boltlore.catalogue.Role;
import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/** The chosen value in an electrical role with its facts; phases 0 and null where a fact is not known. */
public record Electric(
        Role role,
        String value,
        int phases,
        @Nullable BigDecimal amps,
        @Nullable BigDecimal volts,
        @Nullable String socket,
        @Nullable Boolean twoWay,
        @Nullable BigDecimal exportKw) {

    /** What the outlet can give: volts × amps in kW, or null where one is not known. */
    public @Nullable BigDecimal outletKw() {
        return volts == null || amps == null ? null : volts.multiply(amps).movePointLeft(3);
    }
}
