package boltlore.desk.stores;

import boltlore.book.db.Reading;
import boltlore.book.orders.KitsAtHand;
import boltlore.book.stores.PickDesk;
import boltlore.book.stores.PickLine;
import boltlore.book.stores.Taken;
import boltlore.desk.frame.Acting;
import boltlore.desk.frame.Answer;
import boltlore.desk.frame.Call;
import boltlore.desk.frame.Room.Doors;
import boltlore.desk.frame.Typed;
import boltlore.desk.frame.Workshop;
import boltlore.faults.Fault;
import boltlore.faults.Outcome;
import boltlore.json.TextShape;
import boltlore.trades.KitInWork;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** What a scanner says at the bins: it is a keyboard that ends with Enter. */
public final class ScanPages {

    private final Workshop workshop;
    private final KitsAtHand kits;
    private final PickPages pick;

    ScanPages(Workshop workshop, KitsAtHand kits, PickPages pick) {
        this.workshop = workshop;
        this.kits = kits;
        this.pick = pick;
    }

    void open(Doors doors) {
        doors.act("/stores/pick/scan", this::scan);
    }

    /**
     * What was scanned says which line is meant: a serial number takes that piece, a lot or a part's number all that the first
     * order along the walk has left of it.
     */
    private Answer scan(Call call) {
        Typed typed = new Typed(call);
        List<String> orders = typed.texts("order", "Order", TextShape.ORDER_NAME);
        String code = typed.text("code", "Scanned or typed", TextShape.LINE);
        return Acting.done(
                call,
                PickPages.pickPath(orders, call),
                by -> typed.sound()
                        .then(ok -> workshop.book().read(reading -> {
                            reading.notDone(by);
                            return scanned(reading, call, orders, code);
                        }))
                        .then(found -> new PickDesk(workshop.book(), by).take(found.kit(), List.of(found.taken()), "")),
                pick::list);
    }

    private record Scanned(KitInWork kit, Taken taken) {}

    private Outcome<Scanned> scanned(Reading reading, Call call, List<String> orders, String code) {
        return pick.lines(reading, orders, call, false).then(lines -> {
            Optional<Taken> taken = lines.stream()
                    .flatMap(line -> fits(reading, line, code).stream())
                    .findFirst();
            Optional<PickLine> line = lines.stream()
                    .filter(each -> fits(reading, each, code).isPresent())
                    .findFirst();
            if (taken.isEmpty() || line.isEmpty()) {
                return Outcome.faulty(Fault.of(
                        "",
                        "'" + code + "'",
                        "the number of a part, lot or piece that these orders have still to get and that lies here",
                        "Put it back, or look below what is left."));
            }
            return kits.of(reading, line.get().order(), call.today())
                    .then(kit -> Outcome.sound(new Scanned(kit, taken.get())));
        });
    }

    private static Optional<Taken> fits(Reading reading, PickLine line, String code) {
        String part = line.part().number().text();
        if (part.equals(code)) {
            return Optional.of(taken(line, null, "", List.of()));
        }
        return reading.stock().of(part).stream()
                .filter(row -> row.held().finish().equals(line.finish()))
                .filter(row ->
                        row.held().serial().equals(code) || row.held().lot().equals(code))
                .findFirst()
                .map(row -> row.held().serial().equals(code)
                        ? taken(line, BigDecimal.ONE, row.held().lot(), List.of(code))
                        : taken(line, row.quantity().min(line.left()), code, List.of()));
    }

    private static Taken taken(PickLine line, @Nullable BigDecimal quantity, String lot, List<String> serials) {
        return new Taken(line.part().number().text(), line.finish(), quantity, lot, serials, "", "", "");
    }
}
