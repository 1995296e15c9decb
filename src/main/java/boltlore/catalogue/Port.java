package boltlore.catalogue;

import boltlore.measure.PartNumber;
import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A connector, terminal, spigot or hose end of a part.
 *
 * @param kind its pattern; only ports of one kind are joined
 * @param mates the parts that keep the interlock closed by being plugged in; empty where it takes no part in that
 * @param blank what closes it where nothing is joined, or null
 * @param joint what may be joined to it, or null where the catalogue only counts its mates
 * @param bolted how a lug is bolted to it, or it to a stud; null where it is plugged, clamped or pushed
 * @param shares another port of the part that has the same contacts; empty where it has its own
 */
public record Port(
        String name,
        String kind,
        List<PartNumber> mates,
        @Nullable PartNumber blank,
        @Nullable Joint joint,
        String shares,
        @Nullable Bolted bolted) {

    /** A connector of which only mates and blank are counted. */
    public Port(String name, String kind, List<PartNumber> mates, @Nullable PartNumber blank) {
        this(name, kind, mates, blank, null, "", null);
    }

    /**
     * A stud or threaded bush, or the hole of a lug for one.
     *
     * @param torqueNm that its maker asks for; null for the hole of a lug
     * @param securedBy what keeps it from coming loose; empty for the hole of a lug
     */
    public record Bolted(
            ThreadName thread, String designation, @Nullable BigDecimal torqueNm, String securedBy, String source) {}

    /** Which way it flows through a pump, a compressor, a valve. */
    public enum Way {
        IN,
        OUT
    }

    /** Which of two that fit one another: pin or spigot, socket or hose. */
    public enum Half {
        MALE,
        FEMALE
    }

    /**
     * What flows through a port and what it is rated for; null where that is not said.
     *
     * @param boreMm nominal bore of a hose or outer diameter of the spigot that it goes over, in mm
     * @param phases of mains, 1 or 3
     * @param thread by which it is screwed in
     * @param way in which it flows: into the part or out of it; null where either will do
     */
    public record Joint(
            Flow flow,
            Half half,
            @Nullable BigDecimal boreMm,
            @Nullable BigDecimal volts,
            @Nullable BigDecimal amps,
            @Nullable Integer phases,
            @Nullable ThreadName thread,
            @Nullable Way way) {

        private boolean fits(Joint other) {
            return flow == other.flow
                    && half != other.half
                    && (boreMm == null ? other.boreMm == null : other.boreMm != null && same(boreMm, other.boreMm))
                    && screws(other);
        }

        /** A male thread into a female one, or neither has one. */
        private boolean screws(Joint other) {
            if (thread == null || other.thread == null) {
                return thread == null && other.thread == null;
            }
            return half == Half.MALE ? thread.goesInto(other.thread) : other.thread.goesInto(thread);
        }

        private static boolean same(BigDecimal left, BigDecimal right) {
            return left.compareTo(right) == 0;
        }
    }

    /** Whether the interlock runs through it, so that it is to be mated or closed by its blank. */
    public boolean interlocked() {
        return joint == null || !mates.isEmpty();
    }

    public boolean highVoltage() {
        return joint == null || joint.flow().highVoltage();
    }

    /** Whether the two can be joined: one flow, one pattern, one bore, threads that mate, and a male half on a female one. */
    public boolean fits(Port other) {
        return joint != null && other.joint != null && kind.equals(other.kind) && joint.fits(other.joint);
    }
}
