package boltlore.cli;

import boltlore.book.db.Book;
import boltlore.book.db.Place;
import boltlore.book.db.Reading;
import boltlore.book.stores.OwedPlan;
import boltlore.catalogue.Catalogue;
import boltlore.faults.Fault;
import boltlore.faults.Outcome;
import boltlore.json.JsonOut;
import boltlore.netting.ItemPlan;
import boltlore.netting.PlannedReceipt;
import boltlore.trades.buying.ShopPlan;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.BiFunction;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Says what is short. */
@Command(
        name = "short",
        description =
                "Say what all owed orders together lack, by the day on which it is needed, for whom, and by when it"
                        + " must be ordered, made or coated.")
final class StockShort extends FrozenCommand {

    @Mixin
    private Listing listing = new Listing();

    /** Plans over all orders that are owed, and works with the plan while the book is read. */
    static <T> Outcome<T> plan(
            FrozenCommand command,
            Book book,
            Catalogue catalogue,
            @Nullable LocalDate on,
            BiFunction<Reading, ShopPlan, T> work) {
        return command.frozen(
                book,
                catalogue,
                (reading, kits) -> OwedPlan.of(reading, catalogue, on == null ? command.today() : on, kits::of)
                        .then(plan -> plan.isEmpty()
                                ? Outcome.faulty(Fault.of(
                                        "",
                                        "no order that is owed",
                                        "at least one",
                                        "'boltlore order confirm NUMBER' makes one."))
                                : Outcome.sound(work.apply(reading, OwedPlan.telling(reading, plan.get())))));
    }

    @Option(
            names = "--on",
            paramLabel = "DATE",
            converter = Day.class,
            description = "Plan from that day on; without it today.")
    private @Nullable LocalDate on;

    @Parameters(
            arity = "0..*",
            paramLabel = "ORDER|PART",
            description = "Only what these orders lack, or of these parts.")
    private List<String> only = new ArrayList<>();

    @Option(names = "--late", description = "Only what should have been ordered or begun by now.")
    private boolean late;

    @Override
    Outcome<Integer> answer(Screen screen, Place place) {
        HeadStart.forKits();
        return inStores(
                place,
                (book, catalogue) ->
                        plan(this, book, catalogue, on, (reading, plan) -> plan).then(plan -> told(screen, plan)));
    }

    private Outcome<Integer> told(Screen screen, ShopPlan plan) {
        List<PlannedReceipt> receipts = plan.netting().planned().stream()
                .filter(receipt -> !late || receipt.lateBy(plan.netting().now()) > 0)
                .filter(receipt -> only.isEmpty() || only.stream().anyMatch(name -> isOf(plan, receipt, name)))
                .sorted(Comparator.comparingInt(PlannedReceipt::due).thenComparing(PlannedReceipt::item))
                .toList();
        Outcome<Integer> done = listed(
                screen,
                listing,
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
                || plan.askedBy(receipt).outside().containsKey(name);
    }

    private static String sooner(ItemPlan item, ItemPlan.Brought brought) {
        return LocalDate.ofEpochDay(brought.wanted()) + ": " + plain(brought.quantity()) + " " + item.item() + " of "
                + brought.receipt().name() + ", expected on "
                + LocalDate.ofEpochDay(brought.receipt().period())
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
        plan.askedBy(receipt).outside().forEach(orders::put);
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
