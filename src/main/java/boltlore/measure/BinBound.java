package boltlore.measure;

import java.util.List;
import java.util.stream.LongStream;

/**
 * A number of bars or loads that cannot be gone below: the bound L2 of S. Martello and P. Toth, Lower bounds and reduction
 * procedures for the bin packing problem, Discrete Applied Mathematics 28 (1990).
 */
public final class BinBound {

    private BinBound() {}

    /** Pieces of one size, in the unit of the room. */
    public record Sized(long size, long count) {}

    /**
     * How many bins it takes at least.
     *
     * @param room of each bin, all alike
     */
    public static long least(List<Sized> pieces, long room) {
        LongStream small = pieces.stream().mapToLong(Sized::size).filter(size -> 2 * size <= room);
        return LongStream.concat(LongStream.of(0), small)
                .distinct()
                .map(from -> least(pieces, room, from))
                .max()
                .orElseThrow();
    }

    /** Pieces over half, none of which share a bin, and what those from that size up need beside them. */
    private static long least(List<Sized> pieces, long room, long from) {
        long alone = 0;
        long roomBeside = 0;
        long beside = 0;
        for (Sized some : pieces) {
            if (2 * some.size() > room) {
                alone += some.count();
                roomBeside += some.size() <= room - from ? (room - some.size()) * some.count() : 0;
            } else if (some.size() >= from) {
                beside += some.size() * some.count();
            }
        }
        long over = beside - roomBeside;
        return alone + (over <= 0 ? 0 : (over + room - 1) / room);
    }
}
