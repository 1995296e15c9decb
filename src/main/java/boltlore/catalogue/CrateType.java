package boltlore.catalogue;

import boltlore.measure.Wording;
import java.math.BigDecimal;

/**
 * A kind of crate, case or box that the workshop packs in.
 *
 * @param packingKg blocks and padding that go into a full one
 * @param mostGrossKg that it may weigh with all that is in it
 * @param woodMark mark of its treatment as it is burnt in, or empty
 * @param unMark mark of packaging that is approved for dangerous goods, or empty
 * @param cost of one with its packing, in the workshop's currency; 0 where nobody says
 * @param packMin minutes to pack, close and mark one; 0 where nobody says
 * @param onlyDangerous whether it is kept for dangerous goods; these go into no other
 */
public record CrateType(
        String name,
        Wording says,
        EnvelopeMm inside,
        EnvelopeMm outside,
        BigDecimal tareKg,
        BigDecimal packingKg,
        BigDecimal mostGrossKg,
        Wood wood,
        String woodMark,
        String unMark,
        boolean onlyDangerous,
        boolean stackable,
        BigDecimal cost,
        BigDecimal packMin) {

    /** What may go in, in kg. */
    public BigDecimal payloadKg() {
        return mostGrossKg.subtract(tareKg).subtract(packingKg);
    }
}
