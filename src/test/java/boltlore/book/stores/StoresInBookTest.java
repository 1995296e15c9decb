package boltlore.book.stores;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.book.BuiltNote;
import boltlore.book.By;
import boltlore.book.Held;
import boltlore.book.OrderHappening;
import boltlore.book.OrderState;
import boltlore.book.PurchaseHappening;
import boltlore.book.PurchaseStanding;
import boltlore.book.ShopHappening.Coat;
import boltlore.book.ShopHappening.Kept;
import boltlore.book.db.Book;
import boltlore.book.db.Place;
import boltlore.book.db.Server;
import boltlore.book.db.Stock;
import boltlore.book.db.Tables;
import boltlore.book.db.Written;
import boltlore.book.orders.Bench;
import boltlore.book.stores.StoresDesk.Arrival;
import boltlore.catalogue.Catalogue;
import boltlore.faults.Fault;
import boltlore.faults.Outcome;
import boltlore.trades.KitInWork;
import boltlore.trades.picking.SampleStores;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.function.Consumer;
import java.util.stream.IntStream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

@DisplayName("In the stores")
class StoresInBookTest {

    private static final LocalDate TODAY = LocalDate.of(2026, 11, 30);
    private static final Catalogue CATALOGUE = SampleStores.CATALOGUE;
    private static final KitInWork KIT = SampleStores.kit(SampleStores.withAir());
    private static final String ORDER = KIT.order().name();
    private static final String OTHER = "BL-2";

    enum Where {
        IN_FILE,
        ON_SERVER
    }

    private static final Bench BENCH = Bench.of(CATALOGUE, Path.of("."));

    @TempDir
    private Path folder;

    private static By by(String name) {
        return new By(Instant.parse("2026-11-30T08:00:00Z"), TODAY, "stores", name);
    }

    /** A book with two orders in work and one purchase order, and at its end the sums are as the journal says. */
    private void in(Where kept, Consumer<Book> work) {
        Place place = kept == Where.IN_FILE
                ? new Place.InFile(folder.resolve("book.db"))
                : new Place.OnServer(Server.running().database());
        try (Book book = sound(Book.openOrBegin(place))) {
            sound(book.write(by("Kim"), writing -> {
                for (String order : new String[] {ORDER, OTHER}) {
                    writing.add(
                            new OrderHappening.Drafted(
                                    order, "van", "P-9", "", null, new TreeMap<>(), writing.keep(new byte[] {1})),
                            "");
                    writing.add(new OrderHappening.Moved(order, OrderState.IN_WORK), "");
                }
                writing.add(
                        new PurchaseHappening.Placed(
                                "PO-1",
                                "Supplier A",
                                "EUR",
                                TODAY,
                                List.of(line("HE-1", "2"), line("CO-1", "2"), line("HO-16", "10"))),
                        "");
                return Outcome.sound(true);
            }));
            work.accept(book);
            assertThat(sound(Tables.remade(book, false))).isEmpty();
        }
    }

    private static PurchaseHappening.Line line(String part, String quantity) {
        return new PurchaseHappening.Line(
                part, "A-" + part, new BigDecimal(quantity), "each", BigDecimal.ONE, TODAY.plusDays(9));
    }

    private static StoresDesk stores(Book book) {
        return new StoresDesk(book, by("Kim"), BENCH);
    }

    private static PickDesk picking(Book book) {
        return new PickDesk(book, by("Ada"));
    }

    private static Arrival arrival(String part, String quantity, String purchase, String lot, String... serials) {
        return new Arrival(part, "", new BigDecimal(quantity), purchase, lot, List.of(serials), "", false);
    }

    private static void there(Book book, Arrival... arrivals) {
        List<Arrival> asked = Arrays.stream(arrivals)
                .map(each -> new Arrival(
                        each.part(), "", each.quantity(), each.purchase(), each.lot(), each.serials(), "", true))
                .toList();
        sound(stores(book).receive(asked, "for the shelf"));
    }

    private static BigDecimal lying(Book book, String part) {
        return book.read(reading ->
                reading.stock().of(part).stream().map(Stock.Row::quantity).reduce(BigDecimal.ZERO, BigDecimal::add));
    }

    private static Taken taken(String part, String quantity, String... serials) {
        return new Taken(
                part, "", quantity.isEmpty() ? null : new BigDecimal(quantity), "", List.of(serials), "", "", "");
    }

