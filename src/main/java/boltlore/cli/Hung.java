package boltlore.cli;

import static boltlore.trades.Room.BENCH;
import static boltlore.trades.Room.ENGINEERING;
import static boltlore.trades.Room.FABRICATION;
import static boltlore.trades.Room.OFFICE;
import static boltlore.trades.Room.SALES;
import static boltlore.trades.Room.STORES;

import boltlore.trades.Room;
import boltlore.trades.Trade;
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
                new Hung(SALES, "families", () -> new FamiliesCommand()),
                new Hung(SALES, "choose", () -> new ChooseCommand()),
                new Hung(SALES, "ask", () -> new AskCommand()),
                new Hung(SALES, "kit", () -> new KitCommand()),
                new Hung(SALES, "compare", () -> new CompareCommand()),
                new Hung(SALES, "order", () -> new OrderCommand()),
                new Hung(SALES, "change", () -> new ChangeCommand()),
                new Hung(STORES, "parts", () -> new PartsCommand()),
                new Hung(STORES, "why", () -> new WhyCommand()),
                new Hung(FABRICATION, "film-check", () -> new FilmCommand()),
                new Hung(BENCH, "test-result", () -> new TestResultCommand()),
                new Hung(BENCH, "built", () -> new BuiltCommand()),
                new Hung(BENCH, "recall", () -> new RecallCommand()),
                new Hung(ENGINEERING, "check", () -> new CheckCommand()),
                new Hung(ENGINEERING, "prove", () -> new ProveCommand()),
                new Hung(ENGINEERING, "orders", () -> new OrdersCommand()),
                new Hung(OFFICE, "person", () -> new PersonCommand()),
                new Hung(OFFICE, "book", () -> new BookKeeping()));
    }
}
