package boltlore.cli;

import boltlore.book.ShopHappening.Kept;
import boltlore.book.ShopHappening.Used;
import boltlore.book.db.Place;
import boltlore.book.db.Shop.Rest;
import boltlore.book.db.Written;
import boltlore.book.stores.RackDesk;
import boltlore.faults.Outcome;
import boltlore.findings.Findings;
import boltlore.json.JsonOut;
import boltlore.json.TextShape;
import boltlore.trades.KitInWork;
import boltlore.trades.cutting.CuttingTrade;
import boltlore.trades.cutting.CuttingTrade.CutTogether;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** The rack of remnants. */
@Command(
        name = "rack",
        description = "The rack of remnants, with their heats: list, add, heat, scrap, cut; 'rack --help' lists how.",
        subcommands = {
            RackCommand.Listed.class,
            RackCommand.Add.class,
            RackCommand.Heat.class,
            RackCommand.Scrap.class,
            RackCommand.Cut.class
        })
final class RackCommand extends BookGroup {

    /** What lies there. */
    @Command(name = "list", description = "List the remnants on the rack, by material.")
    static final class Listed extends FrozenCommand {

        @Mixin
        private Listing listing = new Listing();

        @Option(names = "--all", description = "Those that were used up too.")
        private boolean all;

        @Option(names = "--material", paramLabel = "NAME", description = "Only of that material.")
        private String material = "";

        @Override
        Outcome<Integer> answer(Screen screen, Place place) {
            return inBook(
                    place,
                    book -> book.read(reading -> listed(
                            screen,
                            listing,
                            reading.shop().rests(all).stream()
                                    .filter(rest -> material.isEmpty()
                                            || rest.material().equals(material))
                                    .toList(),
                            rest -> JsonOut.object()
                                    .put("remnant", rest.remnant())
                                    .put("material", rest.material())
                                    .put("lengthMm", rest.lengthMm())
                                    .put("heat", rest.heat())
                                    .put("leftBy", rest.leftBy())
                                    .put("usedBy", rest.usedBy()),
                            Listed::says,
                            "Nothing lies on the rack.")));
        }

        private static String says(Rest rest) {
            return rest.remnant() + ": " + rest.material() + ", " + plain(rest.lengthMm()) + " mm"
                    + (rest.heat().isEmpty() ? ", heat not known" : ", heat " + rest.heat())
                    + (rest.leftBy().isEmpty() ? "" : ", left by " + rest.leftBy())
                    + (rest.usedBy().isEmpty() ? "" : ", used by " + rest.usedBy());
        }
    }

    private static JsonOut asJson(Kept kept) {
        return JsonOut.object()
                .put("remnant", kept.remnant())
                .put("material", kept.material())
                .put("lengthMm", kept.lengthMm())
                .put("heat", kept.heat());
    }

    private static String says(Kept kept) {
        return kept.remnant() + ": " + kept.material() + ", " + FrozenCommand.plain(kept.lengthMm()) + " mm"
                + (kept.heat().isEmpty() ? ", heat not known" : ", heat " + kept.heat());
    }

    /** One more. */
    @Command(name = "add", description = "Lay a remnant on the rack.")
    static final class Add extends FrozenCommand {

        @Parameters(index = "0", paramLabel = "MARK", description = "As it is written on it.")
        private String mark = "";

        @Parameters(index = "1", paramLabel = "MATERIAL", description = "Its material.")
        private String material = "";

        @Parameters(
                index = "2",
                paramLabel = "MM",
                converter = FrozenCommand.Amount.class,
                description = "Its length in mm.")
        private BigDecimal lengthMm = BigDecimal.ZERO;

        @Option(names = "--heat", paramLabel = "HEAT", description = "Heat or lot of its bar.")
        private String heat = "";

        @Override
        Outcome<Integer> answer(Screen screen, Place place) {
            Outcome<String> known = heat.isEmpty() ? Outcome.sound("") : Said.text("--heat", heat, TextShape.LINE);
            return Said.text("MARK", mark, TextShape.ORDER_NAME)
                    .then(name -> Said.text("MATERIAL", material, TextShape.NAME)
                            .then(of -> StockCommand.above(lengthMm)
                                    .then(long_ -> known.then(from -> reason().then(why -> by().then(by -> inStores(
                                            place,
                                            (book, catalogue) -> new RackDesk(book, by)
                                                    .add(new Kept(name, of, long_, from, ""), catalogue, why)
                                                    .then(written -> kept(this, screen, written)))))))));
        }
    }

