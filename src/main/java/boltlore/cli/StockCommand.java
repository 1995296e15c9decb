package boltlore.cli;

import boltlore.book.Held;
import boltlore.book.db.Book;
import boltlore.book.db.Place;
import boltlore.book.db.Reading;
import boltlore.book.db.Stock;
import boltlore.book.stores.PurchaseDesk;
import boltlore.book.stores.StoresDesk;
import boltlore.book.stores.StoresDesk.Arrival;
import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Part;
import boltlore.faults.Fault;
import boltlore.faults.Outcome;
import boltlore.json.JsonOut;
import boltlore.json.TextShape;
import boltlore.measure.PartNumber;
import boltlore.netting.ItemPlan;
import boltlore.netting.PlannedReceipt;
import boltlore.trades.buying.ShopPlan;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** What lies in the stores, and what happens to it. */
@Command(
        name = "stock",
        description = "What the stores hold: list, short, goods in, count, move, scrap, keep; 'stock --help' lists how.",
        subcommands = {
            StockCommand.Listed.class,
            StockCommand.Short.class,
            StockCommand.Receive.class,
            StockCommand.Count.class,
            StockCommand.Move.class,
            StockCommand.Scrap.class,
            StockCommand.Keep.class
        })
final class StockCommand extends BookGroup {

    /** Lists what lies there. */
    @Command(name = "list", description = "List what lies in the stores, by part: lots, serial numbers, bins, what is kept for whom.")
    static final class Listed extends FrozenCommand {

        @Parameters(arity = "0..*", paramLabel = "PART|WORD", description = "Only these parts, or those named so.")
        private List<String> wanted = new ArrayList<>();

