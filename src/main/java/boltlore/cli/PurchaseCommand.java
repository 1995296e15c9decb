package boltlore.cli;

import boltlore.book.PurchaseStanding;
import boltlore.book.PurchaseStanding.LineStanding;
import boltlore.book.db.Place;
import boltlore.book.stores.PurchaseDesk;
import boltlore.faults.Outcome;
import boltlore.findings.Findings;
import boltlore.json.JsonOut;
import boltlore.json.TextShape;
import boltlore.report.Report;
import boltlore.trades.FoundBy;
import boltlore.trades.buying.PurchaseOrderSheet;
import boltlore.trades.buying.PurchaseOrderSheet.OrderLine;
import boltlore.trades.orders.SheetFormats;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Purchase orders. */
@Command(
        name = "purchase",
        description =
                "Buy what owed orders lack: plan, place, list, print, promised, close; 'purchase --help' lists how.",
        subcommands = {
            PurchasePlanned.class,
            PurchaseCommand.Placed.class,
            PurchaseCommand.Listed.class,
            PurchaseCommand.Print.class,
            PurchaseCommand.Promised.class,
            PurchaseCommand.Close.class
        })
final class PurchaseCommand extends BookGroup {

    /** Writes reports and tells what was found. */
    static Outcome<Integer> sheets(
            RoomCommand command, Screen screen, Path out, String by, Findings findings, List<Report> reports) {
        Outcome<List<Path>> written = command.write(out, SheetFormats.write(reports));
        if (!(written instanceof Outcome.Sound<List<Path>> paths)) {
            screen.flush();
            return Outcome.sound(command.refused(written.faults(), Exit.NOT_WRITTEN));
        }
        List<TradeAnswer.OfOrder> answers =
                List.of(new TradeAnswer.OfOrder(List.of(), new FoundBy(by, findings), reports));
        if (command.json()) {
            screen.line(TradeAnswer.json(answers, paths.value()));
        } else {
            TradeAnswer.print(screen, answers, out);
        }
        return Outcome.sound(findings.stops() ? Exit.STOPPED : Exit.OK);
    }

    /** Places purchase orders. */
    @Command(
            name = "place",
            description =
                    "Place a purchase order with each supplier, or with these, of all that must be ordered by a day.")
    static final class Placed extends FrozenCommand {

        private static final int DAYS_AHEAD = 7;

        @Parameters(arity = "0..*", paramLabel = "SUPPLIER", description = "Only these suppliers.")
        private List<String> suppliers = new ArrayList<>();

        @Option(
                names = "--until",
                paramLabel = "DATE",
                converter = Day.class,
                description = "What must be ordered by that day; without it within a week.")
        private @Nullable LocalDate until;

        @Override
        Outcome<Integer> answer(Screen screen, Place place) {
            HeadStart.forKits();
            return reason().then(why -> by().then(by -> inStores(place, (book, catalogue) -> {
                int known = book.read(reading -> reading.stock().purchaseCount());
                LocalDate last = until == null ? today().plusDays(DAYS_AHEAD) : until;
                return StockShort.plan(this, book, catalogue, null, (reading, plan) -> plan)
                        .then(plan -> new PurchaseDesk(book, by).place(plan, known, suppliers, last, why))
                        .then(written ->
                                written(screen, written, all -> JsonOut.list(all, PurchaseCommand::asJson), all -> {
                                    all.forEach(each -> screen.wrapped(0, line(each)));
                                    if (all.isEmpty()) {
                                        screen.wrapped(0, "Nothing must be ordered by " + last + ".");
                                    }
                                }));
            })));
        }
    }

    private static JsonOut asJson(PurchaseStanding order) {
        return JsonOut.object()
                .put("purchase", order.purchase())
                .put("supplier", order.supplier())
                .put("currency", order.currency())
                .put("on", order.on().toString())
                .put("open", order.open())
                .put(
                        "lines",
                        JsonOut.list(
                                order.lines(),
                                line -> JsonOut.object()
                                        .put("part", line.part())
                                        .put("orderCode", line.orderCode())
                                        .put("quantity", line.quantity())
                                        .put("unit", line.unit())
                                        .put("unitCost", line.unitCost())
                                        .put("due", line.due().toString())
                                        .put("received", line.received())));
    }

    /** 'PO-1001 to Brennock Fixings of 2026-11-30: 12 lines, 3 of them still to come; first due 2026-12-07'. */
    private static String line(PurchaseStanding order) {
        List<LineStanding> left =
                order.lines().stream().filter(line -> line.left().signum() > 0).toList();
        String due = left.stream()
                .map(LineStanding::due)
                .min(LocalDate::compareTo)
                .map(day -> "; first due " + day)
                .orElse("");
        return order.purchase() + " to " + order.supplier() + " of " + order.on() + ": "
                + order.lines().size()
                + (order.lines().size() == 1 ? " line, " : " lines, ")
                + (order.open() ? left.size() + " still to come" + due : "closed");
    }

