package boltlore.trades.coating;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.catalogue.CoatingSpec;
import boltlore.catalogue.EnvelopeMm;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Random small batches, each named by the seed that makes it again, against the least number of loads by trying all. */
class OvenLoadLawsTest {

    private static final LoadSize LIMITS = LoadSize.limits(SampleShop.OVEN);
    private static final int MOST_PIECES = 7;

    static IntStream seeds() {
        return IntStream.rangeClosed(1, 60);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    @DisplayName("At least n loads: n is never more than the least that trying everything finds")
    void the_lower_bound_is_one(int seed) {
        List<BatchRow> rows = rows(seed);
        assertThat(LeastLoads.bound(rows, SampleShop.OVEN)).isLessThanOrEqualTo(leastByTryingAll(rows));
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    @DisplayName("Planned loads hold every piece once, pass no limit, and are at most one more than the least")
    void loads(int seed) {
        List<BatchRow> rows = rows(seed);
        List<OvenLoad> loads = OvenLoads.fill(rows, SampleShop.OVEN);
        assertThat(loads).allMatch(load -> load.size().within(LIMITS));
        assertThat(loads.stream().mapToInt(OvenLoad::pieces).sum())
                .isEqualTo(rows.stream().mapToInt(BatchRow::pieces).sum());
        assertThat(loads.size()).isBetween(leastByTryingAll(rows), leastByTryingAll(rows) + 1);
    }

    private static List<BatchRow> rows(int seed) {
        Random random = new Random(seed);
        List<BatchRow> rows = new ArrayList<>();
        int left = MOST_PIECES;
        while (left > 0) {
            int pieces = 1 + random.nextInt(Math.min(3, left));
            left -= pieces;
            BigDecimal areaM2 = BigDecimal.valueOf(10 + random.nextInt(700), 2);
            CoatingSpec coat =
                    SampleShop.coat(areaM2.toPlainString(), new EnvelopeMm(900, 900, 50 + random.nextInt(800)));
            rows.add(SampleOrders.row(SampleShop.part("P-" + rows.size(), coat), coat, pieces));
        }
        return rows;
    }

    private static int leastByTryingAll(List<BatchRow> rows) {
        List<LoadSize> pieces = rows.stream()
                .flatMap(row -> IntStream.range(0, row.pieces()).mapToObj(piece -> LoadSize.of(row)))
                .toList();
        return least(pieces, 0, new ArrayList<>());
    }

    /** Puts the next piece into each load in turn and into a new one, and takes the best. */
    private static int least(List<LoadSize> pieces, int next, List<LoadSize> loads) {
        if (next == pieces.size()) {
            return loads.size();
        }
        int best = Integer.MAX_VALUE;
        for (int i = 0; i < loads.size(); i++) {
            LoadSize before = loads.get(i);
            LoadSize with = before.plus(pieces.get(next));
            if (with.within(LIMITS)) {
                loads.set(i, with);
                best = Math.min(best, least(pieces, next + 1, loads));
                loads.set(i, before);
            }
        }
        loads.add(pieces.get(next));
        best = Math.min(best, least(pieces, next + 1, loads));
        loads.remove(loads.size() - 1);
        return best;
    }
}
