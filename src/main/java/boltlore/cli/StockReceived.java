package boltlore.cli;

import boltlore.book.db.Place;
import boltlore.book.stores.StoresDesk;
import boltlore.book.stores.StoresDesk.Arrival;
import boltlore.faults.Outcome;
import boltlore.json.JsonOut;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.List;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Goods in. */
@Command(
        name = "receive",
        description =
                "Take goods in: some or all of a purchase order, or what was made here. A part that was not ordered is"
                        + " refused, and more than was ordered or is still to be made, unless that is said.")
final class StockReceived extends FrozenCommand {

    @Parameters(index = "0", arity = "0..1", paramLabel = "PART", description = "The part.")
    private String part = "";

    @Parameters(
            index = "1",
            arity = "0..1",
            paramLabel = "QUANTITY",
            converter = Amount.class,
            description = "How much, in the part's unit.")
    private BigDecimal quantity = BigDecimal.ZERO;

    @Option(
            names = "--table",
            paramLabel = "FILE",
            description =
                    "All goods of a delivery at once: a CSV with the columns part, quantity, and any of finish, lot,"
                            + " serial, bin, purchase.")
    private @Nullable Path table;

    @Option(
            names = "--purchase",
            paramLabel = "NUMBER",
            description = "Purchase order that it comes with; without it, it was made here.")
    private String purchase = "";

    @Option(names = "--over", description = "Take more than was ordered, or than is still to be made; needs a reason.")
    private boolean over;

    @Mixin
    private HeldSaid held = new HeldSaid();

    @Override
    Outcome<Integer> answer(Screen screen, Place place) {
        return arrivals()
                .then(arrivals -> reason().then(why -> by().then(by -> inStores(
                        place,
                        (book, catalogue) -> new StoresDesk(book, by, bench(catalogue))
                                .receive(arrivals, why)
                                .then(written -> written(
                                        screen,
                                        written,
                                        all -> JsonOut.list(all, StockCommand::asJson),
                                        all -> all.forEach(each -> screen.wrapped(0, "In: " + each))))))));
    }

    private Outcome<List<Arrival>> arrivals() {
        return table != null
                ? GoodsTable.read(table)
                        .then(goods ->
                                Outcome.sound(goods.stream().map(this::arrival).toList()))
                : part(part)
                        .then(number -> StockCommand.above(quantity)
                                .then(amount -> held.read()
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
