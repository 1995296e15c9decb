package boltlore.book.stores;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.book.By;
import boltlore.book.Held;
import boltlore.book.OrderHappening;
import boltlore.book.OrderState;
import boltlore.book.ShopHappening.Coat;
import boltlore.book.ShopHappening.Coating;
import boltlore.book.StockHappening;
import boltlore.book.db.Book;
import boltlore.book.db.Place;
import boltlore.book.orders.Bench;
import boltlore.book.stores.StoresDesk.Arrival;
import boltlore.catalogue.Catalogue;
import boltlore.catalogue.CoatedWhere;
import boltlore.catalogue.PowderCoat;
import boltlore.faults.Outcome;
import boltlore.sketch.CatalogueSketch;
import boltlore.sketch.PartSketch;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.TreeMap;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Two brackets in black, one in another shade of the same powder, one in grey, and two that are plated, each otherwise. */
@DisplayName("In the coating shop")
class CoatLoadsTest {

    private static final By LOU =
            new By(Instant.parse("2026-11-30T08:00:00Z"), LocalDate.of(2026, 11, 30), "shop", "Lou");
    private static final String ORDER = "BL-1";
    private static final Catalogue CATALOGUE = new CatalogueSketch()
            .finish("black-thick", new CoatedWhere.OwnOven("own"), CatalogueSketch.BLACK)
            .finish(
                    "grey",
                    new CoatedWhere.OwnOven("own"),
                    new PowderCoat("PB-GREY", new BigDecimal("1.5"), 60, 80, 100, 180, 15, new BigDecimal("60")))
            .finish("chrome", new CoatedWhere.OutsideByPiece("Coater B", new BigDecimal("3.00")))
            .part(PartSketch.made("BR-1").coat("chassis", "0.05").bin("C-01-01-A-01"))
            .draw();

    private static final Bench BENCH = Bench.of(CATALOGUE, Path.of("."));

    @TempDir
    private Path folder;

    private Book book;

    @BeforeEach
    void open() {
        book = ((Outcome.Sound<Book>) Book.openOrBegin(new Place.InFile(folder.resolve("book.db")))).value();
        List<String> finishes = List.of("black", "black", "black-thick", "grey", "zinc", "chrome");
        book.write(LOU, writing -> {
            writing.add(
                    new OrderHappening.Drafted(
                            ORDER, "van", "P-9", "", null, new TreeMap<>(), writing.keep(new byte[] {1})),
                    "");
            writing.add(new OrderHappening.Moved(ORDER, OrderState.IN_WORK), "");
            for (int i = 0; i < finishes.size(); i++) {
                writing.add(new Coating(piece(i + 1), ORDER, "BR-1", finishes.get(i), Coat.WAITING, ""), "");
            }
            return Outcome.sound(true);
        });
    }

    @AfterEach
    void close() {
        book.close();
    }

    private static String piece(int number) {
        return ORDER + "/BR-1/" + number;
    }

    private CoatDesk desk() {
        return new CoatDesk(book, LOU, CATALOGUE);
    }

    private void made(int pieces) {
        Arrival arrival = new Arrival("BR-1", "", BigDecimal.valueOf(pieces), "", "", List.of(), "", true);
        assertThat(new StoresDesk(book, LOU, BENCH)
                        .receive(List.of(arrival), "for the shelf")
                        .faults())
                .isEmpty();
    }

    private Outcome<?> move(Coat to, String load, String reason, int... numbers) {
        return desk().move(Arrays.stream(numbers).mapToObj(CoatLoadsTest::piece).toList(), to, load, reason);
    }

    private static String told(Outcome<?> refused) {
        assertThat(refused.faults()).isNotEmpty();
        return refused.faults().toString();
    }

    private Coat state(int number) {
        return book.read(
                reading -> reading.shop().piece(piece(number)).orElseThrow().state());
    }

    private BigDecimal lying(String finish) {
        return book.read(reading -> reading.stock().of("BR-1").stream()
                .filter(row -> row.held().finish().equals(finish))
                .map(row -> row.quantity())
                .reduce(BigDecimal.ZERO, BigDecimal::add));
    }

    @Test
    @DisplayName("no more pieces hang than the stores have bare; with a reason that says where it is from one comes in")
    void bare() {
        assertThat(told(move(Coat.HUNG, "1", "", 1))).contains("no bare BR-1 in the stores");
        made(1);
        assertThat(move(Coat.HUNG, "1", "", 1).faults()).isEmpty();
        assertThat(told(move(Coat.HUNG, "1", "", 2))).contains("no bare BR-1 in the stores");
        assertThat(state(2)).isEqualTo(Coat.WAITING);
        assertThat(move(Coat.HUNG, "1", "made this morning", 2).faults()).isEmpty();
        assertThat(lying("")).isEqualByComparingTo("2");
    }

