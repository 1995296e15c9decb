package boltlore.trades.coating;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.catalogue.CoatingSpec;
import boltlore.catalogue.EnvelopeMm;
import boltlore.catalogue.Oven;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

class OvenLoadPropertiesTest {

    private static final BigDecimal RATIO = BigDecimal.valueOf(3);
    private static final Oven OVEN = SampleShop.oven("3");
    private static final LoadSize LIMITS = LoadSize.limits(OVEN);

    @Property(tries = 120)
    @Label(
            "Every piece in exactly one load, no load over a limit or with sections too far apart, never below the bound")
    void loads(@ForAll long seed, @ForAll @IntRange(min = 1, max = 300) int most) {
        List<BatchRow> rows = rows(new Random(seed), most, "BL-1");
        List<OvenLoad> loads = OvenLoads.fill(rows, OVEN);
        assertThat(pieces(loads.stream().flatMap(load -> load.rows().stream()))).isEqualTo(pieces(rows.stream()));
        assertThat(loads).allSatisfy(OvenLoadPropertiesTest::sound);
        assertThat(loads.size()).isGreaterThanOrEqualTo(LeastLoads.bound(rows, OVEN));
        assertThat(OvenLoads.fill(rows, OVEN)).isEqualTo(loads);
    }

    @Property(tries = 80)
    @Label("The bound is one: no way of hanging up to seven pieces takes fewer loads")
    void bound(@ForAll long seed) {
        List<BatchRow> rows = rows(new Random(seed), 7, "BL-1");
        List<LoadSize> sizes = new ArrayList<>();
        List<BigDecimal> slowest = new ArrayList<>();
        rows.forEach(row -> IntStream.range(0, row.pieces()).forEach(piece -> {
            sizes.add(LoadSize.of(row));
            slowest.add(row.coat().thickestMm());
        }));
        int least = least(sizes, slowest, 0, new ArrayList<>());
        assertThat(LeastLoads.bound(rows, OVEN)).isLessThanOrEqualTo(least);
        assertThat(OvenLoads.fill(rows, OVEN).size()).isBetween(least, least + 1);
    }

    @Property(tries = 60)
    @Label("More pieces in planned loads: those that hang stay where they are, and no load goes over a limit")
    void more(@ForAll long seed) {
        Random random = new Random(seed);
        List<OvenLoad> planned = numbered(OvenLoads.fill(rows(random, 60, "BL-1"), OVEN));
        List<BatchRow> late = rows(random, 30, "BL-2");
        List<OvenLoad> after = OvenLoads.into(planned, late, OVEN);
        assertThat(after).allSatisfy(OvenLoadPropertiesTest::sound);
        for (OvenLoad before : planned) {
            OvenLoad now = after.stream()
                    .filter(load -> load.number() == before.number())
                    .findFirst()
                    .orElseThrow();
            assertThat(pieces(now.rows().stream())).containsAll(pieces(before.rows().stream()));
        }
        assertThat(after.stream().mapToInt(OvenLoad::pieces).sum())
                .isEqualTo(Stream.concat(
                                planned.stream().map(OvenLoad::pieces),
                                late.stream().map(BatchRow::pieces))
                        .mapToInt(Integer::intValue)
                        .sum());
    }

    private static void sound(OvenLoad load) {
        assertThat(load.size().within(LIMITS)).isTrue();
        BigDecimal thin = load.rows().stream()
                .map(row -> row.coat().thickestMm())
                .reduce(BigDecimal::min)
                .orElseThrow();
        assertThat(load.thickest().coat().thickestMm()).isLessThanOrEqualTo(thin.multiply(RATIO));
    }

    private static List<OvenLoad> numbered(List<OvenLoad> loads) {
        return IntStream.range(0, loads.size())
                .mapToObj(i -> loads.get(i).numbered(i + 1))
                .toList();
    }

    private static Set<String> pieces(Stream<BatchRow> rows) {
        Map<String, Integer> seen = new HashMap<>();
        rows.forEach(row -> row.marks()
                .forEach(marks -> IntStream.rangeClosed(marks.from(), marks.to())
                        .forEach(number -> seen.merge(
                                row.part().number() + " " + marks.order() + " " + number, 1, Integer::sum))));
        assertThat(seen.values()).allMatch(count -> count == 1);
        return new TreeSet<>(seen.keySet());
    }

    private static List<BatchRow> rows(Random random, int most, String order) {
        List<BatchRow> rows = new ArrayList<>();
        int left = most;
        while (left > 0) {
            int pieces = 1 + random.nextInt(Math.min(25, left));
            left -= pieces;
            CoatingSpec coat = coat(random);
            rows.add(new BatchRow(
                    SampleShop.part("P-" + rows.size(), coat),
                    coat,
                    SampleShop.OWN_BLACK,
                    BigDecimal.valueOf(random.nextInt(300_000), 4),
                    CoatingStatus.NEEDED,
                    List.of(new PieceMarks(order, null, 1, pieces))));
        }
        return rows;
    }

    private static CoatingSpec coat(Random random) {
        BigDecimal thick = BigDecimal.valueOf(1 + random.nextInt(12));
        return new CoatingSpec(
                "brackets",
                null,
                BigDecimal.valueOf(1 + random.nextInt(6_000), 3),
                BigDecimal.ONE,
                thick,
                List.of(),
                1 + random.nextInt(3),
                new EnvelopeMm(100 + random.nextInt(800), 100 + random.nextInt(800), 20 + random.nextInt(700)));
    }

    private static int least(List<LoadSize> sizes, List<BigDecimal> slowest, int next, List<List<Integer>> loads) {
        if (next == sizes.size()) {
            return loads.size();
        }
        int best = Integer.MAX_VALUE;
        for (int i = 0; i < loads.size(); i++) {
            List<Integer> load = loads.get(i);
            load.add(next);
            if (goes(load, sizes, slowest)) {
                best = Math.min(best, least(sizes, slowest, next + 1, loads));
            }
            load.remove(load.size() - 1);
        }
        loads.add(new ArrayList<>(List.of(next)));
        best = Math.min(best, least(sizes, slowest, next + 1, loads));
        loads.remove(loads.size() - 1);
        return best;
    }

    private static boolean goes(List<Integer> load, List<LoadSize> sizes, List<BigDecimal> slowest) {
        LoadSize all = load.stream().map(sizes::get).reduce(LoadSize.NONE, LoadSize::plus);
        BigDecimal thin =
                load.stream().map(slowest::get).reduce(BigDecimal::min).orElseThrow();
        BigDecimal thick =
                load.stream().map(slowest::get).reduce(BigDecimal::max).orElseThrow();
        return all.within(LIMITS) && thick.compareTo(thin.multiply(RATIO)) <= 0;
    }
}
