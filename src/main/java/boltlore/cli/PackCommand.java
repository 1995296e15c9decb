package boltlore.cli;

import boltlore.book.Held;
import boltlore.book.PackHappening.Packed;
import boltlore.book.db.Place;
import boltlore.book.stores.PackDesk;
import boltlore.book.stores.PackDesk.Count;
import boltlore.book.stores.PackDesk.InBag;
import boltlore.book.stores.PickDesk;
import boltlore.faults.Fault;
import boltlore.faults.Outcome;
import boltlore.json.JsonOut;
import boltlore.json.TextShape;
import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** What follows picking: the second count bag by bag, the crates; and all of a kit back into the stores. */
final class PackCommand {

    private PackCommand() {}

    /** Which bags. */
    @Command(
            name = "bags",
            description = "List what lies in each bag of a kit, spares included, and what was counted there.")
    static final class Bags extends FrozenCommand {

        @Mixin
        private Listing listing = new Listing();

        @Parameters(paramLabel = "ORDER", description = "Number of the order.")
        private String order = "";

        @Option(names = "--bag", paramLabel = "BAG", description = "Only that bag.")
        private String bag = "";

        @Option(names = "--open", description = "Only what is not counted, or not right.")
        private boolean open;

        @Override
        Outcome<Integer> answer(Screen screen, Place place) {
            HeadStart.forKits();
            return Said.text("ORDER", order, TextShape.ORDER_NAME)
                    .then(name -> inStores(
                            place,
                            (book, catalogue) -> frozen(
                                    book,
                                    catalogue,
                                    (reading, kits) -> kits.of(List.of(name))
                                            .then(found -> listed(
                                                    screen,
                                                    listing,
                                                    PackDesk.bags(reading, found.get(0)).stream()
                                                            .filter(one -> bag.isEmpty()
                                                                    || one.bag().equals(bag))
                                                            .filter(one -> !open || !one.right())
                                                            .toList(),
                                                    PackCommand::asJson,
                                                    PackCommand::says,
                                                    open
                                                            ? "All bags are counted and right."
                                                            : "Nothing goes into a bag.")))));
        }
    }

    /** 'bag 3: 8 each FX-M8X20 in zinc, counted 7: NOT right'. */
    private static String says(InBag one) {
        BigDecimal counted = one.counted();
        return one.bag() + ": " + FrozenCommand.plain(one.wanted()) + " " + one.unit() + " "
                + Held.of(one.part(), "").finished(one.finish())
                + (counted == null
                        ? ", not counted"
                        : ", counted " + FrozenCommand.plain(counted) + (one.right() ? "" : ": NOT right"));
    }

    private static JsonOut asJson(InBag one) {
        return JsonOut.object()
                .put("bag", one.bag())
                .put("part", one.part())
                .put("finish", one.finish())
                .put("unit", one.unit())
                .put("wanted", one.wanted())
                .putIfAny("counted", one.counted())
                .put("right", one.right());
    }

    /** The second count. */
    @Command(
            name = "count",
            description =
                    "Write down what a second person has counted in a bag, or the scales; a kit with a wrong bag is not"
                            + " shipped before it is counted again.")
    static final class CountBag extends PickCommand.OnLine {

        @Parameters(index = "1", paramLabel = "BAG", description = "The bag, or the fit stage of what is packed loose.")
        private String bag = "";

        @Parameters(index = "2", paramLabel = "PART", description = "The part.")
        private String part = "";

        @Parameters(
                index = "3",
                paramLabel = "COUNTED",
                converter = FrozenCommand.Amount.class,
                description = "How many lie there.")
        private BigDecimal counted = BigDecimal.ZERO;

        @Option(names = "--finish", paramLabel = "FINISH", description = "In that finish.")
        private String finish = "";

        @Override
        Outcome<Integer> work(Screen screen, At at) {
            return part(part)
                    .then(name -> new PackDesk(at.book(), at.by())
                            .count(at.kit(), List.of(new Count(bag, name, finish, counted)), at.why()))
                    .then(written -> written(
                            screen,
                            written,
                            all -> JsonOut.list(all, PackCommand::asJson),
                            all -> all.forEach(one -> screen.wrapped(0, says(one)))));
        }
    }

    /** Into the crates. */
    @Command(
            name = "pack",
            description =
                    "Say that a picked kit lies in its crates. Whatever is taken out of it or put into it afterwards makes"
                            + " it not packed any more.")
    static final class Pack extends PickCommand.OnLine {

        private static final int MOST_CRATES = 1000;

        @Option(names = "--crates", paramLabel = "N", required = true, description = "In how many crates.")
        private int crates = 1;

        @Option(
                names = "--mass-kg",
                paramLabel = "KG",
                converter = FrozenCommand.Amount.class,
                description = "Gross mass of all of them on the scales.")
        private @Nullable BigDecimal massKg;

        @Override
        Outcome<Integer> work(Screen screen, At at) {
            if (crates < 1 || crates > MOST_CRATES || (massKg != null && massKg.signum() == 0)) {
                return Outcome.faulty(
                        Fault.of("", crates + " crates", "1 to " + MOST_CRATES + " crates, and a mass above 0", ""));
            }
            return new PackDesk(at.book(), at.by())
                    .pack(at.kit(), crates, massKg, at.why())
                    .then(written -> written(
                            screen,
                            written,
                            PackCommand::asJson,
                            packed -> screen.wrapped(
                                    0, packed.order() + ": packed in " + packed.crates() + " crates" + mass(packed))));
        }

        private static String mass(Packed packed) {
            BigDecimal mass = packed.massKg();
            return mass == null ? "" : ", " + plain(mass) + " kg";
        }
    }

    private static JsonOut asJson(Packed packed) {
        return JsonOut.object()
                .put("order", packed.order())
                .put("crates", packed.crates())
                .putIfAny("massKg", packed.massKg());
    }

    /** Everything back. */
    @Command(
            name = "back-all",
            description = "Give back all that an order has got, each into the bin it came from, and say why.")
    static final class BackAll extends PickCommand.OnLine {
        @Override
        Outcome<Integer> work(Screen screen, At at) {
            return new PickDesk(at.book(), at.by())
                    .backAll(at.kit(), at.why())
                    .then(written -> written(
                            screen,
                            written,
                            all -> JsonOut.list(all, StockCommand::asJson),
                            all -> screen.wrapped(0, all.size() + " lines are back in the stores.")));
        }
    }
}
