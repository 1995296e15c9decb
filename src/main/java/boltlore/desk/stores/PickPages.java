package boltlore.desk.stores;

import boltlore.book.db.Reading;
import boltlore.book.db.Stock;
import boltlore.book.db.Written;
import boltlore.book.orders.KitStops;
import boltlore.book.orders.KitsAtHand;
import boltlore.book.stores.PickDesk;
import boltlore.book.stores.PickLine;
import boltlore.book.stores.Taken;
import boltlore.catalogue.Tracked;
import boltlore.desk.frame.Acting;
import boltlore.desk.frame.Answer;
import boltlore.desk.frame.Call;
import boltlore.desk.frame.Room.Doors;
import boltlore.desk.frame.Sentences;
import boltlore.desk.frame.Stretch;
import boltlore.desk.frame.Told;
import boltlore.desk.frame.Typed;
import boltlore.desk.frame.Workshop;
import boltlore.faults.Outcome;
import boltlore.json.TextShape;
import boltlore.measure.Digits;
import boltlore.trades.KitInWork;
import boltlore.trades.picking.Walk;
import java.math.BigDecimal;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Picking orders together in walking order: typed, or with a scanner, which is a keyboard that ends with Enter. */
public final class PickPages {

    private static final int MOST = 40;

    private final Workshop workshop;
    private final KitsAtHand kits;
    private final Walk walk;

    PickPages(Workshop workshop, KitsAtHand kits) {
        this.workshop = workshop;
        this.kits = kits;
        this.walk = Walk.of(workshop.bench().catalogue());
    }

    void open(Doors doors) {
        doors.look("/stores/pick", this::list);
        doors.act("/stores/pick/take", this::take);
        doors.act("/stores/pick/shown", this::takeShown);
        doors.act("/stores/complete", this::complete);
    }

    /** Lines of these orders, with what is picked already or without. */
    Outcome<List<PickLine>> lines(Reading reading, List<String> orders, Call call, boolean all) {
        return kits.of(reading, orders, call.today())
                .then(found -> Outcome.sound(found.stream()
                        .flatMap(kit -> PickLine.of(reading, kit).stream())
                        .filter(line -> all || line.left().signum() > 0)
                        .sorted(Comparator.comparing(
                                        (PickLine line) -> line.part().bin(), walk.order())
                                .thenComparing(PickLine::key)
                                .thenComparing(PickLine::order))
                        .toList()));
    }

    Answer list(Call call) {
        Typed typed = new Typed(call);
        List<String> orders = typed.texts("order", "Order", TextShape.ORDER_NAME);
        return workshop.book().read(reading -> {
            Outcome<Answer> page = typed.sound()
                    .then(ok -> lines(reading, orders, call, false))
                    .then(lines -> Outcome.sound(Answer.page(
                            "Pick " + String.join(", ", orders),
                            "stores/pick.jte",
                            pick(reading, call, orders, lines))));
            return shown(page);
        });
    }

    /** Unless all are asked for, those of which something lies here: the others cannot be taken now. */
    private Pick pick(Reading reading, Call call, List<String> orders, List<PickLine> lines) {
        boolean all = call.said("all").equals("yes");
        Map<String, BigDecimal> lying = new HashMap<>();
        reading.stock()
                .all()
                .forEach(row -> lying.merge(
                        Stock.key(row.held().part(), row.held().finish()), row.quantity(), BigDecimal::add));
        List<PickLine> now =
                lines.stream().filter(line -> lying.containsKey(line.key())).toList();
        List<PickLine> asked = all ? lines : now;
        return new Pick(
                Told.of(reading, call),
                KitStops.lines(reading, orders.stream()),
                orders,
                all,
                now.size(),
                lines.size(),
                Stretch.of(asked, call, MOST, pickPath(orders) + (all ? "&all=yes" : ""))
                        .map(line -> row(workshop, reading, line)),
                walked(asked));
    }

    static Answer shown(Outcome<Answer> page) {
        return page instanceof Outcome.Sound<Answer> sound
                ? sound.value()
                : new Answer.Missing(Sentences.missing(page.faults()));
    }

    private String walked(List<PickLine> lines) {
        List<String> bins = lines.stream().map(line -> line.part().bin()).toList();
        return walk.lengths(bins)
                .filter(lengths -> !lines.isEmpty())
                .map(lengths -> "The walk is about " + Math.round(lengths.asListed() / 1000.0) + " m.")
                .orElse("");
    }

    static Row row(Workshop workshop, Reading reading, PickLine line) {
        List<Stock.Row> lying = reading.stock().of(line.part().number().text()).stream()
                .filter(row -> row.held().finish().equals(line.finish()))
                .toList();
        BigDecimal there = lying.stream().map(Stock.Row::quantity).reduce(BigDecimal.ZERO, BigDecimal::add);
        return new Row(
                line.order(),
                line.part().bin().isEmpty() ? "no bin" : line.part().bin(),
                line.part().number().text(),
                line.finish(),
                workshop.names().finish(line.finish()),
                line.part().name().english(),
                line.part().unit(),
                Digits.plain(line.left()),
                Digits.plain(line.left().min(there)),
                Digits.plain(line.got()),
                Digits.plain(there),
                Digits.plain(line.missing()),
                line.missing().signum() > 0,
                line.safety(),
                line.part().tracked() == Tracked.SERIAL,
                lying.stream()
                        .map(row -> row.held().lot())
                        .filter(lot -> !lot.isEmpty())
                        .distinct()
                        .toList());
    }

