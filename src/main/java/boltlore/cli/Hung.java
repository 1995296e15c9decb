package boltlore.cli;

import static boltlore.trades.Room.BENCH;
import static boltlore.trades.Room.ENGINEERING;
import static boltlore.trades.Room.FABRICATION;
import static boltlore.trades.Room.OFFICE;
import static boltlore.trades.Room.SALES;
import static boltlore.trades.Room.STORES;

import boltlore.trades.Room;
import boltlore.trades.Trade;
import boltlore.trades.buying.BuyingTrade;
import boltlore.trades.orders.Trades;
import java.util.Comparator;
import java.util.List;
import java.util.function.Supplier;
import java.util.stream.Stream;

/**
 * A command under its name, in its room. It is made only where it is called or listed: reading what it takes costs a
 * start most of its time.
 */
record Hung(Room room, String name, Supplier<Object> made) {

    /** All of them, each room's in the order that help lists them. */
    static final List<Hung> ALL = Stream.concat(own(), Trades.ALL.stream().map(Hung::of))
            .sorted(Comparator.comparing(Hung::room))
            .toList();

    private static Hung of(Trade trade) {
        return new Hung(trade.room(), trade.name(), () -> TradeCommand.describe(trade));
    }

    private static Stream<Hung> own() {
        return Stream.of(
                new Hung(SALES, "families", FamiliesCommand::new),
                new Hung(SALES, "choose", ChooseCommand::new),
                new Hung(SALES, "ask", AskCommand::new),
                new Hung(SALES, "kit", KitCommand::new),
                new Hung(SALES, "compare", CompareCommand::new),
                new Hung(SALES, "order", OrderCommand::new),
                new Hung(SALES, "change", ChangeCommand::new),
                new Hung(STORES, "stock", StockCommand::new),
                new Hung(STORES, "purchase", PurchaseCommand::new),
                new Hung(STORES, "pick", PickCommand::new),
                new Hung(STORES, "parts", PartsCommand::new),
                new Hung(STORES, "why", WhyCommand::new),
                of(new BuyingTrade()),
                new Hung(FABRICATION, "coating", CoatingCommand::new),
                new Hung(FABRICATION, "rack", RackCommand::new),
                new Hung(FABRICATION, "film-check", FilmCommand::new),
                new Hung(BENCH, "record", RecordCommand::new),
                new Hung(BENCH, "test-result", TestResultCommand::new),
                new Hung(BENCH, "built", BuiltCommand::new),
                new Hung(BENCH, "recall", RecallCommand::new),
                new Hung(ENGINEERING, "new", NewCommand::new),
                new Hung(ENGINEERING, "bring", BringCommand::new),
                new Hung(ENGINEERING, "parts-list", PartsListCommand::new),
                new Hung(ENGINEERING, "check", CheckCommand::new),
                new Hung(ENGINEERING, "prove", ProveCommand::new),
                new Hung(ENGINEERING, "orders", OrdersCommand::new),
                new Hung(OFFICE, "desk", DeskCommand::new),
                new Hung(OFFICE, "person", PersonCommand::new),
                new Hung(OFFICE, "book", BookKeeping::new));
    }
}
