package boltlore.desk.stores;

import boltlore.book.Held;
import boltlore.book.db.Reading;
import boltlore.book.db.Stock;
import boltlore.book.stores.PickLine;
import boltlore.book.stores.Taken;
import boltlore.desk.frame.Answer;
import boltlore.desk.frame.Call;
import boltlore.desk.frame.Room.Doors;
import boltlore.desk.frame.Told;
import boltlore.desk.frame.Typed;
import boltlore.desk.frame.Workshop;
import boltlore.faults.Fault;
import boltlore.faults.Outcome;
import boltlore.json.TextShape;
import boltlore.measure.Digits;
import java.math.BigDecimal;
import java.util.List;

/** One line of one order: reported short, taken otherwise than usual, put back. */
public final class LinePages {

    private final Workshop workshop;
    private final PickPages pick;

    LinePages(Workshop workshop, PickPages pick) {
        this.workshop = workshop;
        this.pick = pick;
    }

    void open(Doors doors) {
        doors.look("/stores/line", this::line);
        doors.act("/stores/line/take", this::takeOtherwise);
        doors.act("/stores/line/short", this::tooLittle);
        doors.act("/stores/line/back", this::back);
    }

    /** All that can be done with one line of one order. */
    private Answer line(Call call) {
        Typed typed = new Typed(call);
        String order = typed.text("for", "Order", TextShape.ORDER_NAME);
        String part = typed.text("part", "Part", TextShape.PART_NUMBER);
        String finish = typed.line("finish", "Finish");
        return workshop.book().read(reading -> {
            Outcome<Answer> page = typed.sound()
                    .then(ok -> pick.lines(reading, List.of(order), call, true))
                    .then(lines -> lines.stream()
                            .filter(line -> line.key().equals(Stock.key(part, finish)))
                            .findFirst()
                            .map(Outcome::sound)
                            .orElseGet(() -> Outcome.faulty(
                                    Fault.of("order " + order, Stock.key(part, finish), "a part of its kit", ""))))
                    .then(line -> Outcome.sound(Answer.page(
                            workshop.names().part(part, finish) + " for " + order,
                            "stores/line.jte",
                            new Line(
                                    Told.of(reading, call),
                                    PickPages.row(workshop, reading, line),
                                    Digits.plain(line.wanted()),
                                    got(reading, order, line),
                                    line.part().upkeep().alternates().stream()
                                            .map(each -> each.part().text())
                                            .toList()))));
            return PickPages.shown(page);
        });
    }

    private static List<Got> got(Reading reading, String order, PickLine line) {
        return reading.stock().issuedTo(order).stream()
                .filter(issued -> Stock.key(
                                issued.instead().isEmpty() ? issued.held().part() : issued.instead(),
                                issued.held().finish())
                        .equals(line.key()))
                .map(issued -> new Got(
                        issued.held().part(),
                        issued.held().finish(),
                        issued.held().lot(),
                        issued.held().serial(),
                        issued.held().bin(),
                        Digits.plain(issued.quantity())))
                .toList();
    }

    private Answer takeOtherwise(Call call) {
        Typed typed = new Typed(call);
        String wanted = typed.text("part", "Part", TextShape.PART_NUMBER);
        String other = call.said("other").isEmpty() ? wanted : typed.text("other", "Part taken", TextShape.PART_NUMBER);
        Taken taken = new Taken(
                other,
                typed.line("finish", "Finish"),
                PickPages.pieces(call, typed),
                typed.line("lot", "Lot"),
                typed.list("serial", "Serial number"),
                typed.line("bin", "Bin"),
                other.equals(wanted) ? "" : wanted,
                typed.sentence("concession", "Concession"));
        String why = typed.sentence("reason", "Reason");
        return pick.onLine(call, typed, linePath(call), this::line, (desk, kit) -> desk.take(kit, List.of(taken), why));
    }

    private Answer tooLittle(Call call) {
        Typed typed = new Typed(call);
        String part = typed.text("part", "Part", TextShape.PART_NUMBER);
        String finish = typed.line("finish", "Finish");
        String why = typed.reason("reason", "What was found in the bin");
        return pick.onLine(
                call, typed, linePath(call), this::line, (desk, kit) -> desk.missing(kit, part, finish, why));
    }

    private Answer back(Call call) {
        Typed typed = new Typed(call);
        Held held = new Held(
                typed.text("taken", "Part", TextShape.PART_NUMBER),
                typed.line("finish", "Finish"),
                typed.line("lot", "Lot"),
                typed.line("serial", "Serial number"),
                typed.line("bin", "Bin"));
        BigDecimal quantity = typed.amount("quantity", "Quantity");
        String why = typed.reason("reason", "Why it comes back");
        return pick.onLine(call, typed, linePath(call), this::line, (desk, kit) -> desk.back(kit, held, quantity, why));
    }

    private static String linePath(Call call) {
        return "/stores/line?for=" + PickPages.coded(call.said("for")) + "&part=" + PickPages.coded(call.said("part"))
                + "&finish=" + PickPages.coded(call.said("finish"));
    }

    /** One line by itself. */
    public record Line(List<String> told, PickPages.Row row, String wanted, List<Got> got, List<String> alternates) {}

    /** Something that the order has got of it. */
    public record Got(String part, String finish, String lot, String serial, String bin, String quantity) {}
}
