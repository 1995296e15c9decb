package boltlore.desk.fabrication;

import boltlore.book.OrderState;
import boltlore.book.ShopHappening.Coat;
import boltlore.book.db.Reading;
import boltlore.book.db.Shop.Piece;
import boltlore.book.orders.KitStops;
import boltlore.book.orders.KitsAtHand;
import boltlore.book.stores.CoatDesk;
import boltlore.catalogue.CoatedWhere;
import boltlore.catalogue.Finish;
import boltlore.catalogue.PowderCoat;
import boltlore.desk.frame.Acting;
import boltlore.desk.frame.Answer;
import boltlore.desk.frame.Call;
import boltlore.desk.frame.DrawnSheet;
import boltlore.desk.frame.OrderRow;
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
import java.util.stream.Stream;

/** The coating shop: which pieces stand where, and the loads that they hang in, drawn. */
public final class CoatPages {

    /** What a hand on the shop floor says, and where the piece stands then. */
    private static final List<OrderState> OWED =
            OrderState.ALL.stream().filter(OrderState::owed).toList();

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
        return workshop.book().read(reading -> page(reading, call, order, all));
    }

    private Answer page(Reading reading, Call call, String order, boolean all) {
        List<OfFinish> finishes = finishes(reading, order, all);
        Stream<String> orders =
                finishes.stream().flatMap(finish -> finish.rows().stream().map(Row::order));
        return Answer.page(
                order.isEmpty() ? "Pieces in the coating shop" : "Pieces of " + order,
                "fabrication/coat.jte",
                new Pieces(
                        Told.of(reading, call),
                        KitStops.lines(reading, orders),
                        order,
                        all,
                        finishes,
                        steps(),
                        OrderRow.list(workshop, reading, OWED, call.today())));
    }

    /** Which powder it is, or who puts it on: what hangs together has one of them. */
    private String putOn(String name) {
        Finish finish = workshop.bench().catalogue().finishes().get(name);
        if (finish == null) {
            return "";
        }
        return by(finish);
    }

    private static String by(Finish finish) {
        if (finish.where() instanceof CoatedWhere.OutsideByArea byArea) {
            return "goes out to " + byArea.coater();
        }
        return finish.where() instanceof CoatedWhere.OutsideByPiece byPiece
                ? "goes out to " + byPiece.coater()
                : "powder " + finish.coats().stream().map(PowderCoat::powder).collect(Collectors.joining(", then "));
    }

    private List<OfFinish> finishes(Reading reading, String order, boolean all) {
        Map<String, List<Row>> byFinish = reading.shop().pieces(List.of(), order).stream()
                .filter(piece -> all || !piece.state().done())
                .collect(Collectors.groupingBy(
                        Piece::finish, LinkedHashMap::new, Collectors.mapping(this::row, Collectors.toList())));
        return byFinish.entrySet().stream()
                .map(each -> new OfFinish(
                        each.getKey(), workshop.names().finish(each.getKey()), putOn(each.getKey()), each.getValue()))
                .toList();
    }

    private Row row(Piece piece) {
        String next = piece.state().next().stream()
                .filter(STEPS::containsKey)
                .map(STEPS::get)
                .collect(Collectors.joining(", "));
        return new Row(
                piece.piece(),
                piece.order(),
                workshop.bench().named(piece.part()),
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
        Optional<Coat> to = Arrays.stream(Coat.values())
                .filter(STEPS::containsKey)
                .filter(each -> each.written().equals(call.said("to")))
                .findFirst();
        if (to.isEmpty()) {
            typed.fault("to", "What became of them", "nothing", "one of the steps");
        }
        List<String> pieces = ticked(call, to);
        if (pieces.isEmpty()) {
            typed.fault("piece", "Pieces", "none ticked that may go there", "at least one");
        }
        String load = typed.line("load", "Load or coater");
        String why = typed.sentence("reason", "Reason");
        String order = call.said("order");
        return Acting.done(
                call,
                "/fabrication/coat" + (order.isEmpty() ? "" : "?order=" + CutPages.coded(order)),
                by -> typed.sound()
                        .then(ok -> new CoatDesk(
                                        workshop.book(), by, workshop.bench().catalogue())
                                .move(pieces, to.orElseThrow(), load, why)),
                this::pieces);
    }

    /** Each that is ticked, and of finishes that are ticked as a whole all that may go there. */
    private List<String> ticked(Call call, Optional<Coat> to) {
        List<String> finishes = call.all("finish");
        List<String> ofFinishes = finishes.isEmpty()
                ? List.of()
                : workshop.book()
                        .read(reading -> reading.shop().pieces(List.of(), call.said("order")).stream()
                                .filter(piece -> finishes.contains(piece.finish())
                                        && to.isPresent()
                                        && piece.state().next().contains(to.get()))
                                .map(Piece::piece)
                                .toList());
        return Stream.concat(call.all("piece").stream(), ofFinishes.stream())
                .distinct()
                .toList();
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
    public record Pieces(
            List<String> told,
            List<String> stops,
            String order,
            boolean all,
            List<OfFinish> finishes,
            List<Step> steps,
            List<OrderRow> owed) {}

    /**
     * All pieces of one finish.
     *
     * @param putOn its powder, or the coater that it goes out to
     */
    public record OfFinish(String finish, String says, String putOn, List<Row> rows) {}

    /**
     * One piece.
     *
     * @param name of its part
     * @param next what may become of it, in words
     */
    public record Row(String piece, String order, String name, String state, String load, int again, String next) {}

    /** What may become of pieces. */
    public record Step(String to, String says) {}

    /** The plan of some orders. */
    public record Loads(List<String> orders, DrawnSheet sheet) {}
}
