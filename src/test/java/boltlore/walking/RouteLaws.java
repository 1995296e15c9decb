package boltlore.walking;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.walking.Block.Point;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;

@Label("Wherever the stops lie,")
class RouteLaws {

    @Property(tries = 400)
    @Label("no walk is shorter than the shortest: M. Held and R. M. Karp, A dynamic programming approach to sequencing"
            + " problems, 1962, finds the same length by another way")
    void shortest(@ForAll long seed) {
        Block block = block(new Random(seed), 9);
        assertThat(RouteRule.SHORTEST.route(block).lengthMm()).isEqualTo(heldKarp(block));
    }

    @Property(tries = 400)
    @Label("each rule comes by each stop, begins and ends at the start, and is no shorter than the shortest")
    void all_stops(@ForAll long seed) {
        Block block = block(new Random(seed), 30);
        long shortest = RouteRule.SHORTEST.route(block).lengthMm();
        for (RouteRule rule : RouteRule.values()) {
            Route route = rule.route(block);
            assertThat(new HashSet<>(route.stops())).as(rule.name()).isEqualTo(new HashSet<>(stops(block)));
            assertThat(route.stops()).doesNotHaveDuplicates();
            assertThat(route.lengthMm()).as(rule.name()).isGreaterThanOrEqualTo(shortest);
            assertThat(route.corners().get(0)).isEqualTo(new Point(block.startMm(), 0));
            assertThat(route.corners().get(route.corners().size() - 1)).isEqualTo(new Point(block.startMm(), 0));
            assertStraight(route);
        }
    }

    @Property(tries = 400)
    @Label(
            "walking through or back, whichever is shorter, is no longer than always the one or always the other; leaving out"
                    + " the largest gap no longer than going to the middle")
    void ranking(@ForAll long seed) {
        Block block = block(new Random(seed), 30);
        assertThat(length(RouteRule.COMBINED, block))
                .isLessThanOrEqualTo(length(RouteRule.S_SHAPE, block))
                .isLessThanOrEqualTo(length(RouteRule.RETURN, block));
        assertThat(length(RouteRule.LARGEST_GAP, block)).isLessThanOrEqualTo(length(RouteRule.MIDPOINT, block));
    }

    private static long length(RouteRule rule, Block block) {
        return rule.route(block).lengthMm();
    }

    /** Nobody walks through a rack: aisles are changed at their ends only. */
    private static void assertStraight(Route route) {
        for (int i = 1; i < route.corners().size(); i++) {
            Point from = route.corners().get(i - 1);
            Point to = route.corners().get(i);
            boolean alongAisle = from.alongMm() == to.alongMm();
            boolean across = from.awayMm() == to.awayMm()
                    && (from.awayMm() == 0 || from.awayMm() == route.block().lengthMm());
            assertThat(alongAisle || across).as(from + " to " + to).isTrue();
        }
    }

    private static Block block(Random random, int most) {
        int count = 1 + random.nextInt(most);
        List<Point> stops = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            stops.add(new Point(random.nextInt(6) * 3_000L, random.nextInt(21) * 500L));
        }
        return Block.of(10_000, random.nextInt(7) * 2_500L, stops);
    }

    private static List<Point> stops(Block block) {
        List<Point> all = new ArrayList<>();
        block.stops().forEach((along, aways) -> aways.forEach(away -> all.add(new Point(along, away))));
        return all;
    }

    private static long between(Block block, Point from, Point to) {
        if (from.alongMm() == to.alongMm()) {
            return Math.abs(from.awayMm() - to.awayMm());
        }
        long front = from.awayMm() + to.awayMm();
        return Math.abs(from.alongMm() - to.alongMm()) + Math.min(front, 2 * block.lengthMm() - front);
    }

    private static long heldKarp(Block block) {
        List<Point> all = stops(block);
        Point start = new Point(block.startMm(), 0);
        long[][] best = new long[1 << all.size()][all.size()];
        for (long[] row : best) {
            Arrays.fill(row, Long.MAX_VALUE / 2);
        }
        for (int i = 0; i < all.size(); i++) {
            best[1 << i][i] = between(block, start, all.get(i));
        }
        long least = Long.MAX_VALUE;
        for (int set = 1; set < best.length; set++) {
            for (int last = 0; last < all.size(); last++) {
                for (int next = 0; next < all.size(); next++) {
                    if ((set & 1 << next) == 0) {
                        int more = set | 1 << next;
                        best[more][next] = Math.min(
                                best[more][next], best[set][last] + between(block, all.get(last), all.get(next)));
                    }
                }
                if (set == best.length - 1) {
                    least = Math.min(least, best[set][last] + between(block, all.get(last), start));
                }
            }
        }
        return least;
    }
}