    /** Lists purchase orders. */
    @Command(
            name = "list",
            description =
                    "List purchase orders of which something is still to come, with what; overdue lines are marked.")
    static final class Listed extends FrozenCommand {

        @Mixin
        private Listing listing = new Listing();

        @Option(names = "--all", description = "Closed ones too.")
        private boolean all;

        @Option(names = "--late", description = "Only those with a line that is overdue.")
        private boolean late;

        @Override
        Outcome<Integer> answer(Screen screen, Place place) {
            return inBook(
                    place,
                    book -> book.read(reading -> listed(
                            screen,
                            listing,
                            reading.stock().purchases(all).stream()
                                    .filter(order ->
                                            !late || order.lines().stream().anyMatch(this::overdue))
                                    .toList(),
                            PurchaseCommand::asJson,
                            this::says,
                            "Nothing is on order.")));
        }

        private boolean overdue(LineStanding line) {
            return line.left().signum() > 0 && line.due().isBefore(today());
        }

        private String says(PurchaseStanding order) {
            return line(order)
                    + order.lines().stream()
                            .filter(each -> each.left().signum() > 0)
                            .map(each -> "\n  " + plain(each.left()) + " of " + plain(each.quantity()) + " "
                                    + each.unit() + " " + each.part() + ", due " + each.due()
                                    + (overdue(each) ? ", overdue" : ""))
                            .collect(Collectors.joining());
        }
    }

    /** Prints one. */
    @Command(
            name = "print",
            description = "Write a purchase order as it goes to the supplier, and a goods-in list for the stores.")
    static final class Print extends FrozenCommand {

        @Parameters(paramLabel = "NUMBER", description = "The purchase order.")
        private String number = "";

        @Option(
                names = "--language",
                paramLabel = "CODE",
                description = "Language of the supplier, en, de or fr; without it en.")
        private String language = "en";

        @Option(
                names = "--out",
                paramLabel = "FOLDER",
                description = "Where it is written; without it exports/purchase/NUMBER.")
        private @Nullable Path out;

        @Override
        Outcome<Integer> answer(Screen screen, Place place) {
            HeadStart.forSheets();
            return Said.text("NUMBER", number, TextShape.ORDER_NAME)
                    .then(name -> Said.text("--language", language, TextShape.LANGUAGE)
                            .then(words -> inStores(
                                    place,
                                    (book, catalogue) -> book.read(reading -> PurchaseDesk.any(reading, name))
                                            .then(order -> sheets(
                                                    this,
                                                    screen,
                                                    out == null ? Path.of("exports", "purchase", name) : out,
                                                    "purchase",
                                                    Findings.NONE,
                                                    List.of(PurchaseOrderSheet.compose(
                                                            catalogue,
                                                            words,
                                                            new PurchaseOrderSheet.Order(
                                                                    order.purchase(),
                                                                    order.supplier(),
                                                                    order.currency(),
                                                                    order.on(),
                                                                    order.lines().stream()
                                                                            .map(line -> new OrderLine(
                                                                                    line.part(),
                                                                                    line.orderCode(),
                                                                                    line.quantity(),
                                                                                    line.unit(),
                                                                                    line.unitCost(),
                                                                                    line.due()))
                                                                            .toList()))))))));
        }
    }

    /** A day that the supplier has named. */
    @Command(name = "promised", description = "Note the day on which the supplier says that a part will come.")
    static final class Promised extends FrozenCommand {

        @Parameters(index = "0", paramLabel = "NUMBER", description = "The purchase order.")
        private String number = "";

        @Parameters(index = "1", paramLabel = "PART", description = "The part.")
        private String part = "";

        @Parameters(index = "2", paramLabel = "DATE", converter = Day.class, description = "The day.")
        private LocalDate due = LocalDate.EPOCH;

        @Override
        Outcome<Integer> answer(Screen screen, Place place) {
            return part(part)
                    .then(name -> reason().then(why -> by().then(by -> inBook(
                            place,
                            book -> new PurchaseDesk(book, by)
                                    .promise(number, name, due, why)
                                    .then(written -> written(
                                            screen,
                                            written,
                                            PurchaseCommand::asJson,
                                            order -> screen.wrapped(0, line(order))))))));
        }
    }

    /** Closing. */
    @Command(name = "close", description = "Say that what has not come of a purchase order will not come.")
    static final class Close extends FrozenCommand {

        @Parameters(paramLabel = "NUMBER", description = "The purchase order.")
        private String number = "";

        @Override
        Outcome<Integer> answer(Screen screen, Place place) {
            return reason().then(why -> by().then(by -> inBook(
                    place,
                    book -> new PurchaseDesk(book, by)
                            .close(number, why)
                            .then(written -> written(
                                    screen,
                                    written,
                                    PurchaseCommand::asJson,
                                    order -> screen.wrapped(0, line(order)))))));
        }
    }
}
