package boltlore.trades.cutting.packing;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Classes of packing tasks that the literature holds hard, made anew by fixed seeds as their authors describe them: E.
 * Falkenauer, A hybrid grouping genetic algorithm for bin packing, Journal of Heuristics 2 (1996), and the third class of
 * A. Scholl, R. Klein and C. Jürgens, BISON, Computers and Operations Research 24 (1997); both from memory.
 */
@DisplayName("Of the classes that are hard to pack")
class HardClassesTest {

    @Test
    @DisplayName("the first published one of 120 pieces takes the 48 bars of its best known packing, proven")
    void the_published_one() throws IOException {
        List<Long> numbers = Files.readAllLines(Path.of("src/test/resources/packing/Falkenauer_u120_00.txt")).stream()
                .map(Long::valueOf)
                .toList();
        Packing packing = Packer.pack(PlainTask.of(numbers.subList(2, numbers.size()), Stock.toBuy(150, 1)));
        assertThat(packing.cost()).isEqualTo(48);
        assertThat(packing.proven()).isTrue();
    }

    @ParameterizedTest(name = "seed {0}")
    @CsvSource({"0", "1", "2", "3", "4", "5", "6", "7", "8", "9"})
    @DisplayName("120 pieces of 20 to 100 for bars of 150 are packed with the fewest bars, proven")
    void uniform(int seed) {
        Random dice = new Random(seed);
        List<Long> pieces =
                IntStream.range(0, 120).mapToObj(i -> 20L + dice.nextInt(81)).toList();
        assertThat(Packer.pack(PlainTask.of(pieces, Stock.toBuy(150, 1))).proven())
                .isTrue();
    }

    @ParameterizedTest(name = "{0} pieces, seed {1}")
    @CsvSource({
        "60, 0", "60, 1", "60, 2", "60, 3", "60, 4", "60, 5", "120, 0", "120, 2", "120, 17", "249, 0", "249, 19",
        "501, 0", "501, 10"
    })
    @DisplayName("three pieces fill each bar without a rest, and all of them are found")
    void triplets(int count, int seed) {
        Packing packing = Packer.pack(PlainTask.of(triplets(count, new Random(seed)), Stock.toBuy(1000, 1)));
        assertThat(packing.cost()).isEqualTo(count / 3);
        assertThat(packing.proven()).isTrue();
    }

    @Test
    @DisplayName("three pieces for each bar of which one is a little too long take one bar more")
    void near_miss() {
        List<Long> pieces = triplets(60, new Random(0));
        pieces.set(0, pieces.get(0) + 1);
        Packing packing = Packer.pack(PlainTask.of(pieces, Stock.toBuy(1000, 1)));
        assertThat(packing.cost()).isEqualTo(21);
        assertThat(packing.proven()).isTrue();
    }

    @ParameterizedTest(name = "seed {0}")
    @CsvSource({"1", "2"})
    @DisplayName("200 pieces of a fifth to a third of a bar, all different, are packed with the fewest bars, proven")
    void all_different(int seed) {
        Random dice = new Random(seed);
        List<Long> pieces = IntStream.range(0, 200)
                .mapToObj(i -> 20_000L + dice.nextInt(15_001))
                .toList();
        assertThat(Packer.pack(PlainTask.of(pieces, Stock.toBuy(100_000, 1))).proven())
                .isTrue();
    }

    private static List<Long> triplets(int count, Random dice) {
        List<Long> pieces = new ArrayList<>();
        while (pieces.size() < count) {
            long first = 380L + dice.nextInt(111);
            long second = 250L + dice.nextInt((int) ((1000 - first) / 2 - 249));
            pieces.addAll(List.of(first, second, 1000 - first - second));
        }
        return pieces;
    }
}
