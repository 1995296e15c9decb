package boltlore.desk.stores;

import boltlore.book.Entry;
import boltlore.book.Happening;
import boltlore.book.StockHappening;
import boltlore.book.db.Reading;
import boltlore.book.stores.StoresDesk;
import boltlore.book.stores.StoresDesk.Arrival;
import boltlore.catalogue.Part;
import boltlore.catalogue.Tracked;
import boltlore.desk.frame.Acting;
import boltlore.desk.frame.Answer;
import boltlore.desk.frame.Call;
import boltlore.desk.frame.Room.Doors;
import boltlore.desk.frame.Stretch;
import boltlore.desk.frame.Told;
import boltlore.desk.frame.Typed;
import boltlore.desk.frame.Workshop;
import boltlore.faults.Outcome;
import boltlore.json.TextShape;
import boltlore.measure.Digits;
import boltlore.measure.PartNumber;
import java.math.BigDecimal;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Goods in: one part at a time, as the line of a purchase order says it, and what was written down wrongly taken back. */
public final class ReceivePages {

    private static final int MOST = 60;
    private static final int MOST_CAME = 10;

    /** A shift: within it the same goods are more likely one delivery than two. */
    private static final Duration LATELY = Duration.ofHours(12);

    private final Workshop workshop;

    ReceivePages(Workshop workshop) {
        this.workshop = workshop;
    }

    void open(Doors doors) {
        doors.look("/stores/receive", this::arrival);
        doors.act("/stores/receive", this::receive);
        doors.act("/stores/receive/wrong", this::wrong);
    }

    private @Nullable Part known(String number) {
        return workshop.bench().catalogue().parts().get(new PartNumber(number));
    }

    /** A form for what has come: filled in as far as the line of a purchase order says it. */
    private Answer arrival(Call call) {
        String part = call.said("part");
        Part known = known(part);
        return workshop.book()
                .read(reading -> Answer.page(
                        part.isEmpty() ? "Goods in" : "Goods in: " + part,
                        "stores/receive.jte",
                        new Receiving(
                                Told.of(reading, call),
                                part,
                                known == null ? "" : known.name().english(),
                                known == null ? "" : known.unit(),
                                workshop.names(),
                                call.said("purchase"),
                                known == null ? "" : known.bin(),
                                known == null || known.tracked() == Tracked.LOT,
                                known == null || known.tracked() == Tracked.SERIAL,
                                came(reading, call, part),
                                Stretch.of(
                                        DueIn.all(reading, call.today()).stream()
                                                .filter(line -> part.isEmpty()
                                                        || line.part().equals(part))
                                                .toList(),
                                        call,
                                        MOST,
                                        "/stores/receive?part=" + PickPages.coded(part)))));
    }

    private Answer receive(Call call) {
        Typed typed = new Typed(call);
        List<String> serials = typed.list("serials", "Serial numbers");
        BigDecimal said = typed.amountOrNone("quantity", "Quantity");
        if (said.signum() == 0 && serials.isEmpty()) {
            typed.fault("quantity", "Quantity", "nothing", "a number above 0, or the serial number of each piece");
        }
        Arrival arrival = new Arrival(
                typed.text("part", "Part", TextShape.PART_NUMBER),
                typed.line("finish", "Finish"),
                said.signum() == 0 ? BigDecimal.valueOf(serials.size()) : said,
                typed.line("purchase", "Purchase order"),
                typed.line("lot", "Lot"),
                serials,
                typed.line("bin", "Bin"),
                call.said("over").equals("yes"));
        asks(call, typed, arrival);
        String why = typed.sentence("reason", "Reason");
        return Acting.done(
                call,
                "/stores/receive?part=" + PickPages.coded(arrival.part()) + "&purchase="
                        + PickPages.coded(arrival.purchase()),
                by -> typed.sound()
                        .then(ok ->
                                new StoresDesk(workshop.book(), by, workshop.bench()).receive(List.of(arrival), why)),
                this::arrival);
    }

    /** Whoever went back in the browser to put a number right would take the goods in a second time. */
    private void asks(Call call, Typed typed, Arrival arrival) {
        Part part = known(arrival.part());
        boolean numbered = part != null && part.tracked() == Tracked.SERIAL;
        boolean further = call.said("further").equals("yes") || numbered;
        List<Entry> before = further
                ? List.of()
                : workshop.book()
                        .read(reading -> reading.wasDone(call.by())
                                ? List.<Entry>of()
                                : StoresDesk.receipts(reading, arrival.part(), since(call)).stream()
                                        .filter(entry -> isOf(entry, arrival))
                                        .toList());
        if (!before.isEmpty()) {
            typed.fault(
                    "further",
                    "Quantity",
                    says(before.get(0)) + ", taken in already",
                    "a further delivery, which is ticked below; if that number was wrong, it is taken back below");
        }
    }

    private static Instant since(Call call) {
        return call.by().at().minus(LATELY);
    }

    private static boolean isOf(Entry entry, Arrival arrival) {
        return entry.happening() instanceof Outcome.Sound<Happening> sound
                && sound.value() instanceof StockHappening.Received received
                && received.purchase().equals(arrival.purchase())
                && received.held().finish().equals(arrival.finish())
                && received.held().lot().equals(arrival.lot());
    }

    private static List<Receiving.Came> came(Reading reading, Call call, String part) {
        return part.isEmpty()
                ? List.of()
                : StoresDesk.receipts(reading, part, since(call)).stream()
                        .limit(MOST_CAME)
                        .map(entry -> new Receiving.Came(entry.number(), says(entry)))
                        .toList();
    }

    /** '12 (entry 214)', with purchase order, lot and serial number where there are such. */
    private static String says(Entry entry) {
        return entry.happening() instanceof Outcome.Sound<Happening> sound
                        && sound.value() instanceof StockHappening.Received received
                ? Digits.plain(received.quantity()) + " of " + received.held().part()
                        + (received.purchase().isEmpty() ? "" : " of " + received.purchase())
                        + (received.held().lot().isEmpty()
                                ? ""
                                : ", lot " + received.held().lot())
                        + (received.held().serial().isEmpty()
                                ? ""
                                : ", serial number " + received.held().serial())
                        + " (entry " + entry.number() + ")"
                : "";
    }

    private Answer wrong(Call call) {
        Typed typed = new Typed(call);
        int entry = typed.count("entry", "Entry");
        String why = typed.reason("reason", "What was wrong with it");
        return Acting.done(
                call,
                "/stores/receive?part=" + PickPages.coded(call.said("part")),
                by -> typed.sound()
                        .then(ok -> new StoresDesk(workshop.book(), by, workshop.bench()).unreceive(entry, why)),
                this::arrival);
    }
}
