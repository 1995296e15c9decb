package boltlore.desk;

import boltlore.book.By;
import boltlore.book.orders.KitsAtHand;
import boltlore.desk.bench.BenchRoom;
import boltlore.desk.engineering.EngineeringRoom;
import boltlore.desk.fabrication.FabricationRoom;
import boltlore.desk.frame.Room;
import boltlore.desk.frame.Server;
import boltlore.desk.frame.Workshop;
import boltlore.desk.office.OfficeRoom;
import boltlore.desk.sales.SalesRoom;
import boltlore.desk.stores.StoresRoom;
import java.io.PrintWriter;
import java.util.List;
import java.util.function.Supplier;

/** All rooms, as they stand in the row of rooms. */
public final class Desk {

    private Desk() {}

    static List<Room> rooms(Workshop workshop) {
        KitsAtHand kits = new KitsAtHand(workshop.bench());
        return List.of(
                new SalesRoom(workshop),
                new StoresRoom(workshop, kits),
                new FabricationRoom(workshop, kits),
                new BenchRoom(workshop, kits),
                new EngineeringRoom(workshop, kits),
                new OfficeRoom(workshop, kits));
    }

    /**
     * Begins to answer browsers on this machine.
     *
     * @param port 0 takes one that is free
     * @param by who works here, asked anew for each call
     * @param log where failures of the program are told
     */
    public static Server open(Workshop workshop, int port, Supplier<By> by, PrintWriter log) {
        return new Server(rooms(workshop), port, by, log);
    }
}
