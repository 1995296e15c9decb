package boltlore.cli;

import static boltlore.cli.Room.BENCH;
import static boltlore.cli.Room.ENGINEERING;
import static boltlore.cli.Room.FABRICATION;
import static boltlore.cli.Room.SALES;
import static boltlore.cli.Room.STORES;

import java.util.List;
import java.util.function.Supplier;

/**
 * A command under its name, in its room. It is made only where it is called or listed: reading what it takes costs a
 * start most of its time.
 */
record Hung(Room room, String name, Supplier<RoomCommand> made) {

    /** All of them, each room's in the order that help lists them. */
    static final List<Hung> ALL = List.of(
            new Hung(SALES, "families", FamiliesCommand::new),
            new Hung(SALES, "choose", ChooseCommand::new),
            new Hung(SALES, "ask", AskCommand::new),
            new Hung(SALES, "kit", KitCommand::new),
            new Hung(SALES, "compare", CompareCommand::new),
            new Hung(SALES, "price", PriceCommand::new),
            new Hung(STORES, "parts", PartsCommand::new),
            new Hung(STORES, "why", WhyCommand::new),
            new Hung(FABRICATION, "cut", CutCommand::new),
            new Hung(FABRICATION, "coat", CoatCommand::new),
            new Hung(FABRICATION, "film-check", FilmCommand::new),
            new Hung(FABRICATION, "fixings", FixingsCommand::new),
            new Hung(BENCH, "test", TestCommand::new),
            new Hung(BENCH, "test-result", TestResultCommand::new),
            new Hung(BENCH, "ship", ShipCommand::new),
            new Hung(ENGINEERING, "check", CheckCommand::new),
            new Hung(ENGINEERING, "prove", ProveCommand::new),
            new Hung(ENGINEERING, "orders", OrdersCommand::new),
            new Hung(ENGINEERING, "axle-loads", WeighCommand::new),
            new Hung(ENGINEERING, "charging", ChargeCommand::new));
}