    private Answer take(Call call) {
        Typed typed = new Typed(call);
        Taken taken = new Taken(
                typed.text("part", "Part", TextShape.PART_NUMBER),
                typed.line("finish", "Finish"),
                pieces(call, typed),
                typed.line("lot", "Lot"),
                typed.list("serial", "Serial number"),
                "",
                "",
                "");
        List<String> orders = typed.texts("order", "Order", TextShape.ORDER_NAME);
        return onLine(
                call, typed, pickPath(orders, call), this::list, (desk, kit) -> desk.take(kit, List.of(taken), ""));
    }

    /** How many the form says, above 0; nothing where it asks for serial numbers, which say it. */
    static @Nullable BigDecimal pieces(Call call, Typed typed) {
        boolean numbered = call.all("quantity").isEmpty()
                ? !call.all("serial").isEmpty()
                : !call.said("serial").isEmpty();
        return numbered && call.said("quantity").isEmpty() ? null : typed.amount("quantity", "Quantity");
    }

    /** All lines of one order that the page showed and that need no number of their own, as they stood there. */
    private Answer takeShown(Call call) {
        Typed typed = new Typed(call);
        List<String> orders = typed.texts("order", "Order", TextShape.ORDER_NAME);
        List<String> parts = typed.texts("part", "Part", TextShape.PART_NUMBER, true);
        List<Taken> taken = new ArrayList<>();
        for (int at = 0; at < parts.size(); at++) {
            taken.add(new Taken(
                    parts.get(at),
                    typed.nth("finish", at),
                    typed.number("quantity", parts.get(at), typed.nth("quantity", at)),
                    typed.nth("lot", at),
                    List.of(),
                    "",
                    "",
                    ""));
        }
        return onLine(call, typed, pickPath(orders, call), this::list, (desk, kit) -> desk.take(kit, taken, ""));
    }

    /** One call of the picking desk for the order that the form names. */
    interface Work<T> {
        Outcome<Written<T>> on(PickDesk desk, KitInWork kit);
    }

    <T> Answer onLine(Call call, Typed typed, String path, Function<Call, Answer> page, Work<T> work) {
        String order = typed.text("for", "Order", TextShape.ORDER_NAME);
        return Acting.done(
                call,
                path,
                by -> typed.sound()
                        .then(ok -> workshop.book().read(reading -> kits.of(reading, order, call.today())))
                        .then(kit -> work.on(new PickDesk(workshop.book(), by), kit)),
                page);
    }

    private Answer complete(Call call) {
        Typed typed = new Typed(call);
        String why = typed.sentence("reason", "Reason");
        List<String> orders = typed.texts("order", "Order", TextShape.ORDER_NAME);
        return onLine(call, typed, pickPath(orders, call), this::list, (desk, kit) -> desk.complete(kit, why));
    }

    private static String pickPath(List<String> orders) {
        return "/stores/pick?"
                + orders.stream().map(order -> "order=" + coded(order)).collect(Collectors.joining("&"));
    }

    /** Where somebody stood in the list, there they go on. */
    static String pickPath(List<String> orders, Call call) {
        String from = call.said(Stretch.FROM);
        return pickPath(orders)
                + (call.said("all").equals("yes") ? "&all=yes" : "")
                + (from.matches("[1-9][0-9]{0,6}") ? "&" + Stretch.FROM + "=" + from : "");
    }

    static String coded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }

    /**
     * What is left of some orders, along the walk.
     *
     * @param all whether those are shown too that cannot be taken now
     * @param now how many can be taken now
     * @param left how many are left
     */
    public record Pick(
            List<String> told,
            List<String> stops,
            List<String> orders,
            boolean all,
            int now,
            int left,
            Stretch<Row> rows,
            String walked) {

        /** The orders as the page is asked for. */
        public String query() {
            return orders.stream().map(order -> "order=" + coded(order)).collect(Collectors.joining("&"));
        }

        /** Lines of an order that are shown and may be taken together, because none needs a number to be read. */
        public List<Row> together(String order) {
            return rows.rows().stream()
                    .filter(row -> row.order().equals(order)
                            && !row.serial()
                            && !row.now().equals("0"))
                    .filter(row -> row.lots().size() <= 1)
                    .toList();
        }
    }

    /**
     * A line to pick.
     *
     * @param now how much of what is left lies there
     * @param lots that lie there, where the lot is written down
     */
    public record Row(
            String order,
            String bin,
            String part,
            String finish,
            String finishSays,
            String name,
            String unit,
            String left,
            String now,
            String got,
            String lies,
            String missing,
            boolean isShort,
            boolean safety,
            boolean serial,
            List<String> lots) {

        public String query() {
            return "for=" + coded(order) + "&part=" + coded(part) + "&finish=" + coded(finish);
        }
    }
}