    private static String refused(Outcome<?> outcome) {
        assertThat(outcome.faults()).isNotEmpty();
        return String.join("; ", outcome.faults().stream().map(Fault::found).toList());
    }

    private static <T> T sound(Outcome<T> outcome) {
        assertThat(outcome.faults()).isEmpty();
        return ((Outcome.Sound<T>) outcome).value();
    }

    @Nested
    @DisplayName("goods come in")
    class GoodsIn {

        @ParameterizedTest
        @EnumSource
        void in_parts_until_all_is_there_and_the_order_closes_by_itself(Where kept) {
            in(kept, book -> {
                there(book, arrival("HE-1", "1", "PO-1", ""));
                assertThat(purchase(book).lines().get(0).left()).isEqualByComparingTo("1");
                there(book, arrival("HE-1", "1", "PO-1", ""), arrival("CO-1", "2", "PO-1", "", "S-1", "S-2"));
                assertThat(purchase(book).open()).isTrue();
                there(book, arrival("HO-16", "10", "PO-1", "L-1"));
                assertThat(purchase(book).open()).isFalse();
                assertThat(lying(book, "HE-1")).isEqualByComparingTo("2");
            });
        }

        @ParameterizedTest
        @EnumSource
        void the_wrong_part_is_refused(Where kept) {
            in(kept, book -> {
                assertThat(refused(stores(book).receive(List.of(arrival("TL-KEY", "1", "PO-1", "")), "")))
                        .contains("TL-KEY, which is not on it");
                assertThat(lying(book, "TL-KEY")).isZero();
            });
        }

        @ParameterizedTest
        @EnumSource
        void more_than_was_ordered_is_refused_unless_it_is_taken_and_said_why(Where kept) {
            in(kept, book -> {
                assertThat(refused(stores(book).receive(List.of(arrival("HE-1", "3", "PO-1", "")), "they sent more")))
                        .contains("of which 2 are still to come");
                Arrival over = new Arrival("HE-1", "", new BigDecimal("3"), "PO-1", "", List.of(), "", true);
                assertThat(refused(stores(book).receive(List.of(over), ""))).contains("still to come");
                sound(stores(book).receive(List.of(over), "they sent more"));
                assertThat(lying(book, "HE-1")).isEqualByComparingTo("3");
            });
        }

        @ParameterizedTest
        @EnumSource
        void lots_and_serial_numbers_are_asked_for_and_each_serial_comes_once(Where kept) {
            in(kept, book -> {
                assertThat(refused(stores(book).receive(List.of(arrival("HO-16", "1", "PO-1", "")), "")))
                        .isEqualTo("no lot");
                assertThat(refused(stores(book).receive(List.of(arrival("CO-1", "2", "PO-1", "", "S-1")), "")))
                        .contains("1 different serial numbers for 2 pieces");
                there(book, arrival("CO-1", "1", "PO-1", "", "S-1"));
                assertThat(refused(stores(book).receive(List.of(arrival("CO-1", "1", "PO-1", "", "S-1")), "")))
                        .contains("S-1, which came in before");
            });
        }

        @ParameterizedTest
        @EnumSource
        void a_delivery_with_one_slip_is_not_taken_in_at_all(Where kept) {
            in(kept, book -> {
                refused(stores(book)
                        .receive(List.of(arrival("HE-1", "1", "PO-1", ""), arrival("HO-16", "1", "PO-1", "")), ""));
                assertThat(lying(book, "HE-1")).isZero();
            });
        }

        @ParameterizedTest
        @EnumSource
        void what_goes_into_an_assembly_leaves_the_stores_with_it(Where kept) {
            in(kept, book -> {
                there(book, arrival("BM-1", "5", "", ""));
                there(book, arrival("BX-1", "1", "", ""));
                assertThat(lying(book, "BM-1")).isEqualByComparingTo("1");
                assertThat(lying(book, "BX-1")).isEqualByComparingTo("1");
            });
        }

        private PurchaseStanding purchase(Book book) {
            return book.read(reading -> reading.stock().purchase("PO-1").orElseThrow());
        }
    }

    @Nested
    @DisplayName("stock is")
    class Stocked {

