package boltlore.book.db;

import boltlore.book.By;
import boltlore.book.OrderHappening;
import boltlore.book.OrderState;
import boltlore.faults.Outcome;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicInteger;

/**
 * Desks that write into one book at once, each by a connection pool of its own, as processes on other machines would.
 *
 * @param written entries that were told as written
 * @param there entries of theirs that are in the book afterwards
 * @param repeated how often a command was done once more because another desk was faster
 */
record Desks(int desks, int written, int there, int repeated, double seconds) {

    /** Each desk writes so many orders, one command each. */
    static Desks writing(Place place, int desks, int each) {
        AtomicInteger tries = new AtomicInteger();
        AtomicInteger written = new AtomicInteger();
        String run = "desks-" + System.nanoTime();
        ExecutorService pool = Executors.newFixedThreadPool(desks);
        long begun = System.nanoTime();
        List<Callable<Boolean>> work = new ArrayList<>();
        for (int desk = 0; desk < desks; desk++) {
            String named = run + "-" + desk;
            work.add(() -> {
                try (Book book = ((Outcome.Sound<Book>) Book.open(place)).value()) {
                    for (int i = 0; i < each; i++) {
                        String order = named + "-" + i;
                        By by = new By(Instant.now(), LocalDate.of(2026, 11, 30), named, "Person number 1");
                        Outcome<Written<Integer>> outcome = book.write(by, writing -> {
                            tries.incrementAndGet();
                            return Outcome.sound(draft(writing, order));
                        });
                        written.addAndGet(outcome.faults().isEmpty() ? 1 : 0);
                    }
                }
                return true;
            });
        }
        try {
            for (Future<Boolean> done : pool.invokeAll(work)) {
                done.get();
            }
        } catch (InterruptedException | ExecutionException e) {
            throw new IllegalStateException(e);
        } finally {
            pool.shutdown();
        }
        double seconds = (System.nanoTime() - begun) / 1e9;
        return new Desks(desks, written.get(), there(place, run), tries.get() - written.get(), seconds);
    }

    private static int draft(Writing writing, String order) {
        String content = writing.keep(("content of " + order).getBytes(StandardCharsets.UTF_8));
        writing.add(
                new OrderHappening.Drafted(
                        order, "pannier-van", "P-1", "", null, new TreeMap<>(Map.of("colour", "green")), content),
                "");
        return 1;
    }

    private static int there(Place place, String run) {
        try (Book book = ((Outcome.Sound<Book>) Book.open(place)).value()) {
            return book.read(reading ->
                    Math.toIntExact(reading.orders().in(List.of(OrderState.DRAFT), Integer.MAX_VALUE).stream()
                            .filter(order -> order.name().startsWith(run))
                            .count()));
        }
    }

    @Override
    public String toString() {
        return String.format(
                Locale.ROOT,
                "%d desks at once: %d written, %d of them there, %.0f a second, %d repeated",
                desks,
                written,
                there,
                written / seconds,
                repeated);
    }
}
