package boltlore.desk.fabrication;

import boltlore.book.ShopHappening.Coat;
import boltlore.book.db.Reading;
import boltlore.book.db.Shop.Piece;
import boltlore.book.orders.KitsAtHand;
import boltlore.book.stores.CoatDesk;
import boltlore.desk.frame.Acting;
import boltlore.desk.frame.Answer;
import boltlore.desk.frame.Call;
import boltlore.desk.frame.DrawnSheet;
import boltlore.desk.frame.Room.Doors;
import boltlore.desk.frame.Sentences;
import boltlore.desk.frame.Told;
import boltlore.desk.frame.Typed;
import boltlore.desk.frame.Workshop;
import boltlore.faults.Outcome;
import boltlore.json.TextShape;
import boltlore.report.Page;
import boltlore.report.Report;
import boltlore.trades.TradeOption.Given;
import boltlore.trades.TradeResult;
import boltlore.trades.coating.CoatingTrade;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** The coating shop: which pieces stand where, and the loads that they hang in, drawn. */
public final class CoatPages {

    /** What a hand on the shop floor says, and where the piece stands then. */
    private static final Map<Coat, String> STEPS = Map.of(
            Coat.MASKED, "masked",
            Coat.HUNG, "hang in a load",
            Coat.COATED, "coated, out of the oven",
            Coat.OUT, "out to a coater",
            Coat.BACK, "back from the coater",
            Coat.ACCEPTED, "accepted",
            Coat.REJECTED, "rejected",
            Coat.WAITING, "to be coated again",
            Coat.SCRAPPED, "scrapped");

    private final Workshop workshop;
    private final KitsAtHand kits;

    CoatPages(Workshop workshop, KitsAtHand kits) {
        this.workshop = workshop;
        this.kits = kits;
    }

    void open(Doors doors) {
        doors.look("/fabrication/coat", this::pieces);
        doors.act("/fabrication/coat/queue", this::queue);
        doors.act("/fabrication/coat/step", this::step);
        doors.look("/fabrication/loads", this::loads);
    }

    private Answer pieces(Call call) {
        boolean all = call.said("all").equals("yes");
        String order = call.said("order");
        return workshop.book()
                .read(reading -> Answer.page(
                        order.isEmpty() ? "Pieces in the coating shop" : "Pieces of " + order,
                        "fabrication/coat.jte",
                        new Pieces(Told.of(reading, call), order, all, finishes(reading, order, all), steps())));
    }

    private static List<OfFinish> finishes(Reading reading, String order, boolean all) {
        Map<String, List<Row>> byFinish = reading.shop().pieces(List.of(), order).stream()
                .filter(piece -> all || !piece.state().done())
                .collect(Collectors.groupingBy(
                        Piece::finish, LinkedHashMap::new, Collectors.mapping(CoatPages::row, Collectors.toList())));
        return byFinish.entrySet().stream()
                .map(each -> new OfFinish(each.getKey(), each.getValue()))
                .toList();
    }

    private static Row row(Piece piece) {
        String next = piece.state().next().stream()
                .filter(STEPS::containsKey)
                .map(STEPS::get)
                .collect(Collectors.joining(", "));
        return new Row(
                piece.piece(),
                piece.order(),
                piece.part(),
                piece.state().written(),
                piece.load(),
                piece.again(),
                next.isEmpty() ? "nothing further" : next);
    }

    private static List<Step> steps() {
        return Arrays.stream(Coat.values())
                .filter(STEPS::containsKey)
                .map(to -> new Step(
                        to.written(), Optional.ofNullable(STEPS.get(to)).orElse("")))
                .toList();
    }

    private Answer queue(Call call) {
        Typed typed = new Typed(call);
        List<String> orders = typed.texts("order", "Order", TextShape.ORDER_NAME);
        return Acting.done(
                call,
                "/fabrication/coat",
                by -> typed.sound()
                        .then(ok -> workshop.book().read(reading -> kits.of(reading, orders, call.today())))
                        .then(found -> new CoatDesk(
                                        workshop.book(), by, workshop.bench().catalogue())
                                .queue(found)),
                this::pieces);
    }

    private Answer step(Call call) {
        Typed typed = new Typed(call);
        List<String> pieces = call.all("piece").stream().distinct().toList();
        if (pieces.isEmpty()) {
            typed.fault("piece", "Pieces", "none ticked", "at least one");
        }
        Optional<Coat> to = Arrays.stream(Coat.values())
                .filter(STEPS::containsKey)
                .filter(each -> each.written().equals(call.said("to")))
                .findFirst();
        if (to.isEmpty()) {
            typed.fault("to", "What became of them", "nothing", "one of the steps");
        }
        String load = typed.line("load", "Load or coater");
        String why = typed.sentence("reason", "Reason");
        return Acting.done(
                call,
                "/fabrication/coat",
                by -> typed.sound()
                        .then(ok -> new CoatDesk(
                                        workshop.book(), by, workshop.bench().catalogue())
                                .move(pieces, to.orElseThrow(), load, why)),
                this::pieces);
    }

    /** The plan of the coating shop for some orders together: loads drawn, masks to fetch. */
    private Answer loads(Call call) {
        Typed typed = new Typed(call);
        List<String> orders = typed.texts("order", "Order", TextShape.ORDER_NAME);
        Outcome<List<TradeResult>> planned = typed.sound()
                .then(ok -> workshop.book().read(reading -> kits.of(reading, orders, call.today())))
                .then(found -> new CoatingTrade().work(found, Given.NONE));
        if (!(planned instanceof Outcome.Sound<List<TradeResult>> sound)) {
            return new Answer.Missing(Sentences.missing(planned.faults()));
        }
        if (sound.value().isEmpty()) {
            return new Answer.Missing(CoatingTrade.NOTHING);
        }
        Report report = sound.value().get(0).sheets().get(0).report().get();
        String path = "/fabrication/loads?"
                + orders.stream().map(order -> "order=" + CutPages.coded(order)).collect(Collectors.joining("&"));
        return DrawnSheet.isAsked(call)
                ? DrawnSheet.handed(report, call)
                : Answer.page(
                        "Coat " + String.join(", ", orders),
                        "fabrication/loads.jte",
                        new Loads(orders, DrawnSheet.of(report, call, path, drawn(report))));
    }

    /** What is pre-treated and masked, and how each load hangs. */
    private static String[] drawn(Report report) {
        return report.pages().stream()
                .map(Page::name)
                .filter(name -> name.equals("Batches") || name.startsWith("Run "))
                .toArray(String[]::new);
    }

    /** What the coating shop has or waits for. */
    public record Pieces(List<String> told, String order, boolean all, List<OfFinish> finishes, List<Step> steps) {}

    /** All pieces of one finish. */
    public record OfFinish(String finish, List<Row> rows) {}

    /**
     * One piece.
     *
     * @param next what may become of it, in words
     */
    public record Row(String piece, String order, String part, String state, String load, int again, String next) {}

    /** What may become of pieces. */
    public record Step(String to, String says) {}

    /** The plan of some orders. */
    public record Loads(List<String> orders, DrawnSheet sheet) {}
}
