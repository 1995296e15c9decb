package boltlore.desk.stores;

import boltlore.book.By;
import boltlore.book.Held;
import boltlore.book.db.Needs;
import boltlore.book.db.Reading;
import boltlore.book.db.Stock;
import boltlore.book.stores.StoresDesk;
import boltlore.catalogue.Part;
import boltlore.desk.frame.Acting;
import boltlore.desk.frame.Answer;
import boltlore.desk.frame.Call;
import boltlore.desk.frame.Names;
import boltlore.desk.frame.Room.Doors;
import boltlore.desk.frame.Stretch;
import boltlore.desk.frame.Told;
import boltlore.desk.frame.Typed;
import boltlore.desk.frame.Workshop;
import boltlore.json.TextShape;
import boltlore.measure.Digits;
import boltlore.measure.PartNumber;
import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** What lies where: counted, moved, scrapped. */
public final class GoodsPages {

    private static final int MOST = 60;

    /** Each with the forms for what may become of it. */
    private static final int MOST_OF_A_PART = 30;

    private final Workshop workshop;

    GoodsPages(Workshop workshop) {
        this.workshop = workshop;
    }

    void open(Doors doors) {
        doors.look("/stores/where", this::where);
        doors.look("/stores/part", this::part);
        doors.act("/stores/part/count", this::count);
        doors.act("/stores/part/move", this::move);
        doors.act("/stores/part/scrap", this::scrap);
    }

    private @Nullable Part known(String number) {
        return workshop.bench().catalogue().parts().get(new PartNumber(number));
    }

    /** What lies where, of parts that a word names; without one nothing is listed. */
    private Answer where(Call call) {
        String word = call.said("word");
        return workshop.book()
                .read(reading -> Answer.page(
                        "Where is a part?",
                        "stores/where.jte",
                        new Where(
                                Told.of(reading, call),
                                word,
                                Stretch.of(
                                                reading.stock().all().stream()
                                                        .filter(row -> word.isEmpty() || is(row.held(), word))
                                                        .toList(),
                                                call,
                                                2 * MOST,
                                                "/stores/where?word=" + PickPages.coded(word))
                                        .map(this::lies),
                                workshop.bench().catalogue().parts().values().stream()
                                        .filter(part -> !word.isEmpty() && names(part, word))
                                        .filter(part -> reading.stock()
                                                .of(part.number().text())
                                                .isEmpty())
                                        .map(part -> new Empty(
                                                part.number().text(),
                                                part.name().english(),
                                                part.bin()))
                                        .limit(MOST)
                                        .toList())));
    }

    private boolean is(Held held, String word) {
        Part part = known(held.part());
        return held.part().equalsIgnoreCase(word)
                || held.lot().equals(word)
                || held.serial().equals(word)
                || held.bin().equalsIgnoreCase(word)
                || (part != null && names(part, word));
    }

    private static boolean names(Part part, String word) {
        String text = part.number() + "\n" + part.name().english();
        return text.toLowerCase(Locale.ROOT).contains(word.toLowerCase(Locale.ROOT));
    }

    private Lies lies(Stock.Row row) {
        Part part = known(row.held().part());
        return new Lies(
                row.held().bin(),
                row.held().part(),
                part == null ? "" : part.name().english(),
                row.held().finish(),
                workshop.names().finish(row.held().finish()),
                row.held().lot(),
                row.held().serial(),
                Digits.plain(row.quantity()),
                part == null ? "" : part.unit());
    }

    private Answer part(Call call) {
        String number = call.said("part");
        Part part = known(number);
        if (part == null) {
            return new Answer.Missing("There is no part '" + number + "' in the catalogue.");
        }
        return workshop.book()
                .read(reading -> Answer.page(
                        number + " " + part.name().english(),
                        "stores/part.jte",
                        new OfPart(
                                Told.of(reading, call),
                                number,
                                part.bin(),
                                part.unit(),
                                workshop.names(),
                                Stretch.of(
                                                reading.stock().of(number),
                                                call,
                                                MOST_OF_A_PART,
                                                "/stores/part?part=" + PickPages.coded(number))
                                        .map(this::lies),
                                kept(reading, number),
                                DueIn.all(reading, call.today()).stream()
                                        .filter(line -> line.part().equals(number))
                                        .toList(),
                                asked(reading, number))));
    }

