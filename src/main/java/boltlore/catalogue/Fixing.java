package boltlore.catalogue;

import boltlore.measure.Wording;
import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/**
 * What makes a fixing: thread, length, property class, and its torque, which is never given without the table and the
 * friction it stands for.
 *
 * @param threadLock what keeps it from coming loose, in words, or null
 * @param prevailing what a self-locking nut or bolt takes before it clamps, or null
 */
public record Fixing(
        String thread,
        @Nullable BigDecimal lengthMm,
        @Nullable String propertyClass,
        @Nullable BigDecimal torqueNm,
        @Nullable String torqueTable,
        @Nullable BigDecimal friction,
        @Nullable Wording threadLock,
        @Nullable Prevailing prevailing) {

    /**
     * What a self-locking thread takes to turn before it clamps; it comes on top of the torque.
     *
     * @param torqueNm highest at the first tightening
     * @param table where it comes from
     */
    public record Prevailing(BigDecimal torqueNm, String table) {}

    /** One that says nothing about a thread lock. */
    public Fixing(
            String thread,
            @Nullable BigDecimal lengthMm,
            @Nullable String propertyClass,
            @Nullable BigDecimal torqueNm,
            @Nullable String torqueTable,
            @Nullable BigDecimal friction) {
        this(thread, lengthMm, propertyClass, torqueNm, torqueTable, friction, null, null);
    }
}
