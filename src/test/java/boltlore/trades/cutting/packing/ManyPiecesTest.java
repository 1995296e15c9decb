package boltlore.trades.cutting.packing;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.management.ManagementFactory;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A thousand pieces, as many orders together ask for; lengths by a fixed seed. */
class ManyPiecesTest {

    private static final int PIECES = 1000;

    @ParameterizedTest(name = "{0} lengths from {1} to {2} mm")
    @CsvSource({"40, 100, 1400", "40, 700, 2900", "120, 20, 900", "1000, 150, 2500", "12, 1050, 1990"})
    void are_packed_in_seconds_with_hardly_a_gap(int lengths, int shortest, int longest) {
        Task task = task(lengths, shortest, longest);
        Packer.pack(task(5, 500, 900));
        long before = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
        Packing packing = Packer.pack(task);
        Duration took = Duration.ofNanos(ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - before);
        double gapPercent = 100.0 * (packing.cost() - packing.bound()) / packing.cost();
        System.out.printf(
                "%d pieces of %d lengths, %d to %d mm: %d bars, gap %.3f %%, %d ms%n",
                PIECES, lengths, shortest, longest, packing.bars().size(), gapPercent, took.toMillis());
        assertThat(gapPercent).isLessThanOrEqualTo(1);
        assertThat(took).isLessThan(Duration.ofSeconds(3));
    }

    private static Task task(int lengths, int shortest, int longest) {
        Random dice = new Random(lengths);
        List<Long> known =
                dice.longs(lengths, shortest * 2000L, longest * 2000L).boxed().toList();
        List<Long> pieces = new ArrayList<>();
        for (int i = 0; i < PIECES; i++) {
            pieces.add(known.get(dice.nextInt(lengths)));
        }
        return PlainTask.of(pieces, Stock.toBuy(6000 * 2000L, 363_900), Stock.toBuy(3000 * 2000L, 198_300));
    }
}