    @Test
    @DisplayName("nothing is accepted that the stores do not have bare, and what is accepted is bare no more")
    void accepted() {
        made(1);
        move(Coat.HUNG, "1", "", 1);
        move(Coat.COATED, "", "", 1);
        assertThat(move(Coat.ACCEPTED, "", "", 1).faults()).isEmpty();
        assertThat(lying("")).isEqualByComparingTo("0");
        assertThat(lying("black")).isEqualByComparingTo("1");

        move(Coat.HUNG, "1", "made this morning", 2);
        move(Coat.COATED, "", "", 2);
        book.write(LOU, writing -> {
            writing.add(
                    new StockHappening.Scrapped(new Held("BR-1", "", "", "", "C-01-01-A-01"), BigDecimal.ONE), "bent");
            return Outcome.sound(true);
        });
        assertThat(told(move(Coat.ACCEPTED, "", "", 2))).contains("no bare BR-1 in the stores");
    }

    @Test
    @DisplayName(
            "what hangs in a load is neither scrapped, moved, counted away nor taken back in the stores; what lies free is")
    void inLoad() {
        made(2);
        move(Coat.HUNG, "L-7", "", 1);
        StoresDesk stores = new StoresDesk(book, LOU, BENCH);
        Held bare = new Held("BR-1", "", "", "", "C-01-01-A-01");
        BigDecimal both = BigDecimal.valueOf(2);
        assertThat(told(stores.scrap(bare, both, "bent"))).contains("BL-1/BR-1/1 is hung in load L-7");
        assertThat(told(stores.move(bare, both, "C-09"))).contains("in load L-7");
        assertThat(told(stores.count(bare, BigDecimal.ZERO, "seen"))).contains("in load L-7");
        long receipt = book.read(
                        reading -> StoresDesk.receipts(reading, "BR-1", LOU.at().minusSeconds(1)))
                .get(0)
                .number();
        assertThat(told(stores.unreceive(receipt, "not ours"))).contains("in load L-7");
        assertThat(lying("")).isEqualByComparingTo("2");
        assertThat(stores.scrap(bare, BigDecimal.ONE, "bent").faults()).isEmpty();
        assertThat(told(stores.scrap(bare, BigDecimal.ONE, "bent"))).contains("1 wanted where 0 may be taken");
        move(Coat.WAITING, "", "", 1);
        assertThat(stores.scrap(bare, BigDecimal.ONE, "bent").faults()).isEmpty();
    }

    @Test
    @DisplayName("a load is of one powder, whatever finish it makes; another one is told with what may hang together")
    void onePowder() {
        made(6);
        assertThat(told(move(Coat.HUNG, "1", "", 1, 3, 4)))
                .contains("2 powders: PB-BLACK (BL-1/BR-1/1, BL-1/BR-1/3); PB-GREY (BL-1/BR-1/4)");
        assertThat(move(Coat.HUNG, "1", "", 1, 3).faults()).isEmpty();
        assertThat(told(move(Coat.HUNG, "1", "", 4))).contains("load '1'").contains("2 powders");
        assertThat(told(move(Coat.HUNG, "3", "", 2, 4))).contains("--finish black, --finish grey.");
        assertThat(move(Coat.HUNG, "2", "", 4).faults()).isEmpty();
        move(Coat.COATED, "", "", 4);
        assertThat(move(Coat.HUNG, "2", "", 2).faults()).isEmpty();
    }

    @Test
    @DisplayName("of a whole order those in one finish hang by its name")
    void byFinish() {
        made(6);
        assertThat(told(desk().move(List.of(ORDER), Coat.HUNG, "1", "")))
                .contains(
                        "who puts that finish on",
                        "The others hang by their finish: --finish black, --finish black-thick, --finish grey.");
        assertThat(desk().move(List.of(ORDER), "black", Coat.HUNG, "1", "").faults())
                .isEmpty();
        assertThat(List.of(state(1), state(2), state(3))).containsExactly(Coat.HUNG, Coat.HUNG, Coat.WAITING);
        assertThat(told(desk().move(List.of(ORDER), "blue", Coat.HUNG, "1", "")))
                .contains("'BL-1' in blue");
    }

    @Test
    @DisplayName("what is plated goes out, each finish by itself, and hangs in no oven")
    void plated() {
        made(6);
        assertThat(told(move(Coat.HUNG, "1", "", 5))).contains("a send-out to Coater B");
        assertThat(told(move(Coat.OUT, "Coater B", "", 5, 6))).contains("2 finishes: zinc (BL-1/BR-1/5)");
        assertThat(move(Coat.OUT, "Coater B", "", 5).faults()).isEmpty();
        assertThat(move(Coat.OUT, "Coater B", "", 6).faults()).isEmpty();
    }
}
