package boltlore.catalogue;

import boltlore.measure.PartNumber;
import java.math.BigDecimal;

/** A motor with its rated power. */
public record RatedMotor(PartNumber part, BigDecimal kw, Current current) {

    /** What it runs on. */
    public enum Current {
        /** Alternating, of several phases. */
        AC,
        DC
    }
}
