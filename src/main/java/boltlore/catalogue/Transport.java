package boltlore.catalogue;

import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/** Dangerous-goods marking: UN number, class and, for a battery, energy in Wh. */
public record Transport(
        String un, @Nullable String hazardClass, @Nullable BigDecimal wattHours) {}