        @ParameterizedTest
        @EnumSource
        void counted_and_a_difference_needs_a_reason(Where kept) {
            in(kept, book -> {
                there(book, arrival("TL-KEY", "5", "", ""));
                Held key = Held.of("TL-KEY", "");
                sound(stores(book).count(key, new BigDecimal("5"), ""));
                assertThat(refused(stores(book).count(key, new BigDecimal("4"), "")))
                        .contains("where the book has 5");
                sound(stores(book).count(key, new BigDecimal("4"), "one had fallen behind the rack"));
                assertThat(lying(book, "TL-KEY")).isEqualByComparingTo("4");
            });
        }

        @ParameterizedTest
        @EnumSource
        void moved_and_scrapped_but_never_below_nothing(Where kept) {
            in(kept, book -> {
                there(book, arrival("TL-KEY", "5", "", ""));
                Held key = Held.of("TL-KEY", "");
                sound(stores(book).move(key, new BigDecimal("2"), "H-09-01-A-01"));
                assertThat(refused(stores(book).move(key, new BigDecimal("4"), "H-09-01-A-01")))
                        .contains("4 wanted where 3 may be taken");
                assertThat(refused(stores(book).scrap(key, BigDecimal.ONE, ""))).contains("no reason");
                sound(stores(book).scrap(key, BigDecimal.ONE, "bent"));
                assertThat(refused(stores(book).scrap(key, new BigDecimal("3"), "bent")))
                        .contains("where 2 may");
                assertThat(lying(book, "TL-KEY")).isEqualByComparingTo("4");
            });
        }

        @ParameterizedTest
        @EnumSource
        void kept_for_one_order_and_then_no_other_one_gets_it(Where kept) {
            in(kept, book -> {
                there(book, arrival("HE-1", "1", "", ""));
                Held heater = Held.of("HE-1", "");
                sound(stores(book).reserve(OTHER, heater, BigDecimal.ONE));
                assertThat(refused(picking(book).take(KIT, List.of(taken("HE-1", "1")), "")))
                        .contains("1 wanted where 0 may be taken");
                sound(stores(book).reserve(OTHER, heater, BigDecimal.ZERO));
                sound(picking(book).take(KIT, List.of(taken("HE-1", "1")), ""));
            });
        }

        @ParameterizedTest
        @EnumSource
        void taken_by_one_desk_only_where_several_reach_for_the_last_piece(Where kept) {
            in(kept, book -> {
                there(book, arrival("TL-KEY", "1", "", ""));
                Held key = Held.of("TL-KEY", "");
                ExecutorService desks = Executors.newFixedThreadPool(4);
                List<Callable<Outcome<?>>> work = IntStream.range(0, 8)
                        .<Callable<Outcome<?>>>mapToObj(i -> () -> stores(book).scrap(key, BigDecimal.ONE, "test " + i))
                        .toList();
                try {
                    long done = desks.invokeAll(work).stream()
                            .filter(each -> {
                                try {
                                    return each.get().faults().isEmpty();
                                } catch (Exception e) {
                                    throw new IllegalStateException(e);
                                }
                            })
                            .count();
                    assertThat(done).isEqualTo(1);
                } catch (InterruptedException e) {
                    throw new IllegalStateException(e);
                } finally {
                    desks.shutdown();
                }
                assertThat(lying(book, "TL-KEY")).isZero();
            });
        }
    }

    @Nested
    @DisplayName("an order is picked")
    class Picked {

        @ParameterizedTest
        @EnumSource
        void piece_by_piece_and_goes_on_where_it_stopped(Where kept) {
            in(kept, book -> {
                there(book, arrival("HE-1", "1", "", ""), arrival("CO-1", "1", "", "", "S-7"));
                PickLine heater = one(picking(book).take(KIT, List.of(taken("HE-1", "")), ""));
                assertThat(heater.left()).isZero();
                assertThat(line(book, "CO-1").left()).isEqualByComparingTo("1");
                assertThat(refused(picking(book).take(KIT, List.of(taken("CO-1", "1")), "")))
                        .isEqualTo("no serial number");
                sound(picking(book).take(KIT, List.of(taken("CO-1", "1", "S-7")), ""));
                assertThat(line(book, "CO-1").left()).isZero();
                assertThat(inAKit(book, "S-7")).isTrue();
            });
        }

