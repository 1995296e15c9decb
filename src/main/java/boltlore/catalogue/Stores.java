package boltlore.catalogue;

import boltlore.measure.PartNumber;
import java.math.BigDecimal;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * What the stores are like, and how parts are kept in them.
 *
 * @param layout where the aisles lie; null where nobody has measured them
 * @param coverDays calendar days whose needs are bought together, unless a part says otherwise
 * @param kept parts that are kept in another way than bought as they are needed
 * @param leastOrders value from which on a supplier takes an order, in the workshop's currency; of those that have one
 */
public record Stores(
        @Nullable Layout layout, int coverDays, Map<PartNumber, Kept> kept, Map<String, BigDecimal> leastOrders) {

    /** Of a workshop that says nothing about it: what is needed on one day is bought together. */
    public static final Stores NONE = new Stores(null, 1, Map.of(), Map.of());

    /**
     * A block of parallel aisles with a cross aisle at both ends. Lengths in mm.
     *
     * @param aisleLengthMm from the middle of the front cross aisle to that of the back one
     * @param startMm where along the front cross aisle a picker begins and ends
     * @param aisles by name
     */
    public record Layout(long aisleLengthMm, long startMm, Map<String, Aisle> aisles) {}

    /**
     * One aisle.
     *
     * @param atMm its middle, along the front cross aisle
     * @param firstBayMm middle of bay 1, from the front
     * @param bayMm from the middle of one bay to that of the next
     */
    public record Aisle(long atMm, long firstBayMm, long bayMm) {

        /** Middle of a bay, from the front. */
        public long bayAtMm(int bay) {
            return firstBayMm + (bay - 1L) * bayMm;
        }
    }

    /**
     * How one part is kept.
     *
     * @param safetyStock that shall not be gone below, in the part's unit
     * @param coverDays null where the usual ones hold
     */
    public record Kept(
            PartNumber part,
            BigDecimal safetyStock,
            @Nullable Integer coverDays) {}

    public BigDecimal safetyStock(PartNumber part) {
        Kept own = kept.get(part);
        return own == null ? BigDecimal.ZERO : own.safetyStock();
    }

    /** Calendar days whose needs of the part are bought together, 1 or more. */
    public int coverDays(PartNumber part) {
        Kept own = kept.get(part);
        Integer days = own == null ? null : own.coverDays();
        return days == null ? coverDays : days;
    }
}
