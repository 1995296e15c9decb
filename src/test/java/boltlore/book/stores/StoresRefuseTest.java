package boltlore.book.stores;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.book.By;
import boltlore.book.Frozen;
import boltlore.book.Held;
import boltlore.book.KitLine;
import boltlore.book.KitLines;
import boltlore.book.KitNeed;
import boltlore.book.Offer;
import boltlore.book.OrderHappening;
import boltlore.book.OrderState;
import boltlore.book.ShopHappening.Coat;
import boltlore.book.ShopHappening.Coating;
import boltlore.book.db.Book;
import boltlore.book.db.Place;
import boltlore.book.db.Stock;
import boltlore.book.db.Writing;
import boltlore.book.orders.Bench;
import boltlore.book.orders.DraftDesk;
import boltlore.book.orders.OrderDesk;
import boltlore.book.stores.StoresDesk.Arrival;
import boltlore.faults.Fault;
import boltlore.faults.Outcome;
import boltlore.order.OrderBuilder;
import boltlore.trades.KitInWork;
import boltlore.trades.picking.SampleStores;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("The stores refuse")
class StoresRefuseTest {

    private static final LocalDate TODAY = LocalDate.of(2026, 11, 30);
    private static final KitInWork KIT = SampleStores.kit(SampleStores.withAir());
    private static final String ORDER = KIT.order().name();
    private static final By KIM = new By(Instant.parse("2026-11-30T08:00:00Z"), TODAY, "stores", "Kim");

    private static final Bench BENCH = Bench.of(SampleStores.CATALOGUE, Path.of("."));

    @TempDir
    private Path folder;

    private Book book;

    @BeforeEach
    void open() {
        book = sound(Book.openOrBegin(new Place.InFile(folder.resolve("book.db"))));
        sound(book.write(KIM, writing -> {
            writing.add(
                    new OrderHappening.Drafted(
                            ORDER, "van", "P-9", "", null, new TreeMap<>(), writing.keep(new byte[] {1})),
                    "");
            writing.add(new OrderHappening.Moved(ORDER, OrderState.IN_WORK), "");
            return Outcome.sound(true);
        }));
    }

    @AfterEach
    void close() {
        book.close();
    }

    private StoresDesk stores() {
        return new StoresDesk(book, KIM, BENCH);
    }

    private PickDesk picking() {
        return new PickDesk(book, KIM);
    }

    private Outcome<?> in(String part, String quantity, String lot, String bin, String... serials) {
        return stores().receive(
                        List.of(new Arrival(part, "", new BigDecimal(quantity), "", lot, List.of(serials), bin, true)),
                        "for the shelf");
    }

    private BigDecimal lying(String part) {
        return book.read(reading ->
                reading.stock().of(part).stream().map(Stock.Row::quantity).reduce(BigDecimal.ZERO, BigDecimal::add));
    }

    private static Taken taken(String part, String quantity) {
        return new Taken(part, "", quantity.isEmpty() ? null : new BigDecimal(quantity), "", List.of(), "", "", "");
    }

    private static Held held(String part, String lot) {
        return new Held(part, "", lot, "", "");
    }

    private static String refused(Outcome<?> outcome) {
        assertThat(outcome.faults()).isNotEmpty();
        return String.join("; ", outcome.faults().stream().map(Fault::found).toList());
    }

    private static <T> T sound(Outcome<T> outcome) {
        assertThat(outcome.faults()).isEmpty();
        return ((Outcome.Sound<T>) outcome).value();
    }

    @Test
    @DisplayName("to hand out 0, which is not 'all that is left'")
    void takenNothing() {
        sound(in("FX-M8", "20", "", ""));
        assertThat(refused(picking().take(KIT, List.of(taken("FX-M8", "0")), "")))
                .startsWith("0 of FX-M8");
        assertThat(lying("FX-M8")).isEqualByComparingTo("20");
        sound(picking().take(KIT, List.of(taken("FX-M8", "")), ""));
        assertThat(lying("FX-M8")).isLessThan(new BigDecimal("20"));
    }