        @ParameterizedTest
        @EnumSource
        void with_no_part_that_its_kit_does_not_hold_and_no_more_than_it_holds(Where kept) {
            in(kept, book -> {
                there(book, arrival("TL-KEY", "1", "", ""), arrival("HE-1", "2", "", ""));
                assertThat(refused(picking(book).take(KIT, List.of(taken("TL-KEY", "1")), "")))
                        .contains("does not hold");
                assertThat(refused(picking(book).take(KIT, List.of(taken("HE-1", "2")), "")))
                        .contains("1 are left");
            });
        }

        @ParameterizedTest
        @EnumSource
        void with_another_part_only_under_a_concession(Where kept) {
            in(kept, book -> {
                there(book, arrival("TL-KEY", "1", "", ""));
                Taken instead = new Taken("TL-KEY", "", BigDecimal.ONE, "", List.of(), "", "HE-1", "");
                assertThat(refused(picking(book).take(KIT, List.of(instead), "")))
                        .contains("does not allow");
                Taken conceded =
                        new Taken("TL-KEY", "", BigDecimal.ONE, "", List.of(), "", "HE-1", "C-12: for the photo");
                Taken dared = new Taken("TL-KEY", "", BigDecimal.ONE, "", List.of(), "", "HE-1", "x");
                assertThat(refused(picking(book).take(KIT, List.of(dared), "asked the engineer")))
                        .contains("does not allow");
                assertThat(refused(picking(book).take(KIT, List.of(conceded), "")))
                        .contains("does not allow");
                assertThat(one(picking(book).take(KIT, List.of(conceded), "asked the engineer"))
                                .left())
                        .isZero();
                List<BuiltNote> notes = book.read(reading -> reading.asBuilt().notes(ORDER));
                assertThat(notes)
                        .singleElement()
                        .satisfies(note -> assertThat(note.says()).contains("TL-KEY in the place of HE-1: C-12"));
            });
        }

        @ParameterizedTest
        @EnumSource
        void and_is_not_complete_while_a_part_is_short_on_which_safety_hangs(Where kept) {
            in(kept, book -> {
                sound(picking(book).missing(KIT, "HE-1", "", "bin is empty"));
                assertThat(line(book, "HE-1").missing()).isEqualByComparingTo("1");
                assertThat(refused(picking(book).complete(KIT, "it will follow")))
                        .contains("safety hangs")
                        .contains("1 each of HE-1")
                        .doesNotContain("CO-1");
                // a near miss: without a reason the other open parts are refused too, with one they may follow
                assertThat(picking(book).complete(KIT, "").faults()).hasSize(2);
                there(book, arrival("HE-1", "1", "", ""), arrival("BX-1", "1", "", ""));
                sound(picking(book).take(KIT, List.of(taken("HE-1", "1"), taken("BX-1", "1")), ""));
                assertThat(line(book, "HE-1").missing()).isZero();
                assertThat(sound(picking(book).complete(KIT, "the rest will follow"))
                                .value())
                        .extracting(PickLine::safety)
                        .containsOnly(false);
            });
        }

        @ParameterizedTest
        @EnumSource
        void and_what_comes_back_lies_in_the_stores_again(Where kept) {
            in(kept, book -> {
                there(book, arrival("CO-1", "1", "", "", "S-7"));
                sound(picking(book).take(KIT, List.of(taken("CO-1", "1", "S-7")), ""));
                Held piece = new Held("CO-1", "", "", "S-7", "");
                assertThat(refused(picking(book).back(KIT, piece, BigDecimal.ONE, "")))
                        .contains("without a reason");
                sound(picking(book).back(KIT, piece, BigDecimal.ONE, "scratched"));
                assertThat(lying(book, "CO-1")).isEqualByComparingTo("1");
                assertThat(line(book, "CO-1").left()).isEqualByComparingTo("1");
                assertThat(inAKit(book, "S-7")).isFalse();
                assertThat(refused(picking(book).back(KIT, piece, BigDecimal.ONE, "again")))
                        .contains("it has got 0");
            });
        }

        private static boolean inAKit(Book book, String serial) {
            return book.read(reading -> reading.asBuilt().inWith("CO-1", serial).isPresent());
        }

        private PickLine line(Book book, String part) {
            return book.read(reading -> PickLine.of(reading, KIT)).stream()
                    .filter(line -> line.part().number().text().equals(part))
                    .findFirst()
                    .orElseThrow();
        }