        @Override
        Outcome<Integer> answer(Screen screen, Place place) {
            return inStores(place, (book, catalogue) -> book.read(reading -> {
                List<Stock.Reservation> kept = reading.stock().reservations();
                List<Stock.Row> rows = reading.stock().all().stream()
                        .filter(row -> wanted.isEmpty() || wanted.stream().anyMatch(word -> is(row, word, catalogue)))
                        .toList();
                return listed(
                        screen,
                        rows,
                        row -> asJson(row.held()).put("quantity", row.quantity()).put("unit", unit(catalogue, row.held())),
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
                    .filter(each -> each.part().equals(held.part()) && each.finish().equals(held.finish()))
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

    /** Plans over all orders that are owed. */
    static Outcome<ShopPlan> plan(FrozenCommand command, Book book, Catalogue catalogue, @Nullable LocalDate on) {
        return command.frozen(book, catalogue, (reading, kits) -> kits.owed().then(all -> {
            if (all.isEmpty()) {
                return Outcome.faulty(Fault.of(
                        "", "no order that is owed", "at least one", "'boltlore order confirm NUMBER' makes one."));
            }
            LocalDate day = on == null ? FrozenCommand.today() : on;
            return Outcome.sound(ShopPlan.of(all, catalogue, PurchaseDesk.now(reading, all, day)));
        }));
    }

    /** Says what is short. */
    @Command(
            name = "short",
            description = "Say what all owed orders together lack, by the day on which it is needed, for whom, and by when it"
                    + " must be ordered, made or coated.")
    static final class Short extends FrozenCommand {

        @Option(names = "--on", paramLabel = "DATE", converter = Day.class, description = "Plan from that day on; without it today.")
        private @Nullable LocalDate on;

        @Parameters(arity = "0..*", paramLabel = "ORDER|PART", description = "Only what these orders lack, or of these parts.")
        private List<String> only = new ArrayList<>();

        @Option(names = "--late", description = "Only what should have been ordered or begun by now.")
        private boolean late;

        @Override
        Outcome<Integer> answer(Screen screen, Place place) {
            HeadStart.forKits();
            return inStores(place, (book, catalogue) -> plan(this, book, catalogue, on)
                    .then(plan -> told(screen, plan)));
        }

        private Outcome<Integer> told(Screen screen, ShopPlan plan) {
            List<PlannedReceipt> receipts = plan.netting().planned().stream()
                    .filter(receipt -> !late || receipt.lateBy(plan.netting().now()) > 0)
                    .filter(receipt -> only.isEmpty() || only.stream().anyMatch(name -> isOf(plan, receipt, name)))
                    .sorted(Comparator.comparingInt(PlannedReceipt::due).thenComparing(PlannedReceipt::item))
                    .toList();
            Outcome<Integer> done = listed(
                    screen,
                    receipts,
                    receipt -> json(plan, receipt),
                    receipt -> says(plan, receipt),
                    "Nothing is short.");
            if (!json()) {
                plan.toHurry().forEach(item -> item.brought().forEach(brought -> screen.wrapped(0, sooner(item, brought))));
            }
            return done;
        }

        private static boolean isOf(ShopPlan plan, PlannedReceipt receipt, String name) {
            return receipt.item().part().text().equals(name)
                    || plan.netting().askedBy(receipt).outside().containsKey(name);
        }

        private static String sooner(ItemPlan item, ItemPlan.Brought brought) {
            return LocalDate.ofEpochDay(brought.wanted()) + ": " + plain(brought.quantity()) + " " + item.item() + " of "
                    + brought.receipt().name() + ", expected on " + LocalDate.ofEpochDay(brought.receipt().period())
                    + ": ask for them sooner";
        }

        /** '2026-06-12: 4 short of PX-12 (Bracket) for A 3, B 1; order by 2026-05-30'. */
        private static String says(ShopPlan plan, PlannedReceipt receipt) {
            int late = receipt.lateBy(plan.netting().now());
            return LocalDate.ofEpochDay(receipt.due()) + ": " + plain(receipt.quantity()) + " short of " + receipt.item()
                    + " (" + plan.catalogue().part(receipt.item().part()).name().english() + ") for "
                    + plan.forWhom(receipt) + "; " + plan.verb(receipt) + " by " + LocalDate.ofEpochDay(receipt.release())
                    + (late > 0 ? ", " + late + (late == 1 ? " day late" : " days late") : "");
        }

        private static JsonOut json(ShopPlan plan, PlannedReceipt receipt) {
            JsonOut.Members orders = JsonOut.object();
            plan.netting().askedBy(receipt).outside().forEach(orders::put);
            return JsonOut.object()
                    .put("part", receipt.item().part().text())
                    .put("finish", receipt.item().finish())
                    .put("quantity", receipt.quantity())
                    .put("net", receipt.net())
                    .put("needed", LocalDate.ofEpochDay(receipt.due()).toString())
                    .put("by", LocalDate.ofEpochDay(receipt.release()).toString())
                    .put("how", plan.verb(receipt))
                    .put("lateDays", receipt.lateBy(plan.netting().now()))
                    .put("for", orders);
        }
    }

    /** Goods in. */
    @Command(
            name = "receive",
            description = "Take goods in: some or all of a purchase order, or what was made here. A part that was not ordered is"
                    + " refused, and more than was ordered, unless that is said.")
    static final class Receive extends FrozenCommand {

        @Parameters(index = "0", arity = "0..1", paramLabel = "PART", description = "The part.")
        private String part = "";

        @Parameters(index = "1", arity = "0..1", paramLabel = "QUANTITY", converter = Amount.class, description = "How much, in the part's unit.")
        private BigDecimal quantity = BigDecimal.ZERO;

        @Option(
                names = "--table",
                paramLabel = "FILE",
                description = "All goods of a delivery at once: a CSV with the columns part, quantity, and any of finish, lot,"
                        + " serial, bin, purchase.")
        private @Nullable Path table;

        @Option(names = "--purchase", paramLabel = "NUMBER", description = "Purchase order that it comes with; without it, it was made here.")
        private String purchase = "";

        @Option(names = "--over", description = "Take more than was ordered; needs a reason.")
        private boolean over;

        @Mixin
        private HeldSaid held = new HeldSaid();

        @Override
        Outcome<Integer> answer(Screen screen, Place place) {
            return arrivals().then(arrivals -> reason().then(why -> by().then(by -> inStores(
                    place,
                    (book, catalogue) -> new StoresDesk(book, by, catalogue)
                            .receive(arrivals, why)
                            .then(written -> written(
                                    screen,
                                    written,
                                    all -> JsonOut.list(all, StockCommand::asJson),
                                    all -> all.forEach(each -> screen.wrapped(0, "In: " + each))))))));
        }

        private Outcome<List<Arrival>> arrivals() {
            return table != null
                    ? GoodsTable.read(table).then(goods -> Outcome.sound(goods.stream().map(this::arrival).toList()))
                    : part(part).then(number -> above(quantity).then(amount -> held.read()
                            .then(said -> Outcome.sound(List.of(new Arrival(
                                    number,
                                    said.finish(),
                                    amount,
                                    purchase,
                                    said.lot(),
                                    said.serials(),
                                    said.bin(),
                                    over))))));
        }

        private Arrival arrival(GoodsTable.Goods goods) {
            return new Arrival(
                    goods.part(),
                    goods.finish(),
                    goods.quantity(),
                    goods.purchase().isEmpty() ? purchase : goods.purchase(),
                    goods.lot(),
                    goods.serials(),
                    goods.bin(),
                    over);
        }
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

        @Parameters(index = "1", paramLabel = "QUANTITY", converter = Amount.class, description = "How much, in the part's unit.")
        private BigDecimal quantity = BigDecimal.ZERO;

        @Mixin
        private HeldSaid held = new HeldSaid();

        abstract Outcome<Integer> work(Screen screen, StoresDesk desk, Held what, BigDecimal amount, String why);

        @Override
        Outcome<Integer> answer(Screen screen, Place place) {
            return part(part).then(number -> held.read().then(said -> reason().then(why -> by().then(by -> inStores(
                    place,
                    (book, catalogue) -> work(
                            screen,
                            new StoresDesk(book, by, catalogue),
                            new Held(
                                    number,
                                    said.finish(),
                                    said.lot(),
                                    said.serials().isEmpty() ? "" : said.serials().get(0),
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
                            entry -> asJson(entry.held()).put("counted", entry.counted()).put("booked", entry.booked()),
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
            return Said.text("--to", to, TextShape.LINE).then(bin -> above(amount).then(some -> desk.move(what, some, bin)
                    .then(written -> written(
                            screen,
                            written,
                            entry -> asJson(entry.held()).put("quantity", entry.quantity()).put("to", entry.to()),
                            entry -> screen.wrapped(
                                    0, plain(entry.quantity()) + " " + entry.held() + " to " + entry.to())))));
        }
    }

    /** Scrapping. */
    @Command(name = "scrap", description = "Take something out of the stores for good, and say why.")
    static final class Scrap extends OnHeld {
        @Override
        Outcome<Integer> work(Screen screen, StoresDesk desk, Held what, BigDecimal amount, String why) {
            return above(amount).then(some -> desk.scrap(what, some, why)
                    .then(written -> written(
                            screen,
                            written,
                            entry -> asJson(entry.held()).put("quantity", entry.quantity()),
                            entry -> screen.wrapped(0, "Scrapped: " + plain(entry.quantity()) + " " + entry.held()))));
        }
    }

    /** Keeping for an order. */
    @Command(name = "keep", description = "Keep so much of a part for one order; 0 lets it go.")
    static final class Keep extends OnHeld {

        @Option(names = "--for", required = true, paramLabel = "ORDER", description = "The order.")
        private String order = "";

        @Override
        Outcome<Integer> work(Screen screen, StoresDesk desk, Held what, BigDecimal amount, String why) {
            return Said.text("--for", order, TextShape.ORDER_NAME).then(name -> desk.reserve(name, what, amount)
                    .then(written -> written(
                            screen,
                            written,
                            entry -> asJson(entry.held()).put("quantity", entry.quantity()).put("for", entry.order()),
                            entry -> screen.wrapped(
                                    0,
                                    plain(entry.quantity()) + " " + entry.held() + " kept for " + entry.order()))));
        }
    }
}
