package boltlore.book;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.faults.Outcome;
import boltlore.json.Faults;
import boltlore.json.Json;
import boltlore.json.JsonFile;
import boltlore.json.ObjectReader;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class EntryTest {

    private static final Stamp STAMP = new Stamp(Instant.parse("2026-11-30T08:00:00.5Z"), "office", "P-1");
    private static final Offer OFFER = new Offer(
            LocalDate.of(2026, 11, 30),
            LocalDate.of(2026, 12, 30),
            "EUR",
            new BigDecimal("45210.00"),
            new BigDecimal("55608.30"),
            55);
    private static final Frozen STANDS = new Frozen("a1", "b2", "c3", "d4", "e5", "f6", "07");
    private static final KitLine LINE = new KitLine(
            2, "motor", "PV-CR-E", "B", "green", new BigDecimal("1.071"), "m", "make", true, "lot", "D-7", "2");

    static Stream<Happening> every_kind() {
        return Stream.concat(ofOrders(), Stream.concat(ofStores(), ofRooms()));
    }

    private static Stream<Happening> ofStores() {
        Held held = new Held("PX-12", "signal-red", "4711", "8", "C-01-02-A-03");
        BigDecimal two = new BigDecimal("2.5");
        LocalDate day = LocalDate.of(2027, 1, 2);
        PurchaseHappening.Line line = new PurchaseHappening.Line("PX-12", "O-1", two, "m", new BigDecimal("3.20"), day);
        return Stream.of(
                new StockHappening.Received(held, two, "P-1", "B"),
                new StockHappening.Issued(held, two, "A", "PX-13", "C-7"),
                new StockHappening.Returned(held, two, "A", ""),
                new StockHappening.Moved(held, two, "C-01-02-A-04"),
                new StockHappening.Counted(held, BigDecimal.ZERO, two),
                new StockHappening.BuiltIn(held, two, "PX-20"),
                new StockHappening.Unreceived(held, two, "PO-1001", 7),
                new StockHappening.Scrapped(held, two),
                new StockHappening.Coated(held, two, "black"),
                new StockHappening.Reserved(held, two, "A"),
                new PurchaseHappening.Placed("P-1", "Bolt Bros", "EUR", day, List.of(line)),
                new PurchaseHappening.Promised("P-1", "PX-12", day),
                new PurchaseHappening.Closed("P-1"));
    }

    private static Stream<Happening> ofRooms() {
        BigDecimal two = new BigDecimal("2");
        return Stream.of(
                new ShopHappening.FoundShort("A", "PX-12", "", new BigDecimal("2")),
                new ShopHappening.Picked("A", List.of("PX-12")),
                new ShopHappening.Picked("A", List.of()),
                new ShopHappening.Coating("A-3", "A", "PX-12", "black", ShopHappening.Coat.HUNG, "load 4"),
                new ShopHappening.Kept("R-9", "s235-flat-40x5", new BigDecimal("1262"), "H-2", "A"),
                new ShopHappening.Used("R-9", "A"),
                new PackHappening.Packed("A", 11, new BigDecimal("612.5")),
                new PackHappening.Packed("A", 1, null),
                new PackHappening.BagCounted("A", "bag 3", "PX-12", "", two, BigDecimal.ONE),
                new ShopHappening.Judged("A", "film", "c0ffee", false, List.of("Film below the least: 12 µm.")));
    }

    private static Stream<Happening> ofOrders() {
        TreeMap<String, String> choices = new TreeMap<>(java.util.Map.of("colour", "green"));
        return Stream.of(
                new BookBegun("x"),
                new PersonHappening("P-2", PersonHappening.What.ERASED, "customer"),
                new OrderHappening.Drafted("A", "van", "P-2", "", LocalDate.of(2027, 1, 2), choices, "a1"),
                new OrderHappening.Drafted("A", "van", "P-2", "Partner", null, new TreeMap<>(), "a1"),
                new OrderHappening.Quoted("A", 2, OFFER, STANDS),
                new OrderHappening.Ordered("A", 2, null),
                new OrderHappening.Moved("A", OrderState.IN_WORK),
                new OrderHappening.Moved("A", OrderState.SHIPPED, List.of("3 things that a person checks: a, b, c")),
                new OrderHappening.Issued("A", choices),
                new ChangeHappening.Proposed("A", 1, ChangeHappening.Asker.SUPPLIER, "b2", OFFER, choices, STANDS),
                new ChangeHappening.Decided("A", 1, ChangeState.CARRIED_OUT),
                new ChangeHappening.ServiceAdded("A", 2, List.of(LINE), "b3", "EUR", new BigDecimal("0")),
                new BuiltHappening.OfVehicle("A", "OX 1974 0017"),
                new BuiltHappening.Fitted("A", "CH-11X", "B", BigDecimal.ONE, "S-1", "", "H-2"),
                new BuiltHappening.TakenOut("A", 3_000_000_000L),
                new BuiltHappening.Noted("A", "reading", "insulation", "612 Mohm"),
                new BuiltHappening.Measured("A", "isolation", new BigDecimal("2.4"), "MΩ", BigDecimal.ONE, null),
                new BuiltHappening.Measured("A", "gap", new BigDecimal("-0.1"), "", null, null),
                new BuiltHappening.Worked("A", "CH-11X", "B", "", "bought", new BigDecimal("-2")));
    }

    @ParameterizedTest
    @MethodSource
    void every_kind(Happening happening) {
        Entry entry = Entry.following(6, Entry.NO_CHAIN, STAMP, happening, "why");
        assertThat(entry.happening()).isEqualTo(Outcome.sound(happening));
        assertThat(read(entry.exported())).isEqualTo(Outcome.sound(entry));
        assertThat(entry.exported())
                .doesNotContain("\n")
                .startsWith("{\"entry\": 7, \"at\": \"2026-11-30T08:00:00.500Z\"");
    }

    private static Outcome<Entry> read(String line) {
        Faults faults = new Faults();
        Outcome<Json> json = JsonFile.parse("export", line.getBytes(StandardCharsets.UTF_8));
        return json.then(value -> {
            Entry entry = Entry.read(ObjectReader.of(value, faults));
            return faults.orElse(entry);
        });
    }

    @Test
    void every_kind_is_tried() {
        assertThat(Happenings.kinds().keySet())
                .filteredOn(kind -> !kind.startsWith("person "))
                .isSubsetOf(every_kind().map(Happening::kind).toList());
    }

    @Test
    void an_entry_follows_the_one_before_and_no_other() {
        Entry first = Entry.following(0, Entry.NO_CHAIN, STAMP, new BookBegun("x"), "");
        Entry second = Entry.following(1, first.chain(), STAMP, new OrderHappening.Ordered("A", 1, null), "");
        assertThat(second.follows(1, first.chain())).isTrue();
        assertThat(second.follows(2, first.chain())).isFalse();
        assertThat(second.follows(1, Entry.NO_CHAIN)).isFalse();
        Entry changed = new Entry(
                second.number(), STAMP, second.subject(), second.kind(), second.data(), "other", second.chain());
        assertThat(changed.follows(1, first.chain())).isFalse();
    }

    @Test
    void an_entry_of_a_kind_that_is_not_known_is_a_newer_programs() {
        Entry entry = new Entry(7, STAMP, new Subject("order", "A"), "order teleported", "{}", "", "");
        assertThat(entry.happening().faults())
                .singleElement()
                .satisfies(fault -> assertThat(fault.advice()).contains("A newer program wrote it"));
    }

    @Test
    void an_entry_with_a_key_that_is_not_known_is_refused() {
        Entry entry =
                new Entry(7, STAMP, new Subject("order", "A"), "order moved", "{\"to\": \"draft\", \"x\": 1}", "", "");
        assertThat(entry.happening().faults())
                .singleElement()
                .satisfies(fault -> assertThat(fault.found()).contains("unknown key"));
    }

    /** Of no fraction, tenths, milliseconds and more: always three digits (ISO 8601), so that texts sort as instants do. */
    @ParameterizedTest
    @CsvSource({
        "2026-11-30T08:00:00Z, 2026-11-30T08:00:00.000Z",
        "2026-11-30T08:00:00.5Z, 2026-11-30T08:00:00.500Z",
        "2026-11-30T08:00:00.123Z, 2026-11-30T08:00:00.123Z",
        "2026-11-30T08:00:00.123456789Z, 2026-11-30T08:00:00.123Z"
    })
    void an_instant_is_written_in_one_length(Instant at, String written) {
        assertThat(Entry.written(new Stamp(at, "", "").at())).isEqualTo(written);
    }

    /** FIPS 180-4 with the examples that NIST publishes for it (SHA256.pdf): one block, and two. */
    @ParameterizedTest
    @CsvSource({
        "abc, ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad",
        "abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq,"
                + " 248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1"
    })
    void the_hash_is_sha_256(String text, String hash) {
        assertThat(Entry.sha256(text.getBytes(StandardCharsets.UTF_8))).isEqualTo(hash);
    }
}