        private static PickLine one(Outcome<Written<List<PickLine>>> taken) {
            return sound(taken).value().get(0);
        }
    }

    @Nested
    @DisplayName("the coating shop")
    class InCoating {

        private static final String PIECE = ORDER + "/BR-1/1";

        @ParameterizedTest
        @EnumSource
        void takes_each_piece_through_its_steps_and_a_rejected_one_again(Where kept) {
            in(kept, book -> {
                CoatDesk desk = new CoatDesk(book, by("Lou"), CATALOGUE);
                assertThat(sound(desk.queue(List.of(KIT))).value()).hasSizeGreaterThan(2);
                assertThat(sound(desk.queue(List.of(KIT))).value()).isEmpty();
                assertThat(refused(desk.move(List.of(PIECE), Coat.ACCEPTED, "", "")))
                        .contains("'waiting'");
                assertThat(refused(desk.move(List.of(PIECE), Coat.HUNG, "", "")))
                        .isEqualTo("no load");
                there(book, arrival("BR-1", "2", "", ""));
                for (Coat step : List.of(Coat.HUNG, Coat.COATED)) {
                    sound(desk.move(List.of(ORDER + "/BR-1"), step, "load 1", ""));
                }
                assertThat(refused(desk.move(List.of(PIECE), Coat.REJECTED, "", "")))
                        .isEqualTo("no reason");
                sound(desk.move(List.of(PIECE), Coat.REJECTED, "", "run"));
                assertThat(sound(desk.move(List.of(ORDER + "/BR-1"), Coat.ACCEPTED, "", ""))
                                .value())
                        .hasSize(1);
                sound(desk.move(List.of(PIECE), Coat.WAITING, "", ""));
                int again = book.read(
                        reading -> reading.shop().piece(PIECE).orElseThrow().again());
                assertThat(again).isEqualTo(1);
            });
        }

        @ParameterizedTest
        @EnumSource
        void gives_accepted_pieces_to_the_stores_in_their_finish_and_takes_back_what_is_rejected_after_that(
                Where kept) {
            in(kept, book -> {
                CoatDesk desk = new CoatDesk(book, by("Lou"), CATALOGUE);
                there(book, arrival("BR-1", "1", "", ""));
                sound(desk.queue(List.of(KIT)));
                for (Coat step : List.of(Coat.OUT, Coat.BACK, Coat.ACCEPTED)) {
                    sound(desk.move(List.of(PIECE), step, "Coater B", ""));
                }
                assertThat(inFinish(book)).containsExactly("black");
                sound(desk.move(List.of(PIECE), Coat.REJECTED, "", "scratched in the stores"));
                assertThat(inFinish(book)).containsExactly("");
            });
        }

        private static List<String> inFinish(Book book) {
            return book.read(reading -> reading.stock().of("BR-1").stream()
                    .map(row -> row.held().finish())
                    .toList());
        }
    }

    @Nested
    @DisplayName("the rack")
    class Rack {

        @ParameterizedTest
        @EnumSource
        void keeps_the_heat_of_a_remnant_and_gives_no_mark_twice(Where kept) {
            in(kept, book -> {
                RackDesk desk = new RackDesk(book, by("Lou"));
                assertThat(refused(desk.add(new Kept("R-1", "steel-3", new BigDecimal("700"), "", ""), CATALOGUE, "")))
                        .contains("steel-3");
                sound(book.write(by("Lou"), writing -> {
                    writing.add(new Kept("R-1", "tube", new BigDecimal("700"), "", ""), "");
                    return Outcome.sound(true);
                }));
                sound(desk.heat("R-1", "H-4711", ""));
                assertThat(book.read(reading -> RackDesk.rack(reading)).remnants())
                        .singleElement()
                        .satisfies(rest -> assertThat(rest.heat()).isEqualTo("H-4711"));
                assertThat(refused(desk.scrap("R-1", ""))).isEqualTo("no reason");
                sound(desk.scrap("R-1", "bent"));
                assertThat(refused(desk.scrap("R-1", "bent"))).contains("R-1");
                assertThat(book.read(reading -> RackDesk.rack(reading)).usedUp())
                        .hasSize(1);
            });
        }
    }
}
