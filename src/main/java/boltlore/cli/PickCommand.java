package boltlore.cli;

import boltlore.book.By;
import boltlore.book.Held;
import boltlore.book.db.Book;
import boltlore.book.db.Place;
import boltlore.book.stores.PickDesk;
import boltlore.book.stores.PickLine;
import boltlore.book.stores.Taken;
import boltlore.catalogue.Catalogue;
import boltlore.faults.Outcome;
import boltlore.json.JsonOut;
import boltlore.json.TextShape;
import boltlore.trades.KitInWork;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Picking. */
@Command(
        name = "pick",
        description =
                "Pick orders from the stores: what is left in walking order, take, missing, back, complete, bags, count, pack;"
                        + " 'pick --help' lists how.",
        subcommands = {
            PickList.class,
            PickCommand.Take.class,
            PickCommand.Missing.class,
            PickCommand.Back.class,
            PackCommand.BackAll.class,
            PickCommand.Complete.class,
            PackCommand.Bags.class,
            PackCommand.CountBag.class,
            PackCommand.Pack.class
        })
final class PickCommand extends BookGroup {

    /** 'C-01-02-A-03: 4 each PX-12 in signal-red for BL-1001, 2 picked, short 2'. */
    static String says(PickLine line) {
        String bin = line.part().bin().isEmpty() ? "no bin" : line.part().bin();
        return bin + ": " + FrozenCommand.plain(line.left()) + " " + line.part().unit() + " " + line.key() + " ("
                + line.part().name().english() + ") for " + line.order()
                + (line.got().signum() > 0 ? ", " + FrozenCommand.plain(line.got()) + " picked" : "")
                + (line.missing().signum() > 0 ? ", short " + FrozenCommand.plain(line.missing()) : "")
                + (line.part().tracked() == null ? "" : ", write down the " + tracked(line));
    }

    private static String tracked(PickLine line) {
        return switch (Objects.requireNonNull(line.part().tracked())) {
            case SERIAL -> "serial number";
            case LOT -> "lot";
        };
    }

    static JsonOut.Members asJson(PickLine line) {
        return JsonOut.object()
                .put("order", line.order())
                .put("bin", line.part().bin())
                .put("part", line.part().number().text())
                .put("finish", line.finish())
                .put("unit", line.part().unit())
                .put("wanted", line.wanted())
                .put("got", line.got())
                .put("left", line.left())
                .put("missing", line.missing())
                .put("safety", line.safety())
                .putIfAny("tracked", line.part().tracked() == null ? null : tracked(line));
    }

    /** Commands on one line of one order. */
    abstract static class OnLine extends FrozenCommand {

        @Parameters(index = "0", paramLabel = "ORDER", description = "Number of the order.")
        private String order = "";

        /** What a command on one order works with. */
        record At(Book book, By by, Catalogue catalogue, KitInWork kit, String why) {

            PickDesk desk() {
                return new PickDesk(book, by);
            }
        }

        abstract Outcome<Integer> work(Screen screen, At at);

        @Override
        Outcome<Integer> answer(Screen screen, Place place) {
            HeadStart.forKits();
            return Said.text("ORDER", order, TextShape.ORDER_NAME)
                    .then(name -> reason().then(why -> by().then(by -> inStores(
                            place,
                            (book, catalogue) -> kit(book, catalogue, name)
                                    .then(kit -> work(screen, new At(book, by, catalogue, kit, why)))))));
        }
    }

    /** Taking. */
    @Command(
            name = "take",
            description =
                    "Take a part for an order: all that is left, or so much. Another part only in its place where the"
                            + " catalogue names it, or under a concession.")
    static final class Take extends OnLine {

        @Parameters(index = "1", arity = "0..1", paramLabel = "PART", description = "The part that is taken.")
        private String part = "";

        @Option(
                names = "--table",
                paramLabel = "FILE",
                description =
                        "All that was taken at once: a CSV with the columns part, quantity, and any of finish, lot, serial,"
                                + " bin, instead, concession.")
        private @Nullable Path table;

        @Parameters(
                index = "2",
                arity = "0..1",
                paramLabel = "QUANTITY",
                converter = FrozenCommand.Amount.class,
                description = "How much; all that is left without it.")
        private @Nullable BigDecimal quantity;