    private String kept(Reading reading, String part) {
        return reading.stock().reservations().stream()
                .filter(each -> each.part().equals(part))
                .map(each -> Digits.plain(each.quantity())
                        + (each.finish().isEmpty()
                                ? ""
                                : " in " + workshop.names().finish(each.finish())) + " for " + each.order())
                .collect(Collectors.joining(", "));
    }

    /** Who has still to get it, in any finish, the earliest day first. */
    private List<Asked> asked(Reading reading, String part) {
        Map<String, List<Needs.Open>> byFinish = reading.needs().lacking(Integer.MAX_VALUE).stream()
                .filter(each -> each.part().equals(part))
                .collect(Collectors.toMap(
                        each -> each.finish(), each -> reading.needs().forWhom(part, each.finish())));
        return byFinish.values().stream()
                .flatMap(List::stream)
                .map(need -> new Asked(
                        need.day().toString(),
                        need.order(),
                        workshop.names().finish(need.finish()),
                        Digits.plain(need.quantity())))
                .sorted((one, other) -> one.day().compareTo(other.day()))
                .toList();
    }

    private Answer count(Call call) {
        Typed typed = new Typed(call);
        Held held = held(typed);
        BigDecimal counted = typed.amountOrNone("quantity", "Counted");
        if (call.said("quantity").isEmpty()) {
            typed.fault("quantity", "Counted", "nothing", "how much lies there, 0 where nothing does");
        }
        String why = typed.sentence("reason", "What was found");
        return Acting.done(
                call, partPath(call), by -> typed.sound().then(ok -> desk(by).count(held, counted, why)), this::part);
    }

    private Answer move(Call call) {
        Typed typed = new Typed(call);
        Held held = held(typed);
        BigDecimal some = typed.amount("quantity", "Quantity");
        String to = typed.text("to", "Other bin", TextShape.LINE);
        return Acting.done(
                call, partPath(call), by -> typed.sound().then(ok -> desk(by).move(held, some, to)), this::part);
    }

    private Answer scrap(Call call) {
        Typed typed = new Typed(call);
        Held held = held(typed);
        BigDecimal some = typed.amount("quantity", "Quantity");
        String why = typed.reason("reason", "Why it is scrapped");
        return Acting.done(
                call, partPath(call), by -> typed.sound().then(ok -> desk(by).scrap(held, some, why)), this::part);
    }

    private StoresDesk desk(By by) {
        return new StoresDesk(workshop.book(), by, workshop.bench());
    }

    private static Held held(Typed typed) {
        return new Held(
                typed.text("part", "Part", TextShape.PART_NUMBER),
                typed.line("finish", "Finish"),
                typed.line("lot", "Lot"),
                typed.line("serial", "Serial number"),
                typed.line("bin", "Bin"));
    }

    private static String partPath(Call call) {
        return "/stores/part?part=" + PickPages.coded(call.said("part"));
    }

    /** What lies where, and parts of which nothing does. */
    public record Where(List<String> told, String word, Stretch<Lies> rows, List<Empty> none) {}

    /** One part at one place. */
    public record Lies(
            String bin,
            String part,
            String name,
            String finish,
            String finishSays,
            String lot,
            String serial,
            String quantity,
            String unit) {}

    /** A part of which nothing lies there. */
    public record Empty(String part, String name, String bin) {}

    /** One part in the stores. */
    public record OfPart(
            List<String> told,
            String part,
            String bin,
            String unit,
            Names names,
            Stretch<Lies> rows,
            String kept,
            List<DueIn> due,
            List<Asked> asked) {}

    /** An order that has still to get it. */
    public record Asked(String day, String order, String finish, String quantity) {}
}
