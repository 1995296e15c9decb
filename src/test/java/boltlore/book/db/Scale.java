package boltlore.book.db;

import boltlore.book.BookBegun;
import boltlore.book.BuiltHappening;
import boltlore.book.Entry;
import boltlore.book.Frozen;
import boltlore.book.Happening;
import boltlore.book.Held;
import boltlore.book.KitLine;
import boltlore.book.KitLines;
import boltlore.book.KitNeed;
import boltlore.book.Offer;
import boltlore.book.OrderHappening;
import boltlore.book.OrderState;
import boltlore.book.Person;
import boltlore.book.ShopHappening;
import boltlore.book.Stamp;
import boltlore.book.StockHappening;
import boltlore.faults.Outcome;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.function.Consumer;
import java.util.stream.IntStream;
import org.jdbi.v3.core.Handle;

/**
 * A book as a workshop has it after many years, made of a seed, and how long questions take in it. {@code Scale BOOK ORDERS
 * PARTS ENTRIES SEED}, as {@code book.db 100000 5000 3000000 1}, with {@code -Dboltlore.filled=FILE} from a file that was filled before; prints one line for each question.
 */
public final class Scale {

    private static final int LINES_A_KIT = 300;
    private static final int ORDERS_A_KIT = 50;
    private static final int AT_ONCE = 20_000;
    private static final int DESKS = 20;
    private static final int ENTRIES = 100;
    private static final int PIECES = 20;
    private static final int FINISHES = 12;
    static final LocalDate FIRST = LocalDate.of(2016, 1, 4);

    final int orders;
    final int parts;
    private final int entries;
    final Random random;
    private final List<Added> waiting = new ArrayList<>();
    private long last;
    private String chain = Entry.NO_CHAIN;

    private record Added(Entry entry, Happening happening) {}

    Scale(int orders, int parts, int entries, long seed) {
        this.orders = orders;
        this.parts = parts;
        this.entries = entries;
        this.random = new Random(seed);
    }

    public static void main(String... words) throws Exception {
        Place place = ((Outcome.Sound<Place>) Place.of(words[0], Map.of())).value();
        Scale scale = new Scale(
                Integer.parseInt(words[1]),
                Integer.parseInt(words[2]),
                Integer.parseInt(words[3]),
                Long.parseLong(words[4]));
        try (Book book = ((Outcome.Sound<Book>) Book.openOrBegin(place)).value()) {
            long begun = System.nanoTime();
            if (book.read(reading -> reading.journal().last().isEmpty())) {
                scale.fill(book, place);
            }
            System.out.printf(
                    Locale.ROOT, "filled in %d s, seed %s%n", (System.nanoTime() - begun) / 1_000_000_000, words[4]);
            System.out.printf("%-44s %12s %12s%n", "question", "middle, ms", "least, ms");
            new Questions(scale, book)
                    .measured()
                    .forEach((question, took) -> System.out.printf(
                            Locale.ROOT, "%-44s %12.1f %12.1f%n", question, took.middleMs(), took.leastMs()));
            Runtime runtime = Runtime.getRuntime();
            System.out.printf(Locale.ROOT, "heap, at most%n  %d MB%n", runtime.maxMemory() / 1_000_000);
            if (place instanceof Place.OnServer) {
                System.out.println(Desks.writing(place, DESKS, Integer.getInteger("boltlore.entries", ENTRIES)));
            }
        }
    }

    /** A server's book is filled in a file first, and copied: a question for each row and sum would take hours there. */
    private void fill(Book book, Place place) throws Exception {
        if (!(place instanceof Place.OnServer)) {
            fill(book);
            return;
        }
        Place.InFile aside = System.getProperty("boltlore.filled") == null
                ? new Place.InFile(Files.createTempDirectory("scale").resolve("book.db"))
                : new Place.InFile(Path.of(System.getProperty("boltlore.filled")));
        try (Book file = ((Outcome.Sound<Book>) Book.openOrBegin(aside)).value()) {
            if (file.read(reading -> reading.journal().last().isEmpty())) {
                fill(file);
            }
        }
        TableCopy.copy(aside, book);
    }

    /** Fills an empty book, some thousand entries at a time; its indexes are made when all is there. */
    void fill(Book book) {
        List<String> indexes = new ArrayList<>();
        inTransaction(book, handle -> indexes.addAll(TableCopy.withoutIndexes(handle, TableCopy.tables())));
        entries(book);
        inTransaction(book, handle -> indexes.forEach(handle::execute));
        book.count();
    }

    private void entries(Book book) {
        List<byte[]> kits = IntStream.range(0, Math.max(1, orders / ORDERS_A_KIT))
                .mapToObj(kit -> kit())
                .toList();
        inTransaction(book, handle -> {
            add(handle, new BookBegun("00000000-0000-0000-0000-000000000000"));
            for (int i = 1; i <= 1 + orders / 4; i++) {
                new Persons(handle)
                        .put(new Person(
                                "P-" + i,
                                i == 1 ? Person.STAFF : Person.CUSTOMER,
                                "Person number " + i,
                                new TreeMap<>(Map.of("telephone", "0000 " + i)),
                                Entry.written(Instant.EPOCH),
                                ""));
            }
            flush(handle);
        });
        int each = entries / orders;
        for (int from = 0; from < orders; from += Math.max(1, AT_ONCE / each)) {
            int first = from;
            int next = Math.min(orders, from + Math.max(1, AT_ONCE / each));
            inTransaction(book, handle -> {
                for (int order = first; order < next; order++) {
                    order(handle, order, kits.get(random.nextInt(kits.size())), each);
                }
                flush(handle);
            });
        }
    }

