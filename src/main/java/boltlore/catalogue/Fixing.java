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
 * @param washer what is true of washers, or null: one lies loose under the head
 */
public record Fixing(
        String thread,
        @Nullable BigDecimal lengthMm,
        @Nullable String propertyClass,
        @Nullable BigDecimal torqueNm,
        @Nullable String torqueTable,
        @Nullable BigDecimal friction,
        @Nullable Wording threadLock,
        @Nullable Prevailing prevailing,
        @Nullable Washer washer) {

    /** A washer, or a bolt that needs none. */
    public enum Washer {
        /** It is a washer for that thread. */
        ITSELF,
        /** One is held captive on the bolt, its head is flanged, or it comes as a set with its washers. */
        FITTED
    }

    /** One that says nothing about washers. */
    public Fixing(
            String thread,
            @Nullable BigDecimal lengthMm,
            @Nullable String propertyClass,
            @Nullable BigDecimal torqueNm,
            @Nullable String torqueTable,
            @Nullable BigDecimal friction,
            @Nullable Wording threadLock,
            @Nullable Prevailing prevailing) {
        this(thread, lengthMm, propertyClass, torqueNm, torqueTable, friction, threadLock, prevailing, null);
    }

    /** A bolt has a length. */
    public boolean isBolt() {
        return lengthMm != null;
    }

    /** A nut has a thread and no length. */
    public boolean isNut() {
        return lengthMm == null && !isWasher();
    }

    public boolean isWasher() {
        return washer == Washer.ITSELF;
    }

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
