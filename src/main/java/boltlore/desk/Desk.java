package boltlore.desk;

import boltlore.book.By;
import boltlore.book.orders.KitsAtHand;
import boltlore.desk.bench.BenchRoom;
import boltlore.desk.engineering.EngineeringRoom;
import boltlore.desk.fabrication.FabricationRoom;
import boltlore.desk.frame.Access;
import boltlore.desk.frame.Room;
import boltlore.desk.frame.Server;
import boltlore.desk.frame.Workshop;
import boltlore.desk.office.OfficeRoom;
import boltlore.desk.sales.SalesRoom;
import boltlore.desk.sheets.SheetPages;
import boltlore.desk.stores.StoresRoom;
import java.io.IOException;
import java.io.PrintWriter;
import java.util.List;
import java.util.function.Supplier;

/** All rooms, as they stand in the row of rooms. */
public final class Desk {

    private Desk() {}

    static List<Room> rooms(Workshop workshop) {
        KitsAtHand kits = new KitsAtHand(workshop.bench());
        return List.of(
                new SalesRoom(workshop, kits),
                new StoresRoom(workshop, kits),
                new FabricationRoom(workshop, kits),
                new BenchRoom(workshop, kits),
                new EngineeringRoom(workshop, kits),
                new OfficeRoom(workshop, kits),
                new SheetPages(workshop));
    }

    /** Opens the rooms of a desk that has begun to answer, and works ahead in the background. */
    public static void open(Server desk, Workshop workshop, Supplier<By> by) {
        List<Room> rooms = rooms(workshop);
        desk.open(rooms);
        Thread ahead = new Thread(() -> ahead(rooms, by), "working ahead at the start");
        ahead.setDaemon(true);
        ahead.start();
    }

    /** Where it fails, what is asked for later is worked out then, and says what is wrong. */
    private static void ahead(List<Room> rooms, Supplier<By> by) {
        for (Room room : rooms) {
            try {
                room.ahead(by.get().today());
            } catch (RuntimeException closedOrFailed) {
                return;
            }
        }
    }

    /**
     * Begins to answer browsers.
     *
     * @param by who works here, asked anew for each call
     * @param log where failures of the program are told
     * @throws IOException where the certificate or its key cannot be read
     */
    public static Server open(Workshop workshop, Access access, Supplier<By> by, PrintWriter log) throws IOException {
        return new Server(rooms(workshop), access, by, log);
    }
}
