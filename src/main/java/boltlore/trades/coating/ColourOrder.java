package boltlore.trades.coating;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The order of sprays whose change-overs cost least, a coat never before the one below it. Up to twelve sprays are tried in
 * all orders, by dynamic programming over the sets already sprayed (M. Held and R. M. Karp, A dynamic programming approach
 * to sequencing problems, Journal of SIAM 10, 1962); more are put in order by the best next one and single moves, which is
 * the best order known. Of orders that cost the same, the one that keeps nearest to the order given.
 */
final class ColourOrder {

    /** Sprays in order, and whether it is proved that no other order costs less. */
    record Found(List<Spray> sprays, boolean shortest) {}

    private static final int ALL_TRIED_UP_TO = 12;
    private static final long CANNOT = Long.MAX_VALUE / 4;

    private final List<Spray> sprays;
    private final BoothWays booths;
    private final int[] below;
    /** Cost from one spray, or last of all from what is in the booth, to the next. */
    private final long[][] cost;

    private ColourOrder(List<Spray> sprays, BoothWays booths) {
        this.sprays = sprays;
        this.booths = booths;
        this.below = new int[sprays.size()];
        this.cost = new long[sprays.size() + 1][sprays.size()];
        for (int i = 0; i < sprays.size(); i++) {
            for (int j = 0; j < sprays.size(); j++) {
                below[i] |= sprays.get(i).follows(sprays.get(j)) ? 1 << j : 0;
                cost[j][i] = booths.cost(sprays.get(j).powder(), sprays.get(i).powder());
            }
            cost[sprays.size()][i] = booths.first(sprays.get(i).powder());
        }
    }

    /** The best order of the sprays; those that are alike in cost keep the order in which they come. */
    static Found of(List<Spray> sprays, BoothWays booths) {
        if (sprays.size() <= ALL_TRIED_UP_TO) {
            return new Found(new ColourOrder(sprays, booths).shortest(), true);
        }
        return new Found(new NearColourOrder(sprays, booths).found(), false);
    }

    private List<Spray> shortest() {
        int all = (1 << sprays.size()) - 1;
        long[][] toGo = toGo(all);
        List<Spray> order = new ArrayList<>();
        int done = 0;
        int last = sprays.size();
        while (done != all) {
            int next = next(done, last, toGo);
            done |= 1 << next;
            last = after(last, next);
            order.add(sprays.get(next));
        }
        return order;
    }

    /** For each set sprayed and each last spray, what is still to pay. */
    private long[][] toGo(int all) {
        long[][] toGo = new long[all + 1][sprays.size() + 1];
        for (int done = all - 1; done >= 0; done--) {
            Arrays.fill(toGo[done], CANNOT);
            for (int last = 0; last <= sprays.size(); last++) {
                int next = next(done, last, toGo);
                toGo[done][last] = next < 0 ? CANNOT : toGo(done, last, next, toGo);
            }
        }
        return toGo;
    }

    /** The first of the cheapest to go on with, or −1 where every spray waits for another. */
    private int next(int done, int last, long[][] toGo) {
        int best = -1;
        long least = CANNOT;
        for (int i = 0; i < sprays.size(); i++) {
            boolean ready = (done & 1 << i) == 0 && (below[i] & ~done) == 0;
            if (ready && toGo(done, last, i, toGo) < least) {
                best = i;
                least = toGo(done, last, i, toGo);
            }
        }
        return best;
    }

    private long toGo(int done, int last, int next, long[][] toGo) {
        return cost[last][next] + toGo[done | 1 << next][after(last, next)];
    }

    private int after(int last, int next) {
        return booths.elsewhere(sprays.get(next).powder()) ? last : next;
    }
}
