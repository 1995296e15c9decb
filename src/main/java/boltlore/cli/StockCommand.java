package boltlore.cli;

import boltlore.book.Held;
import boltlore.book.db.Place;
import boltlore.book.db.Stock;
import boltlore.book.stores.StoresDesk;
import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Part;
import boltlore.faults.Fault;
import boltlore.faults.Outcome;
import boltlore.json.JsonOut;
import boltlore.json.TextShape;
import boltlore.measure.PartNumber;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** What lies in the stores, and what happens to it. */
@Command(
        name = "stock",
        description =
                "What the stores hold: list, short, lacking, bars, goods in, count, move, scrap, keep; 'stock --help' lists how.",
        subcommands = {
            StockCommand.Listed.class,
            StockShort.class,
            StockLacking.class,
            StockBars.class,
            StockReceived.class,
            StockCommand.Count.class,
            StockCommand.Move.class,
            StockCommand.Scrap.class,
            StockCommand.Keep.class
        })
final class StockCommand extends BookGroup {

    /** Lists what lies there. */
    @Command(
            name = "list",
            description = "List what lies in the stores, by part: lots, serial numbers, bins, what is kept for whom.")
    static final class Listed extends FrozenCommand {

        @Mixin
        private Listing listing = new Listing();

        @Parameters(arity = "0..*", paramLabel = "PART|WORD", description = "Only these parts, or those named so.")
        private List<String> wanted = new ArrayList<>();

        @Override
        Outcome<Integer> answer(Screen screen, Place place) {
            return inStores(
                    place,
                    (book, catalogue) -> book.read(reading -> {
                        List<Stock.Reservation> kept = reading.stock().reservations();
                        List<Stock.Row> rows = reading.stock().all().stream()
                                .filter(row ->
                                        wanted.isEmpty() || wanted.stream().anyMatch(word -> is(row, word, catalogue)))
                                .toList();
                        return listed(
                                screen,
                                listing,
                                rows,
                                row -> asJson(row.held())
                                        .put("quantity", row.quantity())
                                        .put("unit", unit(catalogue, row.held())),
                                row -> plain(row.quantity()) + " " + unit(catalogue, row.held()) + " " + row.held()
                                        + keptFor(row.held(), kept),
                                "Nothing lies there.");
                    }));
        }

        private static boolean is(Stock.Row row, String word, Catalogue catalogue) {
            Part part = catalogue.parts().get(new PartNumber(row.held().part()));
            String name = part == null ? "" : part.name().english();
            return row.held().part().equals(word)
                    || row.held().lot().equals(word)
                    || row.held().serial().equals(word)
                    || name.toLowerCase(Locale.ROOT).contains(word.toLowerCase(Locale.ROOT));
        }

        private static String keptFor(Held held, List<Stock.Reservation> kept) {
            String says = kept.stream()
                    .filter(each ->
                            each.part().equals(held.part()) && each.finish().equals(held.finish()))
                    .map(each -> plain(each.quantity()) + " for " + each.order())
                    .collect(Collectors.joining(", "));
            return says.isEmpty() ? "" : "; kept: " + says;
        }
    }

    static JsonOut.Members asJson(Held held) {
        return JsonOut.object()
                .put("part", held.part())
                .put("finish", held.finish())
                .put("lot", held.lot())
                .put("serial", held.serial())
                .put("bin", held.bin());
    }

    private static String unit(Catalogue catalogue, Held held) {
        Part part = catalogue.parts().get(new PartNumber(held.part()));
        return part == null ? "" : part.unit();
    }

    static Outcome<BigDecimal> above(BigDecimal quantity) {
        return quantity.signum() > 0
                ? Outcome.sound(quantity)
                : Outcome.faulty(Fault.of("QUANTITY", "0", "a number above 0", ""));
    }

    /** Commands on something that lies there. */
    abstract static class OnHeld extends FrozenCommand {

        @Parameters(index = "0", paramLabel = "PART", description = "The part.")
        private String part = "";

