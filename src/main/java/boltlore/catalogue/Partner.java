package boltlore.catalogue;

import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/** A partner workshop with its language and its own mark-up. */
public record Partner(
        String name, String says, String language, @Nullable BigDecimal markUpPercent) {}