    @Test
    @DisplayName("parts of a piece, however they are booked, but not half a metre of hose")
    void partsOfPieces() {
        sound(in("FX-M8", "20", "", ""));
        sound(in("HO-16", "10", "L-1", ""));
        Held bolts = held("FX-M8", "");
        assertThat(refused(picking().take(KIT, List.of(taken("FX-M8", "4.5")), "")))
                .isEqualTo("4.5 each");
        assertThat(refused(stores().scrap(bolts, new BigDecimal("0.5"), "bent")))
                .isEqualTo("0.5 each");
        assertThat(refused(stores().count(bolts, new BigDecimal("2.5"), "seen")))
                .isEqualTo("2.5 each");
        assertThat(refused(stores().move(bolts, new BigDecimal("1.5"), "F-09"))).isEqualTo("1.5 each");
        assertThat(refused(stores().reserve(ORDER, bolts, new BigDecimal("1.5"))))
                .isEqualTo("1.5 each");
        sound(picking().take(KIT, List.of(taken("FX-M8", "4.000")), ""));
        assertThat(refused(picking().back(KIT, bolts, new BigDecimal("0.5"), "too many")))
                .isEqualTo("0.5 each");
        sound(stores().scrap(held("HO-16", "L-1"), new BigDecimal("0.5"), "torn"));
        assertThat(lying("FX-M8")).isEqualByComparingTo("16");
        assertThat(lying("HO-16")).isEqualByComparingTo("9.5");
    }

