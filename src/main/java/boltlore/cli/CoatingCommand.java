package boltlore.cli;

import boltlore.book.ShopHappening.Coat;
import boltlore.book.db.Place;
import boltlore.book.db.Shop.Piece;
import boltlore.book.orders.KitStops;
import boltlore.book.stores.CoatDesk;
import boltlore.faults.Fault;
import boltlore.faults.Outcome;
import boltlore.json.JsonOut;
import boltlore.json.TextShape;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.SortedMap;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Pieces on their way through the coating shop. */
@Command(
        name = "coating",
        description =
                "Follow pieces through the coating shop: queue, list, mask, hang, coated, out, back, accept, reject, again, scrap, withdraw;"
                        + " 'coating --help' lists how.",
        subcommands = {
            CoatingCommand.Queue.class,
            CoatingCommand.Listed.class,
            CoatingCommand.Mask.class,
            CoatingCommand.Hang.class,
            CoatingCommand.Coated.class,
            CoatingCommand.OutOfHouse.class,
            CoatingCommand.BackIn.class,
            CoatingCommand.Accept.class,
            CoatingCommand.Reject.class,
            CoatingCommand.Again.class,
            CoatingCommand.Scrap.class,
            CoatingCommand.Withdraw.class
        })
final class CoatingCommand extends BookGroup {

    /** Takes orders up. */
    @Command(
            name = "queue",
            description = "Put all pieces of some orders that are to be coated into the queue; those in it stay.")
    static final class Queue extends FrozenCommand {

        @Parameters(arity = "1..*", paramLabel = "ORDER", description = "Numbers of the orders.")
        private List<String> orders = new ArrayList<>();

        @Override
        Outcome<Integer> answer(Screen screen, Place place) {
            HeadStart.forKits();
            return orders(orders)
                    .then(names -> by().then(by -> inStores(
                            place,
                            (book, catalogue) -> frozen(book, catalogue, (reading, kits) -> kits.of(names))
                                    .then(kits -> new CoatDesk(book, by, catalogue).queue(kits))
                                    .then(written -> written(
                                            screen,
                                            written,
                                            all -> JsonOut.list(all, CoatingCommand::asJson),
                                            all -> screen.wrapped(0, all.size() + " pieces are waiting now."))))));
        }
    }

    /** Where they stand. */
    @Command(
            name = "list",
            description =
                    "List pieces in the coating shop, by finish, those of the orders that are due first before the others, with how"
                            + " many stand where.")
    static final class Listed extends FrozenCommand {

        @Mixin
        private Listing listing = new Listing();

        @Option(
                names = "--state",
                paramLabel = "STATE",
                split = ",",
                description =
                        "Only these: waiting, masked, hung, coated, out, back, accepted, rejected, scrapped, withdrawn; without"
                                + " it all that something is still to be done with.")
        private List<String> states = new ArrayList<>();

        @Option(names = "--order", paramLabel = "ORDER", description = "Only pieces of that order.")
        private String order = "";

        @Option(names = "--finish", paramLabel = "FINISH", description = "Only pieces in that finish.")
        private String finish = "";

        @Option(names = "--load", paramLabel = "LOAD", description = "Only pieces in that load, or at that coater.")
        private String load = "";

        @Override
        Outcome<Integer> answer(Screen screen, Place place) {
            return states().then(asked -> inBook(
                    place,
                    book -> book.read(reading -> {
                        List<Piece> pieces = reading.shop().pieces(asked, order).stream()
                                .filter(piece ->
                                        finish.isEmpty() || piece.finish().equals(finish))
                                .filter(piece -> load.isEmpty() || piece.load().equals(load))
                                .toList();
                        SortedMap<String, List<String>> stops =
                                KitStops.of(reading, pieces.stream().map(Piece::order));
                        if (!json()) {
                            PickList.stopped(screen, stops);
                        }
                        Outcome<Integer> done = listed(
                                screen,
                                listing,
                                pieces,
                                piece -> asJson(piece).putIfAny("stops", stops.getOrDefault(piece.order(), List.of())),
                                CoatingCommand::says,
                                "No piece is there.");
                        if (!json()) {
                            counted(screen, pieces);
                        }
                        return done;
                    })));
        }

        private static void counted(Screen screen, List<Piece> pieces) {
            CoatDesk.counts(pieces)
                    .forEach((name, counts) -> screen.wrapped(
                            0,
                            name + ": "
                                    + counts.entrySet().stream()
                                            .map(each -> each.getValue() + " "
                                                    + each.getKey().written())
                                            .collect(Collectors.joining(", "))));
        }

