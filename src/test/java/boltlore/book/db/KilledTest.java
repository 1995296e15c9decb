package boltlore.book.db;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.book.OrderState;
import boltlore.faults.Outcome;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.SortedMap;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Two processes write into one book and are killed (SIGKILL) at random moments, again and again. Whatever a process told as
 * written is in the book afterwards, whole; whatever it did not tell is there whole or not at all; the journal's chain and
 * all sums hold. {@code -Dboltlore.kills=500} kills more often, {@code -Dboltlore.minutes=30} ends after so long, checks what is there and
 * says how far it came; {@code -Dboltlore.seed=…} repeats a run.
 */
class KilledTest {

    private static final int KILLS = Integer.getInteger("boltlore.kills", 20);
    private static final long SEED = Long.getLong("boltlore.seed", System.nanoTime());
    private static final long MINUTES = Long.getLong("boltlore.minutes", 600);
    private static final int LONGEST_MS = 1000;
    private static final int TOLD_EACH = 50;
    private static final int LOOK_MS = 10;
    private static final int MOST_MS = 120_000;

    @TempDir
    private Path folder;

    @ParameterizedTest
    @EnumSource
    void nothing_that_was_told_is_lost_and_nothing_is_half_there(BookTest.Kept kept) throws Exception {
        System.out.println("Kills: " + KILLS + ", seed " + SEED);
        String place = kept == BookTest.Kept.IN_FILE
                ? folder.resolve("book.db").toString()
                : Server.running().database();
        Random random = new Random(SEED);
        Set<String> told = new HashSet<>();
        Running one = new Running(place, "one");
        Running two = new Running(place, "two");
        try {
            long until = System.nanoTime() + TimeUnit.MINUTES.toNanos(MINUTES);
            for (int kill = 1; kill <= KILLS && System.nanoTime() < until; kill++) {
                boolean first = random.nextBoolean();
                // Every other time it is killed while it writes, else wherever it may be: starting, opening, writing.
                if (kill % 2 == 0) {
                    (first ? one : two).untilItWrites();
                }
                TimeUnit.MILLISECONDS.sleep(random.nextInt(LONGEST_MS));
                told.addAll((first ? one : two).killed());
                if (kill % TOLD_EACH == 0 || System.nanoTime() > until) {
                    System.out.println(kill + " kills, " + told.size() + " commands told as written");
                }
                if (first) {
                    one = new Running(place, "one");
                } else {
                    two = new Running(place, "two");
                }
            }
        } finally {
            told.addAll(one.killed());
            told.addAll(two.killed());
        }
        check(place, told);
    }

    private static void check(String place, Set<String> told) {
        Place known = ((Outcome.Sound<Place>) Place.of(place, Map.of())).value();
        try (Book book = Writer.opened(known)) {
            Outcome<List<String>> remade = Tables.remade(book, false);
            assertThat(remade).as("seed " + SEED).isEqualTo(Outcome.sound(List.of()));
            SortedMap<OrderState, Long> counts =
                    book.read(reading -> reading.orders().counts());
            assertThat(counts.get(OrderState.LOST)).as("seed " + SEED).isEqualTo(counts.get(OrderState.DRAFT));
            Set<String> lost = new HashSet<>();
            book.read(reading -> {
                told.stream()
                        .filter(name -> reading.orders().find(name + "-a").isEmpty()
                                || reading.orders().find(name + "-b").isEmpty())
                        .forEach(lost::add);
                return lost;
            });
            assertThat(lost).as("told and not in the book, seed " + SEED).isEmpty();
            assertThat(told).as("written at all, seed " + SEED).isNotEmpty();
        }
    }

    /** A process that writes, and what it has told. */
    private static final class Running {

        private final Process process;
        private final ConcurrentLinkedQueue<String> told = new ConcurrentLinkedQueue<>();
        private final Thread listening;

        Running(String place, String desk) throws IOException {
            process = new ProcessBuilder(
                            Path.of(System.getProperty("java.home"), "bin", "java")
                                    .toString(),
                            "-XX:TieredStopAtLevel=1",
                            "-Xshare:auto",
                            "-cp",
                            System.getProperty("java.class.path"),
                            "boltlore.book.db.Writer",
                            place,
                            desk)
                    .redirectError(ProcessBuilder.Redirect.INHERIT)
                    .start();
            listening = new Thread(this::listen, "listen to " + desk);
            listening.start();
        }

        private void listen() {
            try (BufferedReader lines =
                    new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8))) {
                for (String line = lines.readLine(); line != null; line = lines.readLine()) {
                    told.add(line);
                }
            } catch (IOException killed) {
                // The last line may be cut off; it was not told then.
            }
        }

        void untilItWrites() throws InterruptedException {
            for (int waited = 0; told.isEmpty(); waited++) {
                assertThat(waited * LOOK_MS).as("milliseconds without a word").isLessThan(MOST_MS);
                TimeUnit.MILLISECONDS.sleep(LOOK_MS);
            }
        }

        /** Ends it as a power switch ends a process: without a word. */
        Set<String> killed() throws InterruptedException {
            assertThat(process.isAlive()).as("still writing when it is killed").isTrue();
            process.destroyForcibly().waitFor();
            listening.join();
            Set<String> all = new HashSet<>(told);
            // A line that was cut off has not its number whole.
            all.removeIf(name -> name.split("-", -1).length != 3 || name.endsWith("-"));
            return all;
        }
    }
}