        @Mixin
        private HeldSaid held = new HeldSaid();

        @Option(names = "--instead-of", paramLabel = "PART", description = "The part in whose place it is taken.")
        private String instead = "";

        @Option(
                names = "--concession",
                paramLabel = "TEXT",
                description = "Concession under which it may be, with its number.")
        private String concession = "";

        @Override
        Outcome<Integer> work(Screen screen, At at) {
            return taken().then(taken -> at.desk()
                    .take(at.kit(), taken, at.why())
                    .then(written -> written(
                            screen,
                            written,
                            all -> JsonOut.list(all, PickCommand::asJson),
                            all -> all.forEach(line -> screen.wrapped(0, says(line))))));
        }

        private Outcome<List<Taken>> taken() {
            return table != null
                    ? GoodsTable.read(table)
                            .then(goods -> Outcome.sound(
                                    goods.stream().map(Take::taken).toList()))
                    : part(part)
                            .then(name -> held.read()
                                    .then(said -> Said.sentence("--concession", concession)
                                            .then(words -> Outcome.sound(List.of(new Taken(
                                                    name,
                                                    said.finish(),
                                                    quantity,
                                                    said.lot(),
                                                    said.serials(),
                                                    said.bin(),
                                                    instead,
                                                    words))))));
        }

        private static Taken taken(GoodsTable.Goods goods) {
            return new Taken(
                    goods.part(),
                    goods.finish(),
                    goods.quantity(),
                    goods.lot(),
                    goods.serials(),
                    goods.bin(),
                    goods.instead(),
                    goods.concession());
        }
    }

    /** Too little in the bin. */
    @Command(name = "missing", description = "Say that the bin holds too little for an order; picking goes on.")
    static final class Missing extends OnLine {

        @Parameters(index = "1", paramLabel = "PART", description = "The part.")
        private String part = "";

        @Option(names = "--finish", paramLabel = "FINISH", description = "In that finish.")
        private String finish = "";

        @Override
        Outcome<Integer> work(Screen screen, At at) {
            return part(part)
                    .then(name -> at.desk()
                            .missing(at.kit(), name, finish, at.why())
                            .then(written -> written(
                                    screen, written, PickCommand::asJson, line -> screen.wrapped(0, says(line)))));
        }
    }

    /** Back into the stores. */
    @Command(name = "back", description = "Give something back that an order has got, and say why.")
    static final class Back extends OnLine {

        @Parameters(index = "1", paramLabel = "PART", description = "The part that comes back.")
        private String part = "";

        @Parameters(
                index = "2",
                paramLabel = "QUANTITY",
                converter = FrozenCommand.Amount.class,
                description = "How much.")
        private BigDecimal quantity = BigDecimal.ZERO;

        @Mixin
        private HeldSaid held = new HeldSaid();

        @Override
        Outcome<Integer> work(Screen screen, At at) {
            return part(part)
                    .then(name -> StockCommand.above(quantity)
                            .then(some -> held.read()
                                    .then(said -> at.desk()
                                            .back(
                                                    at.kit(),
                                                    new Held(
                                                            name,
                                                            said.finish(),
                                                            said.lot(),
                                                            said.serials().isEmpty()
                                                                    ? ""
                                                                    : said.serials()
                                                                            .get(0),
                                                            said.bin()),
                                                    some,
                                                    at.why())
                                            .then(written -> written(
                                                    screen,
                                                    written,
                                                    PickCommand::asJson,
                                                    line -> screen.wrapped(0, says(line)))))));
        }
    }

    /** All picked. */
    @Command(
            name = "complete",
            description =
                    "Call the picking of an order complete. Refused while a part is open on which safety hangs, and without"
                            + " a reason while any is.")
    static final class Complete extends OnLine {
        @Override
        Outcome<Integer> work(Screen screen, At at) {
            return at.desk()
                    .complete(at.kit(), at.why())
                    .then(written -> written(
                            screen,
                            written,
                            open -> JsonOut.object()
                                    .put("order", at.kit().order().name())
                                    .put("open", JsonOut.list(open, PickCommand::asJson)),
                            open -> screen.wrapped(
                                    0,
                                    at.kit().order().name() + ": picking complete"
                                            + (open.isEmpty() ? "" : ", " + open.size() + " still to come"))));
        }
    }
}
