package boltlore.walking;

import java.util.List;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * A block of parallel aisles, and where in it something is to be fetched. Lengths in mm. Whoever walks goes along the middle of
 * the aisles, and changes them only at their ends.
 *
 * @param lengthMm from the middle of the front cross aisle to the middle of the back one, above 0
 * @param startMm where along the front cross aisle each walk begins and ends
 * @param stops by the place of their aisle along the front cross aisle, and in each by their distance from the front
 */
public record Block(long lengthMm, long startMm, SortedMap<Long, SortedSet<Long>> stops) {

    /** A place on the way: along the front, and away from it. */
    public record Point(long alongMm, long awayMm) {}

    /**
     * With these stops, each told once.
     *
     * @throws IllegalArgumentException for a stop that lies in no aisle
     */
    public static Block of(long lengthMm, long startMm, List<Point> stops) {
        SortedMap<Long, SortedSet<Long>> byAisle = new TreeMap<>();
        for (Point stop : stops) {
            if (stop.awayMm() < 0 || stop.awayMm() > lengthMm) {
                throw new IllegalArgumentException(stop + " lies outside an aisle of " + lengthMm + " mm");
            }
            byAisle.computeIfAbsent(stop.alongMm(), any -> new TreeSet<>()).add(stop.awayMm());
        }
        return new Block(lengthMm, startMm, byAisle);
    }

    Point start() {
        return new Point(startMm, 0);
    }

    /** The same, seen from behind: what was left is right. */
    Block mirrored() {
        SortedMap<Long, SortedSet<Long>> other = new TreeMap<>();
        stops.forEach((along, away) -> other.put(-along, away));
        return new Block(lengthMm, -startMm, other);
    }

    /** Whether the last aisle with a stop is nearer to the start than the first one. */
    boolean nearerFromRight() {
        return !stops.isEmpty() && Math.abs(stops.lastKey() - startMm) < Math.abs(stops.firstKey() - startMm);
    }
}
