package boltlore.desk.stores;

import boltlore.book.db.Reading;
import boltlore.book.db.Shop;
import boltlore.book.orders.KitsAtHand;
import boltlore.book.stores.ChangeWork;
import boltlore.book.stores.ChangeWork.CutPieces;
import boltlore.book.stores.ChangeWork.To;
import boltlore.book.stores.ChangeWork.Undone;
import boltlore.desk.frame.Acting;
import boltlore.desk.frame.Answer;
import boltlore.desk.frame.Call;
import boltlore.desk.frame.Room.Doors;
import boltlore.desk.frame.Told;
import boltlore.desk.frame.Typed;
import boltlore.desk.frame.Workshop;
import boltlore.faults.Outcome;
import boltlore.json.TextShape;
import boltlore.measure.Digits;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/** What an accepted change has made vain: brought back, taken out of the coating queue, laid into a bin or scrapped. */
public final class UndoPages {

    private final Workshop workshop;
    private final KitsAtHand kits;

    UndoPages(Workshop workshop, KitsAtHand kits) {
        this.workshop = workshop;
        this.kits = kits;
    }

    void open(Doors doors) {
        doors.look("/stores/change/{order}/{number}", this::page);
        doors.act("/stores/change/{order}/{number}", this::undo);
    }

    private Answer page(Call call) {
        String order = call.path("order");
        return workshop.book()
                .read(reading -> PickPages.shown(kits.of(reading, order, call.today())
                        .then(kit -> Outcome.sound(Answer.page(
                                "Change " + call.path("number") + " of " + order + ": what is to be undone",
                                "stores/undo.jte",
                                undo(reading, call, ChangeWork.of(reading, kit)))))));
    }

    private Undo undo(Reading reading, Call call, Undone undone) {
        return new Undo(
                Told.of(reading, call),
                call.path("order"),
                call.path("number"),
                undone.back().stream()
                        .map(row -> Digits.plain(row.quantity()) + " "
                                + workshop.names()
                                        .part(row.held().part(), row.held().finish())
                                + (row.held().serial().isEmpty()
                                        ? ""
                                        : ", serial number " + row.held().serial())
                                + (row.held().lot().isEmpty()
                                        ? ""
                                        : ", lot " + row.held().lot()) + ", into bin "
                                + (row.held().bin().isEmpty()
                                        ? "none"
                                        : row.held().bin()))
                        .toList(),
                undone.queued().stream().map(Shop.Piece::piece).toList(),
                undone.cut().entrySet().stream()
                        .map(each -> new CutInVain(
                                each.getKey(), workshop.bench().named(each.getKey()), Digits.plain(each.getValue())))
                        .toList());
    }

    private Answer undo(Call call) {
        Typed typed = new Typed(call);
        String order = call.path("order");
        int number = typed.natural("number", "Change", call.path("number"));
        List<CutPieces> cut = new ArrayList<>();
        List<String> parts = call.all("part");
        for (int at = 0; at < parts.size(); at++) {
            String part = typed.said("part", "Part", parts.get(at), TextShape.PART_NUMBER);
            add(typed, cut, part, "stock", at, To.STOCK);
            add(typed, cut, part, "scrap", at, To.SCRAP);
            add(typed, cut, part, "there", at, To.THERE);
        }
        String why = typed.sentence("reason", "Remark");
        return Acting.done(
                call,
                "/stores/change/" + order + "/" + number,
                by -> typed.sound()
                        .then(ok -> workshop.book().read(reading -> kits.of(reading, order, call.today())))
                        .then(kit -> new ChangeWork(
                                        workshop.book(), by, workshop.bench().catalogue())
                                .carry(kit, number, cut, why)),
                this::page);
    }

    private static void add(Typed typed, List<CutPieces> cut, String part, String field, int at, To to) {
        String said = typed.nth(field, at);
        BigDecimal some = said.isEmpty() ? BigDecimal.ZERO : typed.number(field, part, said);
        if (some.signum() > 0) {
            cut.add(new CutPieces(part, some, to));
        }
    }

    /** What is to be undone. */
    public record Undo(
            List<String> told,
            String order,
            String number,
            List<String> back,
            List<String> queued,
            List<CutInVain> cut) {

        public boolean nothing() {
            return back.isEmpty() && queued.isEmpty() && cut.isEmpty();
        }
    }

    /** Pieces that were cut and go out. */
    public record CutInVain(String part, String name, String quantity) {}
}
