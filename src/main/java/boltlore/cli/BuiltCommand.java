package boltlore.cli;

import boltlore.book.BuiltHappening.Fitted;
import boltlore.book.BuiltPart;
import boltlore.book.db.Place;
import boltlore.book.orders.AsBuiltRecord;
import boltlore.book.orders.BuiltDesk;
import boltlore.book.orders.OrderDesk;
import boltlore.book.orders.OrderJson;
import boltlore.faults.Outcome;
import boltlore.json.JsonOut;
import boltlore.json.TextShape;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Kits as they were built. */
@Command(
        name = "built",
        description =
                "Keep what really went into a kit: serial numbers, lots, heats, readings; 'built --help' lists how.",
        subcommands = {
            BuiltCommand.Show.class,
            BuiltCommand.Fit.class,
            BuiltCommand.TakeOut.class,
            BuiltCommand.Note.class,
            BuiltRead.class,
            BuiltCommand.Vehicle.class,
            BuiltCommand.Work.class
        })
final class BuiltCommand extends BookGroup {

    /** The record of one kit. */
    @Command(
            name = "show",
            description = "Show a kit as it was built, and in what that differs from what was designed.")
    static final class Show extends BookCommand {

        @Mixin
        private OrderCommand.Numbered order = new OrderCommand.Numbered();

        @Override
        Outcome<Integer> answer(Screen screen, Place place) {
            return order.read()
                    .then(name -> inBook(
                            place,
                            book -> book.read(reading -> OrderDesk.standing(reading, name)
                                    .then(standing -> {
                                        answer(
                                                screen,
                                                AsBuiltRecord.of(reading, standing),
                                                AsBuiltRecord::json,
                                                record -> BuiltShown.of(screen, reading, record));
                                        return Outcome.sound(Exit.OK);
                                    }))));
        }
    }

    static String line(BuiltPart part) {
        return "entry " + part.entry() + ": " + part.part() + " rev. " + part.revision() + ", " + part.says()
                + (part.out() > 0 ? ", taken out with entry " + part.out() : "");
    }

    /** Says what went in. */
    @Command(
            name = "fit",
            description =
                    "Say that parts went into a kit: one with its serial number, lot or heat, or a table of them.")
    static final class Fit extends BookCommand {

        @Mixin
        private OrderCommand.Numbered order = new OrderCommand.Numbered();

        @Option(names = "--part", paramLabel = "PART", description = "The part.")
        private @Nullable String part;

        @Option(names = "--revision", paramLabel = "REV", description = "Its revision; without it that of the kit.")
        private String revision = "";

        @Option(names = "--quantity", paramLabel = "N", description = "How much of it, 1 without it.")
        private BigDecimal quantity = BigDecimal.ONE;

        @Option(names = "--serial", paramLabel = "NUMBER", description = "Its serial number.")
        private String serial = "";

        @Option(names = "--lot", paramLabel = "LOT", description = "The lot that it came from.")
        private String lot = "";

        @Option(names = "--heat", paramLabel = "HEAT", description = "The heat of its metal.")
        private String heat = "";

        @Option(
                names = "--table",
                paramLabel = "FILE",
                description = "A CSV with the columns part, and any of revision, quantity, serial, lot, heat.")
        private @Nullable Path table;

        @Mixin
        private OrderCommand.Reason reason = new OrderCommand.Reason();

        @Override
        Outcome<Integer> answer(Screen screen, Place place) {
            return parts().then(parts -> onOrder(
                    place,
                    order,
                    reason,
                    at -> new BuiltDesk(at.book(), at.by())
                            .fit(at.order(), parts, at.reason())
                            .then(written -> written(
                                    screen,
                                    written,
                                    all -> JsonOut.list(all, OrderJson::built),
                                    all -> all.forEach(each -> screen.wrapped(0, line(each)))))));
        }

        private Outcome<List<Fitted>> parts() {
            return table != null
                    ? FittedTable.read(table)
                    : FittedTable.one(part == null ? "" : part, revision, quantity, serial, lot, heat)
                            .then(one -> Outcome.sound(List.of(one)));
        }
    }

    /** Says what came out. */
    @Command(name = "take-out", description = "Say that a part came out of a kit again; that it was in stays known.")
    static final class TakeOut extends BookCommand {

        @Mixin
        private OrderCommand.Numbered order = new OrderCommand.Numbered();

        @Parameters(index = "1", paramLabel = "ENTRY", description = "The entry with which it went in.")
        private long entry;

        @Mixin
        private OrderCommand.Reason reason = new OrderCommand.Reason();