        private Outcome<List<Coat>> states() {
            if (states.isEmpty()) {
                return Outcome.sound(Arrays.stream(Coat.values())
                        .filter(state -> !state.done())
                        .toList());
            }
            return Outcome.all(states.stream().map(Listed::state).toList());
        }

        private static Outcome<Coat> state(String typed) {
            String all = Arrays.stream(Coat.values()).map(Coat::written).collect(Collectors.joining(", "));
            return Arrays.stream(Coat.values())
                    .filter(state -> state.written().equals(typed.toLowerCase(Locale.ROOT)))
                    .findFirst()
                    .map(Outcome::sound)
                    .orElseGet(() -> Outcome.faulty(Fault.of("--state", "'" + typed + "'", all, "")));
        }
    }

    private static JsonOut.Members asJson(Piece piece) {
        return JsonOut.object()
                .put("piece", piece.piece())
                .put("order", piece.order())
                .put("part", piece.part())
                .put("finish", piece.finish())
                .put("state", piece.state().written())
                .put("load", piece.load())
                .put("again", piece.again());
    }

    /** 'BL-1001/PX-12/3 in signal-red: hung in 7, coated again once'. */
    private static String says(Piece piece) {
        String again =
                piece.again() == 0 ? "" : ", coated again " + (piece.again() == 1 ? "once" : piece.again() + " times");
        return piece.piece() + " in " + piece.finish() + ": " + piece.state().written()
                + (piece.load().isEmpty() ? "" : ", " + piece.load()) + again;
    }

    /** Steps of pieces. */
    abstract static class Step extends FrozenCommand {

        private final Coat to;

        @Parameters(
                arity = "1..*",
                paramLabel = "PIECE",
                description =
                        "A piece as BL-1001/PX-12/3, all of a part of an order as BL-1001/PX-12, or all of an order.")
        private List<String> pieces = new ArrayList<>();

        @Option(names = "--load", paramLabel = "LOAD", description = "The oven load, or the coater that they go to.")
        private String load = "";

        @Option(names = "--finish", paramLabel = "FINISH", description = "Only pieces in that finish.")
        private String finish = "";

        Step(Coat to) {
            this.to = to;
        }

        @Override
        Outcome<Integer> answer(Screen screen, Place place) {
            Outcome<String> where = load.isEmpty() ? Outcome.sound("") : Said.text("--load", load, TextShape.LINE);
            return where.then(in -> reason().then(why -> by().then(by -> inStores(
                    place,
                    (book, catalogue) -> new CoatDesk(book, by, catalogue)
                            .move(pieces, finish, to, in, why)
                            .then(written -> written(
                                    screen,
                                    written,
                                    all -> JsonOut.list(all, CoatingCommand::asJson),
                                    all -> all.forEach(piece -> screen.wrapped(0, says(piece)))))))));
        }
    }

    @Command(name = "mask", description = "Say that pieces are masked.")
    static final class Mask extends Step {
        Mask() {
            super(Coat.MASKED);
        }
    }

    @Command(
            name = "hang",
            description =
                    "Say that pieces hang in a load, all of one powder. Each lies bare in the stores, or a reason says where it"
                            + " is from.")
    static final class Hang extends Step {
        Hang() {
            super(Coat.HUNG);
        }
    }

    @Command(name = "coated", description = "Say that pieces have come out of the oven.")
    static final class Coated extends Step {
        Coated() {
            super(Coat.COATED);
        }
    }

    @Command(name = "out", description = "Say that pieces of one finish are at an outside coater.")
    static final class OutOfHouse extends Step {
        OutOfHouse() {
            super(Coat.OUT);
        }
    }

    @Command(name = "back", description = "Say that pieces are back from the coater.")
    static final class BackIn extends Step {
        BackIn() {
            super(Coat.BACK);
        }
    }

    @Command(name = "accept", description = "Accept pieces: they lie in the stores in their finish from then on.")
    static final class Accept extends Step {
        Accept() {
            super(Coat.ACCEPTED);
        }
    }

    @Command(name = "reject", description = "Reject pieces, and say what is wrong with them.")
    static final class Reject extends Step {
        Reject() {
            super(Coat.REJECTED);
        }
    }

    @Command(name = "again", description = "Put pieces, rejected ones above all, back into the queue.")
    static final class Again extends Step {
        Again() {
            super(Coat.WAITING);
        }
    }

    @Command(name = "withdraw", description = "Take pieces out of the queue that do not hang yet, and say why.")
    static final class Withdraw extends Step {
        Withdraw() {
            super(Coat.WITHDRAWN);
        }
    }

    @Command(name = "scrap", description = "Give rejected pieces up, and say why.")
    static final class Scrap extends Step {
        Scrap() {
            super(Coat.SCRAPPED);
        }
    }
}