        @Parameters(
                index = "1",
                paramLabel = "QUANTITY",
                converter = Amount.class,
                description = "How much, in the part's unit.")
        private BigDecimal quantity = BigDecimal.ZERO;

        @Mixin
        private HeldSaid held = new HeldSaid();

        abstract Outcome<Integer> work(Screen screen, StoresDesk desk, Held what, BigDecimal amount, String why);

        @Override
        Outcome<Integer> answer(Screen screen, Place place) {
            return part(part)
                    .then(number -> held.read()
                            .then(said -> reason().then(why -> by().then(by -> inStores(
                                    place,
                                    (book, catalogue) -> work(
                                            screen,
                                            new StoresDesk(book, by, bench(catalogue)),
                                            new Held(
                                                    number,
                                                    said.finish(),
                                                    said.lot(),
                                                    said.serials().isEmpty()
                                                            ? ""
                                                            : said.serials().get(0),
                                                    said.bin()),
                                            quantity,
                                            why))))));
        }
    }

    /** Counting. */
    @Command(name = "count", description = "Say how much lies there; what differs from the book needs a reason.")
    static final class Count extends OnHeld {
        @Override
        Outcome<Integer> work(Screen screen, StoresDesk desk, Held what, BigDecimal amount, String why) {
            return desk.count(what, amount, why)
                    .then(written -> written(
                            screen,
                            written,
                            entry -> asJson(entry.held())
                                    .put("counted", entry.counted())
                                    .put("booked", entry.booked()),
                            entry -> screen.wrapped(
                                    0,
                                    entry.held() + ": " + plain(entry.counted()) + " counted, " + plain(entry.booked())
                                            + " booked until now")));
        }
    }

    /** Moving. */
    @Command(name = "move", description = "Lay something into another bin.")
    static final class Move extends OnHeld {

        @Option(names = "--to", required = true, paramLabel = "BIN", description = "The other bin.")
        private String to = "";

        @Override
        Outcome<Integer> work(Screen screen, StoresDesk desk, Held what, BigDecimal amount, String why) {
            return Said.text("--to", to, TextShape.LINE)
                    .then(bin -> above(amount)
                            .then(some -> desk.move(what, some, bin)
                                    .then(written -> written(
                                            screen,
                                            written,
                                            entry -> asJson(entry.held())
                                                    .put("quantity", entry.quantity())
                                                    .put("to", entry.to()),
                                            entry -> screen.wrapped(
                                                    0,
                                                    plain(entry.quantity()) + " " + entry.held() + " to "
                                                            + entry.to())))));
        }
    }

    /** Scrapping. */
    @Command(name = "scrap", description = "Take something out of the stores for good, and say why.")
    static final class Scrap extends OnHeld {
        @Override
        Outcome<Integer> work(Screen screen, StoresDesk desk, Held what, BigDecimal amount, String why) {
            return above(amount)
                    .then(some -> desk.scrap(what, some, why)
                            .then(written -> written(
                                    screen,
                                    written,
                                    entry -> asJson(entry.held()).put("quantity", entry.quantity()),
                                    entry -> screen.wrapped(
                                            0, "Scrapped: " + plain(entry.quantity()) + " " + entry.held()))));
        }
    }

    /** Keeping for an order. */
    @Command(name = "keep", description = "Keep so much of a part for one order; 0 lets it go.")
    static final class Keep extends OnHeld {

        @Option(names = "--for", required = true, paramLabel = "ORDER", description = "The order.")
        private String order = "";

        @Override
        Outcome<Integer> work(Screen screen, StoresDesk desk, Held what, BigDecimal amount, String why) {
            return Said.text("--for", order, TextShape.ORDER_NAME)
                    .then(name -> desk.reserve(name, what, amount)
                            .then(written -> written(
                                    screen,
                                    written,
                                    entry -> asJson(entry.held())
                                            .put("quantity", entry.quantity())
                                            .put("for", entry.order()),
                                    entry -> screen.wrapped(
                                            0,
                                            plain(entry.quantity()) + " " + entry.held() + " kept for "
                                                    + entry.order()))));
        }
    }
}