        @Override
        Outcome<Integer> answer(Screen screen, Place place) {
            return onOrder(
                    place,
                    order,
                    reason,
                    at -> new BuiltDesk(at.book(), at.by())
                            .takeOut(at.order(), entry, at.reason())
                            .then(written ->
                                    written(screen, written, OrderJson::built, each -> screen.wrapped(0, line(each)))));
        }
    }

    /** Says what was read, conceded, signed. */
    @Command(
            name = "note",
            description =
                    "Write down a concession or a signature of a kit; a signature is that of --by, one of the staff. 'built read'"
                            + " writes a reading down.")
    static final class Note extends BookCommand {

        enum What {
            CONCESSION,
            SIGNATURE
        }

        @Mixin
        private OrderCommand.Numbered order = new OrderCommand.Numbered();

        @Parameters(index = "1", paramLabel = "WHAT", description = "concession or signature.")
        private What what = What.CONCESSION;

        @Parameters(index = "2", paramLabel = "OF", description = "Of what: a test, a part, a sheet.")
        private String of = "";

        @Parameters(index = "3", paramLabel = "TEXT", description = "What is allowed, or signed for.")
        private String says = "";

        @Mixin
        private OrderCommand.Reason reason = new OrderCommand.Reason();

        @Override
        Outcome<Integer> answer(Screen screen, Place place) {
            String kind = what.name().toLowerCase(Locale.ROOT);
            return Said.text("OF", of, TextShape.LINE)
                    .then(about -> Said.text("TEXT", says, TextShape.LINE)
                            .then(text -> onOrder(
                                    place,
                                    order,
                                    reason,
                                    at -> new BuiltDesk(at.book(), at.by())
                                            .note(at.order(), kind, about, text, at.reason())
                                            .then(written -> written(
                                                    screen,
                                                    written,
                                                    OrderJson::standing,
                                                    now -> screen.wrapped(0, OrderCommand.line(now)))))));
        }
    }

    /** Says which vehicle. */
    @Command(name = "vehicle", description = "Say by its chassis number which vehicle a kit goes into.")
    static final class Vehicle extends BookCommand {

        @Mixin
        private OrderCommand.Numbered order = new OrderCommand.Numbered();

        @Parameters(index = "1", paramLabel = "CHASSIS", description = "The chassis number.")
        private String chassis = "";

        @Override
        Outcome<Integer> answer(Screen screen, Place place) {
            return order.read()
                    .then(name -> Said.text("CHASSIS", chassis, TextShape.LINE)
                            .then(number -> by().then(by -> inBook(
                                    place,
                                    book -> new BuiltDesk(book, by)
                                            .vehicle(name, number)
                                            .then(written -> written(
                                                    screen,
                                                    written,
                                                    OrderJson::standing,
                                                    now -> screen.wrapped(
                                                            0, OrderCommand.line(now) + ", chassis " + number)))))));
        }
    }

    /** Says what was done. */
    @Command(name = "work", description = "Say that so much of a part is bought, cut, coated or picked for an order.")
    static final class Work extends BookCommand {

        enum Stage {
            BOUGHT,
            CUT,
            COATED,
            PICKED
        }

        @Mixin
        private OrderCommand.Numbered order = new OrderCommand.Numbered();

        @Parameters(index = "1", paramLabel = "PART", description = "The part.")
        private String part = "";

        @Parameters(index = "2", paramLabel = "STAGE", description = "bought, cut, coated or picked.")
        private Stage stage = Stage.BOUGHT;

        @Option(
                names = "--quantity",
                paramLabel = "N",
                description = "How much of it; below 0 that it is not after all.")
        private BigDecimal quantity = BigDecimal.ONE;

        @Option(names = "--finish", paramLabel = "FINISH", description = "In which finish; without it that of the kit.")
        private String finish = "";

        @Mixin
        private OrderCommand.Reason reason = new OrderCommand.Reason();

        @Override
        Outcome<Integer> answer(Screen screen, Place place) {
            String done = stage.name().toLowerCase(Locale.ROOT);
            return Said.text("PART", part, TextShape.PART_NUMBER)
                    .then(number -> FittedTable.amount("--quantity", quantity.abs())
                            .then(amount -> onOrder(
                                    place,
                                    order,
                                    reason,
                                    at -> new BuiltDesk(at.book(), at.by())
                                            .work(at.order(), number, finish, done, quantity, at.reason())
                                            .then(written -> written(
                                                    screen,
                                                    written,
                                                    OrderJson::standing,
                                                    now -> screen.wrapped(
                                                            0,
                                                            now.name() + ": " + quantity.toPlainString() + " " + number
                                                                    + " " + done))))));
        }
    }
}
