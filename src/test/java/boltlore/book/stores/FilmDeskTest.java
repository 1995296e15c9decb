package boltlore.book.stores;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.book.By;
import boltlore.book.OrderHappening;
import boltlore.book.OrderState;
import boltlore.book.ShopHappening.Coat;
import boltlore.book.db.Book;
import boltlore.book.db.Place;
import boltlore.book.db.Shop.Piece;
import boltlore.book.db.Written;
import boltlore.book.orders.Bench;
import boltlore.book.stores.FilmDesk.Film;
import boltlore.book.stores.FilmDesk.Kept;
import boltlore.book.stores.StoresDesk.Arrival;
import boltlore.catalogue.Catalogue;
import boltlore.faults.Outcome;
import boltlore.trades.KitInWork;
import boltlore.trades.coating.CoatJob;
import boltlore.trades.coating.CoatPlan;
import boltlore.trades.coating.FilmReading;
import boltlore.trades.coating.FilmToRead;
import boltlore.trades.coating.RecordVerdict;
import boltlore.trades.picking.SampleStores;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Collections;
import java.util.List;
import java.util.TreeMap;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Two feet and a bracket in black come out of the oven together. */
@DisplayName("A film record that is kept")
class FilmDeskTest {

    private static final LocalDate TODAY = LocalDate.of(2026, 11, 30);
    private static final By LOU = new By(Instant.parse("2026-11-30T08:00:00Z"), TODAY, "shop", "Lou");
    private static final Catalogue CATALOGUE = SampleStores.CATALOGUE;
    private static final KitInWork KIT = SampleStores.kit(SampleStores.withAir());
    private static final String ORDER = KIT.order().name();
    private static final CoatPlan PLAN =
            CoatJob.of(List.of(KIT), List.of(), null).orElseThrow().plan();

    @TempDir
    private Path folder;

    private Book book;

    @BeforeEach
    void out_of_the_oven() {
        book = sound(Book.openOrBegin(new Place.InFile(folder.resolve("book.db"))));
        sound(book.write(LOU, writing -> {
            writing.add(
                    new OrderHappening.Drafted(
                            ORDER, "van", "P-9", "", null, new TreeMap<>(), writing.keep(new byte[] {1})),
                    "");
            writing.add(new OrderHappening.Moved(ORDER, OrderState.IN_WORK), "");
            return Outcome.sound(true);
        }));
        CoatDesk desk = new CoatDesk(book, LOU, CATALOGUE);
        sound(desk.queue(List.of(KIT)));
        sound(new StoresDesk(book, LOU, Bench.of(CATALOGUE, Path.of(".")))
                .receive(List.of(made("BR-1", 2), made("BR-9", 1)), "for the shelf"));
        sound(desk.move(List.of(ORDER), "black", Coat.HUNG, "1", ""));
        sound(desk.move(List.of(ORDER), "black", Coat.COATED, "", ""));
    }

    @AfterEach
    void close() {
        book.close();
    }

    private static Arrival made(String part, int pieces) {
        return new Arrival(part, "", BigDecimal.valueOf(pieces), "", "", List.of(), "", true);
    }

    private static <T> T sound(Outcome<T> outcome) {
        assertThat(outcome.faults()).isEmpty();
        return ((Outcome.Sound<T>) outcome).value();
    }

    /** The black pieces that one plan puts together, each read alike. */
    private List<String> rejectedBy(String um, String flawOfFirst, int read) {
        List<FilmToRead> pieces = FilmToRead.of(PLAN).stream()
                .filter(piece -> piece.finish().equals("Finish black"))
                .toList();
        List<FilmReading> readings = pieces.stream()
                .limit(read)
                .map(piece -> new FilmReading(
                        new FilmReading.Sheet(
                                String.valueOf(piece.batch()), piece.lot(), piece.finish(), piece.limits()),
                        piece.part(),
                        piece.mark(),
                        1,
                        TODAY,
                        Collections.nCopies(5, new BigDecimal(um)),
                        piece.equals(pieces.get(0)) ? flawOfFirst : ""))
                .toList();
        RecordVerdict verdict = RecordVerdict.of(PLAN, true, readings, List.of(), CATALOGUE.workshop());
        byte[] record = "as it was read".getBytes(StandardCharsets.UTF_8);
        Written<Kept> kept = sound(new FilmDesk(book, LOU, CATALOGUE)
                .keep(List.of(ORDER), record, new Film(PLAN, verdict, false, List.of()), ""));
        return kept.value().rejected().stream().map(Piece::piece).toList();
    }

    private Coat state(String piece) {
        return book.read(reading -> reading.shop().piece(piece).orElseThrow().state());
    }

    @Test
    @DisplayName("rejects all pieces of a rejected batch, read or not, and none of another finish")
    void batch() {
        assertThat(rejectedBy("20", "", 1))
                .containsExactlyInAnyOrder(ORDER + "/BR-1/1", ORDER + "/BR-1/2", ORDER + "/BR-9/1");
        assertThat(state(ORDER + "/BR-1/2")).isEqualTo(Coat.REJECTED);
        assertThat(state(ORDER + "/PN-1/1")).isEqualTo(Coat.WAITING);
    }

    @Test
    @DisplayName("rejects of a good batch only the piece that is not, and what lies accepted is bare again")
    void piece() {
        sound(new CoatDesk(book, LOU, CATALOGUE).move(List.of(ORDER), "black", Coat.ACCEPTED, "", ""));
        List<String> rejected = rejectedBy("80", "a run", 3);
        assertThat(rejected).hasSize(1);
        assertThat(state(rejected.get(0))).isEqualTo(Coat.REJECTED);
        String part = rejected.get(0).split("/", -1)[1];
        List<String> finishes = book.read(reading -> reading.stock().of(part).stream()
                .map(row -> row.held().finish())
                .toList());
        assertThat(finishes).contains("");
    }

    @Test
    @DisplayName("rejects nothing where all is good")
    void good() {
        assertThat(rejectedBy("80", "", 3)).isEmpty();
    }
}