    @Test
    @DisplayName("a serial number that differs from a known one by small letters alone, and take the next one")
    void variantOfSerial() {
        sound(in("CO-1", "1", "", "", "AC-0003"));
        assertThat(refused(in("CO-1", "1", "", "", "ac-0003"))).contains("ac-0003, which came in before as AC-0003");
        assertThat(refused(in("CO-1", "2", "", "", "B-1", "b-1"))).startsWith("1 different serial numbers");
        assertThat(refused(stores().count(new Held("CO-1", "", "", "ac-0003", ""), BigDecimal.ONE, "seen")))
                .contains("came in as AC-0003");
        sound(in("CO-1", "1", "", "", "ac-0004"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"../x", "a/b", "a\\b"})
    @DisplayName("a bin that is a path")
    void pathForBin(String bin) {
        assertThat(refused(in("FX-M8", "20", "", bin))).contains("the bin '" + bin + "'");
        sound(in("FX-M8", "20", "", "F-01-01-A-01"));
        Held held = new Held("FX-M8", "", "", "", "F-01-01-A-01");
        assertThat(refused(stores().move(held, BigDecimal.ONE, bin))).contains(bin);
        assertThat(refused(stores().count(held.in(bin), BigDecimal.ONE, "seen")))
                .contains(bin);
        sound(stores().move(held, BigDecimal.ONE, "F-01-01-A-09"));
    }

    @Test
    @DisplayName("an order number that differs from another by small letters alone")
    void variantOfOrder() {
        OrderDesk desk = new OrderDesk(book, KIM);
        OrderBuilder order = new OrderBuilder(KIT.order());
        String small = ORDER.toLowerCase(Locale.ROOT);
        assertThat(refused(desk.draft(List.of(order.name(small).build()), ""))).contains(small, ORDER);
        assertThat(refused(new DraftDesk(book, KIM).begin(order.name(small).build())))
                .contains(small, ORDER);
        sound(desk.draft(List.of(order.name(small + "0").build()), ""));
    }

    @Test
    @DisplayName("that a scrapped piece still lies in the stores")
    void scrapped() {
        sound(book.write(KIM, writing -> {
            for (String piece : List.of("BR-1 black 1", "BR-1 black 2")) {
                String[] part = piece.split(" ", -1);
                writing.add(
                        new Coating(ORDER + "/" + part[0] + "/" + part[2], ORDER, part[0], part[1], Coat.WAITING, ""),
                        "");
            }
            return Outcome.sound(true);
        }));
        sound(in("BR-1", "2", "", ""));
        CoatDesk desk = new CoatDesk(book, KIM, SampleStores.CATALOGUE);
        String first = ORDER + "/BR-1/1";
        sound(desk.move(List.of(first), Coat.HUNG, "L-1", ""));
        sound(desk.move(List.of(ORDER + "/BR-1/2"), Coat.HUNG, "L-1", ""));
        sound(desk.move(List.of(first), Coat.COATED, "", ""));
        sound(desk.move(List.of(first), Coat.REJECTED, "", "runs"));
        assertThat(lying("BR-1")).isEqualByComparingTo("2");
        sound(desk.move(List.of(first), Coat.SCRAPPED, "", "bent"));
        assertThat(lying("BR-1")).isEqualByComparingTo("1");
    }

    @Test
    @DisplayName("what was made past what is still to be made, unless that is said and why")
    void madeTooMany() {
        StoresDesk stores = stores();
        sound(book.write(KIM, writing -> {
            ordered(writing);
            return Outcome.sound(true);
        }));
        assertThat(refused(stores.receive(List.of(made("BR-1", "3", false)), "")))
                .isEqualTo("3 of BR-1 made here, of which 2 are still to be made");
        assertThat(refused(stores.receive(List.of(made("BR-1", "1", false), made("BR-1", "2", false)), "")))
                .isEqualTo("2 of BR-1 made here, of which 1 are still to be made");
        assertThat(lying("BR-1")).isZero();
        sound(stores.receive(List.of(made("BR-1", "2", false)), ""));
        assertThat(refused(stores.receive(List.of(made("BR-1", "2", false)), "the same ones")))
                .contains("of which 0 are still to be made");
        assertThat(refused(stores.receive(List.of(made("BR-1", "2", true)), "")))
                .contains("of which 0");
        sound(stores.receive(List.of(made("BR-1", "2", true)), "for the shelf"));
        sound(stores.receive(List.of(made("FX-M8", "20", false)), ""));
    }

    /** An order that asks for two brackets in black. */
    private static void ordered(Writing writing) {
        BigDecimal two = BigDecimal.valueOf(2);
        String content = writing.keep(new byte[] {2});
        String kit = writing.keep(KitLines.write(
                List.of(new KitLine(1, "A", "BR-1", "A", "black", two, "each", "make", true, "", "", ""))));
        String needs = writing.keep(KitNeed.write(List.of(new KitNeed("BR-1", "black", 10, two))));
        writing.add(
                new OrderHappening.Drafted("BL-9", "van", "P-9", "", TODAY.plusDays(60), new TreeMap<>(), content), "");
        writing.add(
                new OrderHappening.Quoted(
                        "BL-9",
                        1,
                        new Offer(TODAY, TODAY.plusDays(30), "EUR", BigDecimal.ONE, BigDecimal.ONE, 30),
                        new Frozen(content, kit, content, content, content, "", needs)),
                "");
        writing.add(new OrderHappening.Ordered("BL-9", 1, null), "");
    }

    private static Arrival made(String part, String quantity, boolean over) {
        return new Arrival(part, "", new BigDecimal(quantity), "", "", List.of(), "", over);
    }

    @Test
    @DisplayName("nothing slowly: what came in lately of a part with many serial numbers is told at once")
    void manySerials() {
        sound(in(
                "CO-1",
                "600",
                "",
                "",
                IntStream.range(0, 600).mapToObj(i -> "S-" + i).toArray(String[]::new)));
        long from = System.nanoTime();
        Instant since = KIM.at().minusSeconds(1);
        assertThat(book.read(reading -> StoresDesk.receipts(reading, "CO-1", since))
                        .size())
                .isEqualTo(600);
        assertThat(Duration.ofNanos(System.nanoTime() - from)).isLessThan(Duration.ofSeconds(2));
        long last = book.read(
                reading -> StoresDesk.receipts(reading, "CO-1", since).get(0).number());
        sound(stores().unreceive(last, "not ours"));
        assertThat(book.read(reading -> StoresDesk.receipts(reading, "CO-1", since))
                        .size())
                .isEqualTo(599);
        assertThat(refused(stores().unreceive(last, "not ours"))).isEqualTo("no receipt that stands");
    }

    @Test
    @DisplayName("a bag with a part of a piece in it, and keep a count that is merely wrong")
    void bagCounts() {
        PackDesk desk = new PackDesk(book, KIM);
        PackDesk.InBag bag = book.read(reading -> PackDesk.bags(reading, KIT)).stream()
                .filter(one -> one.unit().equals("each"))
                .findFirst()
                .orElseThrow();
        assertThat(refused(desk.count(KIT, List.of(counted(bag, "3.5")), ""))).contains("3.5 each");
        sound(desk.count(KIT, List.of(counted(bag, "3")), ""));
    }

    private static PackDesk.Count counted(PackDesk.InBag bag, String quantity) {
        return new PackDesk.Count(bag.bag(), bag.part(), bag.finish(), new BigDecimal(quantity));
    }

    @ParameterizedTest
    @CsvSource({
        "11, 412, '', true",
        "11, 372, '', true",
        "11, 370, '', false",
        "11, 370, two crates are light, true",
        "12, , '', false",
        "12, , the box lies in one of its own, true",
        "99, , so many, false",
        "11, 0.001, so it says, false",
        "11, 826, so it says, false"
    })
    @DisplayName("crates that are not as planned, in number or mass, without a reason, and a slip of typing with one")
    void crates(int crates, BigDecimal massKg, String reason, boolean accepted) {
        CratesJudged plan = new CratesJudged("BL-1", 11, new BigDecimal("412"));
        assertThat(plan.faults(crates, massKg, reason).isEmpty()).isEqualTo(accepted);
        assertThat(new CratesJudged("BL-1", 0, BigDecimal.ZERO).faults(crates, massKg, ""))
                .isEmpty();
    }
}