    private static Outcome<Integer> kept(BookCommand command, Screen screen, Written<Kept> written) {
        return command.written(screen, written, RackCommand::asJson, one -> screen.wrapped(0, says(one)));
    }

    /** A heat that is known now. */
    @Command(name = "heat", description = "Write down the heat of a remnant.")
    static final class Heat extends FrozenCommand {

        @Parameters(index = "0", paramLabel = "MARK", description = "As it is written on it.")
        private String mark = "";

        @Parameters(index = "1", paramLabel = "HEAT", description = "Heat or lot of its bar.")
        private String heat = "";

        @Override
        Outcome<Integer> answer(Screen screen, Place place) {
            return Said.text("HEAT", heat, TextShape.LINE)
                    .then(known -> reason().then(why -> by().then(by -> inBook(
                            place,
                            book -> new RackDesk(book, by)
                                    .heat(mark, known, why)
                                    .then(written -> kept(this, screen, written))))));
        }
    }

    /** One less. */
    @Command(name = "scrap", description = "Take a remnant off the rack for good, and say why.")
    static final class Scrap extends FrozenCommand {

        @Parameters(paramLabel = "MARK", description = "As it is written on it.")
        private String mark = "";

        @Override
        Outcome<Integer> answer(Screen screen, Place place) {
            return reason().then(why -> by().then(by -> inBook(
                    place,
                    book -> new RackDesk(book, by)
                            .scrap(mark, why)
                            .then(written -> written(
                                    screen,
                                    written,
                                    (Used used) -> JsonOut.object().put("remnant", used.remnant()),
                                    used -> screen.wrapped(0, used.remnant() + " is off the rack."))))));
        }
    }

    /** Cutting. */
    @Command(
            name = "cut",
            description =
                    "Plan the cutting of some orders with the remnants on the rack first, and write the cutting list; with"
                            + " --done say that it was cut so: remnants that were used are gone, new ones lie there with their heat.")
    static final class Cut extends FrozenCommand {

        @Parameters(arity = "1..*", paramLabel = "ORDER", description = "Numbers of the orders.")
        private List<String> orders = new ArrayList<>();

        @Option(names = "--done", description = "It was cut as planned.")
        private boolean done;

        @Option(
                names = "--heat",
                paramLabel = "MATERIAL=HEAT",
                description = "Heat of the new bars of a material; the option again for another.")
        private Map<String, String> heats = new HashMap<>();

        @Option(
                names = "--out",
                paramLabel = "FOLDER",
                description = "Where the list is written; without it ${DEFAULT-VALUE}.")
        private Path out = Path.of("exports", "cut");

        @Override
        Outcome<Integer> answer(Screen screen, Place place) {
            HeadStart.forSheets();
            return orders(orders)
                    .then(names -> reason().then(why -> by().then(by -> inStores(
                            place,
                            (book, catalogue) -> frozen(
                                            book,
                                            catalogue,
                                            (reading, kits) -> kits.of(names)
                                                    .then(found -> CuttingTrade.cut(
                                                                    found.stream()
                                                                            .map(KitInWork::bill)
                                                                            .toList(),
                                                                    RackDesk.rack(reading),
                                                                    catalogue,
                                                                    Findings.NONE)
                                                            .then(cut -> Outcome.sound(new Planned(found, cut)))))
                                    .then(planned -> done
                                            ? cut(screen, new RackDesk(book, by), planned, why)
                                            : list(screen, planned.cut()))))));
        }

        private Outcome<Integer> list(Screen screen, CutTogether cut) {
            return PurchaseCommand.sheets(
                    this,
                    screen,
                    out,
                    "cut",
                    cut.findings(),
                    List.of(cut.sheet().report().get()));
        }

        private Outcome<Integer> cut(Screen screen, RackDesk rack, Planned planned, String why) {
            return rack.cut(planned.kits(), planned.cut(), heats, why)
                    .then(written -> written(screen, written, all -> JsonOut.list(all, RackCommand::asJson), all -> {
                        screen.wrapped(0, all.size() + " new remnants on the rack.");
                        all.forEach(one -> screen.wrapped(0, says(one)));
                    }));
        }

        private record Planned(List<KitInWork> kits, CutTogether cut) {}
    }
}
