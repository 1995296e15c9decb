package boltlore.book.db;

import boltlore.book.By;
import boltlore.book.Frozen;
import boltlore.book.Offer;
import boltlore.book.OrderHappening;
import boltlore.book.OrderState;
import boltlore.book.ShopHappening;
import boltlore.book.Subject;
import boltlore.faults.Outcome;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.IntUnaryOperator;

/** How long the questions of each day take in a book that {@link Scale} has filled. */
final class Questions {

    private static final int TRIES = 30;
    private static final int MOST = 200;

    private final Scale scale;
    private final Book book;

    Questions(Scale scale, Book book) {
        this.scale = scale;
        this.book = book;
    }

    /** Of some tries by the clock; the least one tells most of the book where the machine does other work too. */
    record Took(double middleMs, double leastMs) {}

    Map<String, Took> measured() {
        Map<String, Took> measured = new LinkedHashMap<>();
        List<OrderState> open = OrderState.ALL.stream()
                .filter(state -> state.open() || state.owed())
                .toList();
        measured.put(
                "list of open orders, 200",
                middle(i -> book.read(reading -> reading.orders().in(open, 200).size())));
        measured.put(
                "one order with all that happened",
                middle(i -> book.read(reading -> {
                    String name = Scale.name(scale.random.nextInt(scale.orders));
                    int entriesOf =
                            reading.journal().of(new Subject("order", name)).size();
                    return entriesOf
                            + reading.orders().quotations(name).size()
                            + reading.orders().find(name).hashCode()
                            + reading.asBuilt().parts(name).size();
                })));
        measured.put(
                "recall of a lot",
                middle(i -> holding("", "L-" + odd() + "-" + scale.random.nextInt(scale.orders / 500 + 1), "")));
        measured.put(
                "recall of a serial number",
                middle(i -> holding("S-" + scale.random.nextInt(scale.orders) + "-7", "", "")));
        measured.put(
                "recall of a drawing", middle(i -> holding("", "", "D-" + 3 * scale.random.nextInt(scale.parts / 3))));
        measured.put("recall of a part in a revision", middle(i -> {
            int part = scale.random.nextInt(scale.parts);
            return book.read(reading -> reading.asBuilt()
                    .holding(new AsBuilt.Asked(Scale.part(part), Scale.revision(part), "", "", "", "", ""))
                    .size());
        }));
        measured.put(
                "all of a chassis number",
                middle(i -> book.read(reading -> reading.asBuilt()
                        .ofChassis("CH " + scale.random.nextInt(scale.orders))
                        .size())));
        measured.put(
                "what all open orders lack, 200",
                middle(i -> book.read(reading -> reading.needs().lacking(MOST).size())));
        measured.put(
                "who asks for a part",
                middle(i -> book.read(reading -> reading.needs()
                        .forWhom(Scale.part(scale.random.nextInt(scale.parts)), "")
                        .size())));
        measured.put(
                "coat queue, 200",
                middle(i -> book.read(reading -> reading.shop()
                        .queue(List.of(ShopHappening.Coat.WAITING), MOST)
                        .size())));
        measured.put(
                "coat queue, how many stand where",
                middle(i -> book.read(reading -> reading.shop().counts().size())));
        measured.put("confirming an order", middle(i -> confirm(i)));
        measured.put("freezing and confirming a kit that is new", middle(i -> freeze(scale.kit())));
        return measured;
    }

    private int odd() {
        return 1 + 2 * scale.random.nextInt(scale.parts / 2);
    }

    private int holding(String serial, String lot, String drawing) {
        return book.read(reading -> reading.asBuilt()
                .holding(new AsBuilt.Asked("", "", drawing, "", serial, lot, ""))
                .size());
    }

    /** As the desk does it: read, judge, add; long ago, as the made-up orders have no cost that this month is asked for. */
    private int confirm(int i) {
        By by = new By(Instant.EPOCH, Scale.FIRST, "desk", "Person number 1");
        Outcome<Written<Integer>> written = book.write(by, writing -> {
            String name = Scale.name(scale.orders - 1 - i);
            int version = writing.orders().find(name).orElseThrow().version();
            writing.add(new OrderHappening.Ordered(name, version, Scale.FIRST), "");
            return Outcome.sound(writing.orders().find(name).orElseThrow().confirmed());
        });
        return written.faults().size();
    }

    /** A quotation with the lines and needs of a kit that no other order has, and its order. */
    private int freeze(byte[] kit) {
        By by = new By(Instant.EPOCH, Scale.FIRST, "desk", "Person number 1");
        String name = "SC-NEW-" + System.nanoTime();
        return book.write(by, writing -> {
                    String content = writing.keep(name.getBytes(StandardCharsets.UTF_8));
                    writing.add(
                            new OrderHappening.Drafted(
                                    name, "pannier-van", "P-1", "", Scale.FIRST, new TreeMap<>(), content),
                            "");
                    Frozen stands = new Frozen(
                            content, writing.keep(kit), content, content, content, "", writing.keep(Scale.needs(kit)));
                    Offer offer = new Offer(Scale.FIRST, Scale.FIRST, "EUR", BigDecimal.ONE, BigDecimal.TEN, 80);
                    writing.add(new OrderHappening.Quoted(name, 1, offer, stands), "");
                    writing.add(new OrderHappening.Ordered(name, 1, Scale.FIRST), "");
                    return Outcome.sound(1);
                })
                .faults()
                .size();
    }

    private static Took middle(IntUnaryOperator question) {
        int answers = question.applyAsInt(TRIES);
        double[] took = new double[TRIES];
        for (int i = 0; i < TRIES; i++) {
            long begun = System.nanoTime();
            answers += question.applyAsInt(i);
            took[i] = (System.nanoTime() - begun) / 1e6;
        }
        Arrays.sort(took);
        // What nobody looks at need not be worked out.
        return answers == Integer.MIN_VALUE ? new Took(0, 0) : new Took(took[TRIES / 2], took[0]);
    }
}
