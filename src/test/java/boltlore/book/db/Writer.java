package boltlore.book.db;

import boltlore.book.By;
import boltlore.book.OrderHappening;
import boltlore.book.OrderState;
import boltlore.faults.Outcome;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Map;
import java.util.TreeMap;

/**
 * A process that writes into a book until it is killed: orders in pairs, both or none, each command told on its output once
 * it stands. {@code Writer BOOK DESK}
 */
public final class Writer {

    private static final int TRIES = 10;

    private Writer() {}

    public static void main(String... words) {
        Place place = ((Outcome.Sound<Place>) Place.of(words[0], Map.of())).value();
        try (Book book = opened(place)) {
            for (int i = 1; ; i++) {
                pair(book, words[1], words[1] + "-" + ProcessHandle.current().pid() + "-" + i);
            }
        }
    }

    /** On a machine that is busy with other things a server may let a desk wait for too long: it tries again, as people do. */
    static Book opened(Place place) {
        for (int tried = 1; ; tried++) {
            try {
                return ((Outcome.Sound<Book>) Book.openOrBegin(place)).value();
            } catch (BookLost busy) {
                if (tried == TRIES) {
                    throw busy;
                }
            }
        }
    }

    public static void pair(Book book, String desk, String name) {
        By by = new By(Instant.now(), LocalDate.of(2026, 11, 30), desk, "Person at " + desk);
        Outcome<Written<Integer>> written = book.write(by, writing -> {
            draft(writing, name + "-a");
            draft(writing, name + "-b");
            writing.add(new OrderHappening.Moved(name + "-a", OrderState.LOST), "as a pair");
            return Outcome.sound(1);
        });
        if (!written.faults().isEmpty()) {
            throw new IllegalStateException(written.faults().toString());
        }
        System.out.println(name);
        System.out.flush();
    }

    private static void draft(Writing writing, String name) {
        String content = writing.keep(("content of " + name).getBytes(StandardCharsets.UTF_8));
        writing.add(
                new OrderHappening.Drafted(
                        name, "pannier-van", "P-1", "", null, new TreeMap<>(Map.of("colour", "green")), content),
                "");
    }
}
