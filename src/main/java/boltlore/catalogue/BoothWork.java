package boltlore.catalogue;

import java.math.BigDecimal;

/**
 * Cleaning of a booth.
 *
 * @param minutes that the booth stands still
 * @param people who clean
 * @param powderKg that is lost from hoses, guns, hopper and walls
 */
public record BoothWork(int minutes, int people, BigDecimal powderKg) {

    /** Where the workshop has told nothing of it. */
    public static final BoothWork NONE = new BoothWork(0, 0, BigDecimal.ZERO);
}
