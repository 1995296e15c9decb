package boltlore.catalogue;

import java.math.BigDecimal;

/** How much one person, and two together, may lift in this workshop, in kg. */
public record Lifting(BigDecimal onePersonKg, BigDecimal twoPersonsKg) {

    /** One person 25 kg: reference mass of ISO 11228-1, from memory. Two persons 40 kg: common practice, no source. */
    public static final Lifting USUAL = new Lifting(BigDecimal.valueOf(25), BigDecimal.valueOf(40));
}