    private static void inTransaction(Book book, Consumer<Handle> work) {
        book.transactionOutcome(true, handle -> {
            work.accept(handle);
            return Outcome.sound(true);
        });
    }

    byte[] kit() {
        List<KitLine> lines = new ArrayList<>();
        for (int i = 0; i < LINES_A_KIT; i++) {
            int part = random.nextInt(parts);
            lines.add(new KitLine(
                    1 + i % 3,
                    "position-" + i,
                    part(part),
                    revision(part),
                    "",
                    BigDecimal.valueOf(1 + random.nextInt(8)),
                    "each",
                    part % 3 == 0 ? "make" : "buy",
                    true,
                    part % 5 == 0 ? "lot" : "",
                    part % 3 == 0 ? "D-" + part : "",
                    part % 3 == 0 ? "1" : ""));
        }
        return KitLines.write(lines);
    }

    static String part(int number) {
        return "SC-" + number;
    }

    static String revision(int part) {
        return String.valueOf((char) ('A' + part % 4));
    }

    static String name(int order) {
        return "SC-ORDER-" + order;
    }

    private void order(Handle handle, int number, byte[] kit, int each) {
        String name = name(number);
        Contents contents = new Contents(handle);
        String content = contents.keep(("{\"order\": \"" + name + "\"}").getBytes(StandardCharsets.UTF_8), last + 1);
        String kept = contents.keep(kit, last + 1);
        LocalDate due = FIRST.plusDays(number * 3650L / orders);
        add(
                handle,
                new OrderHappening.Drafted(
                        name,
                        "pannier-van",
                        "P-" + (2 + random.nextInt(Math.max(1, orders / 4))),
                        "",
                        due,
                        new TreeMap<>(Map.of("colour", number % 2 == 0 ? "green" : "grey", "drive-side", "left")),
                        content));
        // Of orders that have left nothing is asked any more; of the open ones each kit asks for what it is made of.
        boolean open = number > orders - orders / 20;
        String needs = open ? contents.keep(needs(kit), last + 1) : "";
        Offer offer =
                new Offer(due, due.plusDays(30), "EUR", new BigDecimal("41000.00"), new BigDecimal("49000.00"), 80);
        add(
                handle,
                new OrderHappening.Quoted(
                        name, 1, offer, new Frozen(content, kept, content, content, content, "", needs)));
        // The newest are open still: quoted, ordered, in work.
        if (number > orders - orders / 50) {
            return;
        }
        add(handle, new OrderHappening.Ordered(name, 1, due));
        if (open) {
            inWork(handle, name, number);
            return;
        }
        add(handle, new BuiltHappening.OfVehicle(name, "CH " + number));
        for (int i = 7; i < each; i++) {
            int part = random.nextInt(parts);
            boolean serial = part % 2 == 0;
            add(
                    handle,
                    new BuiltHappening.Fitted(
                            name,
                            part(part),
                            revision(part),
                            BigDecimal.ONE,
                            serial ? "S-" + number + "-" + i : "",
                            serial ? "" : "L-" + part + "-" + number / 500,
                            ""));
        }
        for (OrderState state : List.of(OrderState.IN_WORK, OrderState.TESTED, OrderState.SHIPPED)) {
            add(handle, new OrderHappening.Moved(name, state));
        }
    }

    /** Some pieces wait for their coat or hang, and some goods have come in. */
    private void inWork(Handle handle, String name, int number) {
        for (int piece = 1; piece <= PIECES; piece++) {
            String part = part(3 * random.nextInt(parts / 3));
            add(
                    handle,
                    new ShopHappening.Coating(
                            name + "/" + part + "/" + piece,
                            name,
                            part,
                            "finish-" + random.nextInt(FINISHES),
                            number % 3 == 0 ? ShopHappening.Coat.HUNG : ShopHappening.Coat.WAITING,
                            number % 3 == 0 ? "load-" + number / 10 : ""));
        }
        for (int i = 0; i < 2; i++) {
            int part = random.nextInt(parts);
            add(
                    handle,
                    new StockHappening.Received(
                            Held.of(part(part), "A-" + part % 100), BigDecimal.TEN, "", revision(part)));
        }
    }

    static byte[] needs(byte[] kit) {
        Map<String, KitNeed> needs = new TreeMap<>();
        KitLines.read("", kit)
                .forEach(line -> needs.merge(
                        line.part(),
                        new KitNeed(line.part(), "", 10 + line.level(), line.quantity()),
                        (one, other) -> new KitNeed(
                                one.part(), "", one.daysBefore(), one.quantity().add(other.quantity()))));
        return KitNeed.write(List.copyOf(needs.values()));
    }

    private void add(Handle handle, Happening happening) {
        Stamp stamp = new Stamp(Instant.EPOCH.plusSeconds(last), "desk", "P-1");
        Entry entry = Entry.following(last, chain, stamp, happening, "");
        last = entry.number();
        chain = entry.chain();
        waiting.add(new Added(entry, happening));
        if (waiting.size() >= 1000) {
            flush(handle);
        }
    }

    /** Entries first, as sums read them. */
    private void flush(Handle handle) {
        if (!waiting.isEmpty()) {
            new Journal(handle).insert(waiting.stream().map(Added::entry));
            waiting.forEach(added -> Sums.take(handle, added.entry(), added.happening()));
            waiting.clear();
        }
    }
}
