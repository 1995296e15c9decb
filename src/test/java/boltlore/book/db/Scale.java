package boltlore.book.db;

import boltlore.book.BookBegun;
import boltlore.book.BuiltHappening;
import boltlore.book.By;
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
import boltlore.book.Subject;
import boltlore.faults.Outcome;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.function.Consumer;
import java.util.function.IntUnaryOperator;
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
    private static final int TRIES = 30;
    private static final int PIECES = 20;
    private static final int FINISHES = 12;
    private static final int MOST = 200;
    private static final LocalDate FIRST = LocalDate.of(2016, 1, 4);

    private final int orders;
    private final int parts;
    private final int entries;
    private final Random random;
    private final List<Entry> waiting = new ArrayList<>();
    private long last;
    private String chain = Entry.NO_CHAIN;

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
            scale.measure(book)
                    .forEach((question, ms) -> System.out.printf(Locale.ROOT, "%-44s %8.1f ms%n", question, ms));
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

    /** Fills an empty book, some thousand entries at a time. */
    void fill(Book book) {
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
        book.count();
    }

    private static void inTransaction(Book book, Consumer<Handle> work) {
        book.transactionOutcome(true, handle -> {
            work.accept(handle);
            return Outcome.sound(true);
        });
    }

    private byte[] kit() {
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

    private static String revision(int part) {
        return String.valueOf((char) ('A' + part % 4));
    }

    private static String name(int order) {
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

    private static byte[] needs(byte[] kit) {
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
        waiting.add(entry);
        if (waiting.size() >= 1000) {
            flush(handle);
        }
    }

    /** Entries first, as sums read them. */
    private void flush(Handle handle) {
        if (!waiting.isEmpty()) {
            new Journal(handle).insert(waiting.stream());
            waiting.forEach(entry -> Sums.take(handle, entry));
            waiting.clear();
        }
    }

    /** Milliseconds that each question takes, the middle of some tries. */
    Map<String, Double> measure(Book book) {
        Map<String, Double> measured = new LinkedHashMap<>();
        List<OrderState> open = OrderState.ALL.stream()
                .filter(state -> state.open() || state.owed())
                .toList();
        measured.put(
                "list of open orders, 200",
                middle(i -> book.read(reading -> reading.orders().in(open, 200).size())));
        measured.put(
                "one order with all that happened",
                middle(i -> book.read(reading -> {
                    String name = name(random.nextInt(orders));
                    int entriesOf =
                            reading.journal().of(new Subject("order", name)).size();
                    return entriesOf
                            + reading.orders().quotations(name).size()
                            + reading.orders().find(name).hashCode()
                            + reading.asBuilt().parts(name).size();
                })));
        measured.put(
                "recall of a lot",
                middle(i -> holding(book, "", "L-" + odd() + "-" + random.nextInt(orders / 500 + 1), "")));
        measured.put(
                "recall of a serial number", middle(i -> holding(book, "S-" + random.nextInt(orders) + "-7", "", "")));
        measured.put("recall of a drawing", middle(i -> holding(book, "", "", "D-" + 3 * random.nextInt(parts / 3))));
        measured.put("recall of a part in a revision", middle(i -> {
            int part = random.nextInt(parts);
            return book.read(reading -> reading.asBuilt()
                    .holding(new AsBuilt.Asked(part(part), revision(part), "", "", "", "", ""))
                    .size());
        }));
        measured.put(
                "all of a chassis number",
                middle(i -> book.read(reading -> reading.asBuilt()
                        .ofChassis("CH " + random.nextInt(orders))
                        .size())));
        measured.put(
                "what all open orders lack, 200",
                middle(i -> book.read(reading -> reading.needs().lacking(MOST).size())));
        measured.put(
                "who asks for a part",
                middle(i -> book.read(reading ->
                        reading.needs().forWhom(part(random.nextInt(parts)), "").size())));
        measured.put(
                "coat queue, 200",
                middle(i -> book.read(reading -> reading.shop()
                        .queue(List.of(ShopHappening.Coat.WAITING), MOST)
                        .size())));
        measured.put(
                "coat queue, how many stand where",
                middle(i -> book.read(reading -> reading.shop().counts().size())));
        measured.put("confirming an order", middle(i -> confirm(book, i)));
        return measured;
    }

    private int odd() {
        return 1 + 2 * random.nextInt(parts / 2);
    }

    private static int holding(Book book, String serial, String lot, String drawing) {
        return book.read(reading -> reading.asBuilt()
                .holding(new AsBuilt.Asked("", "", drawing, "", serial, lot, ""))
                .size());
    }

    /** As the desk does it: read, judge, add. */
    private int confirm(Book book, int i) {
        By by = new By(Instant.EPOCH.plusSeconds(last), FIRST, "desk", "Person number 1");
        Outcome<Written<Integer>> written = book.write(by, writing -> {
            String name = name(orders - 1 - i);
            int version = writing.orders().find(name).orElseThrow().version();
            writing.add(new OrderHappening.Ordered(name, version, FIRST), "");
            return Outcome.sound(writing.orders().find(name).orElseThrow().confirmed());
        });
        return written.faults().size();
    }

    private static double middle(IntUnaryOperator question) {
        int answers = question.applyAsInt(TRIES);
        double[] took = new double[TRIES];
        for (int i = 0; i < TRIES; i++) {
            long begun = System.nanoTime();
            answers += question.applyAsInt(i);
            took[i] = (System.nanoTime() - begun) / 1e6;
        }
        Arrays.sort(took);
        // What nobody looks at need not be worked out.
        return answers == Integer.MIN_VALUE ? 0 : took[TRIES / 2];
    }
}
