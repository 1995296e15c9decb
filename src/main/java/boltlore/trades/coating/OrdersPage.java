package boltlore.trades.coating;

import boltlore.report.Column;
import boltlore.report.Kind;
import boltlore.report.Page;
import boltlore.report.PageBuilder;
import boltlore.report.Particulars;
import boltlore.report.ParticularsBuilder;
import boltlore.report.TableBuilder;
import boltlore.report.TableSpec;
import boltlore.trades.coating.LateMoves.LoadMove;
import boltlore.trades.coating.LateMoves.OrderMove;
import java.math.BigDecimal;
import java.util.List;

/** All orders with the day on which the last of their pieces leaves the oven, and what a late order moves. */
final class OrdersPage {

    /** Loads that change. */
    static TableSpec<LoadMove> loads() {
        return TableSpec.<LoadMove>named("late-loads")
                .text("load", "Load", move -> String.valueOf(move.after().number()))
                .text("run", "Run", move -> String.valueOf(move.run().number()))
                .text("powder", "Powder", move -> move.run().powder())
                .text("change", "Change", move -> move.before() == null ? "new load" : "takes more")
                .whole("before", "Pieces before", "", OrdersPage::before)
                .whole("more", "More pieces", "", LoadMove::morePieces);
    }

    private OrdersPage() {}

    static PageBuilder compose(CoatJob job, String footer) {
        PageBuilder page = Page.named("Orders").landscape().footer(footer).title("Orders, earliest need first");
        if (job.timetable().known()) {
            page.note("Working days are Monday to Friday, " + job.shop().time().dayMinutes()
                    + " minutes each" + (job.start() == null ? ", counted from day 1" : ", from " + job.start())
                    + ". Each oven takes one load after the other; cleaning the booth is counted in full. Holidays and"
                    + " what goes out to coaters are not in it.");
        }
        List<OrderThrough> orders = job.through();
        TableBuilder table = orders(job).of(orders);
        long pieces = orders.stream().mapToLong(OrderThrough::pieces).sum();
        table.total("total", "All orders").sum("pieces", BigDecimal.valueOf(pieces));
        return page.add(table);
    }

    private static TableSpec<OrderThrough> orders(CoatJob job) {
        TableSpec<OrderThrough> orders = TableSpec.<OrderThrough>named("orders")
                .text("order", "Order", order -> order.order().name())
                .text("customer", "Customer", 30, order -> order.order().customer())
                .text("need", "In store by", order -> CoatWords.day(order.needBy()))
                .text("round", "Round", order -> String.valueOf(order.round()))
                .whole("pieces", "Pieces in own oven", "", OrderThrough::pieces)
                .text("last", "Through after", order -> order.lastLoad() == 0 ? "no load" : "load " + order.lastLoad());
        return job.timetable().known()
                ? orders.text("day", "Coated on", order -> job.day(order.day()))
                        .text(
                                "remark",
                                "Remark",
                                order -> order.late(job.start()) ? "later than needed: tell sales" : "")
                : orders;
    }

    static PageBuilder late(CoatJob job, LateMoves moves, String footer) {
        PageBuilder page = Page.named("Late order").landscape().footer(footer);
        page.title("Late order " + moves.late().name() + ": what it moves")
                .add(moved(moves))
                .note("Nothing that is planned is hung elsewhere.");
        page.heading("Loads that change")
                .add(loads().box(Column.tick("told", "Customer informed")).of(moves.loads()));
        if (job.timetable().known()) {
            page.heading("Orders whose day changes").add(lateOrders(job).of(moves.orders()));
        }
        return page.signatures("Passed on to the coating shop by");
    }

    /** A late order in a few figures. */
    static ParticularsBuilder moved(LateMoves moves) {
        int more = (int)
                moves.loads().stream().filter(move -> move.before() != null).count();
        int others = (int)
                moves.orders().stream().filter(move -> move.before() != null).count();
        ParticularsBuilder moved =
                Particulars.named("late").say("late", "Late order", moves.late().name());
        whole(moved, "loads-with-more", "Loads that take more", more);
        whole(moved, "loads-new", "New loads", moves.loads().size() - more);
        whole(
                moved,
                "runs-new",
                "New runs",
                moves.after().runs().size() - moves.planned().runs().size());
        whole(moved, "orders-moved", "Other orders moved", others);
        whole(moved, "loads-before", "Loads before", (int)
                moves.planned().loads().count());
        whole(moved, "loads-now", "Loads now", (int) moves.after().loads().count());
        return whole(moved, "loads-afresh", "Loads if replanned", moves.loadsAfresh());
    }

    private static ParticularsBuilder whole(ParticularsBuilder moved, String key, String label, int number) {
        return moved.say(key, label, Kind.whole(), BigDecimal.valueOf(number));
    }

    private static int before(LoadMove move) {
        OvenLoad before = move.before();
        return before == null ? 0 : before.pieces();
    }

    private static TableSpec<OrderMove> lateOrders(CoatJob job) {
        return TableSpec.<OrderMove>named("late-orders")
                .text("order", "Order", move -> move.after().order().name())
                .text("need", "In store by", move -> CoatWords.day(move.after().needBy()))
                .text("before", "Coated before", move -> {
                    OrderThrough before = move.before();
                    return before == null ? "not planned" : job.day(before.day());
                })
                .text("after", "Coated now", move -> job.day(move.after().day()))
                .text("remark", "Remark", 40, move -> remark(move, job))
                .box(Column.tick("told", "Customer informed"));
    }

    private static String remark(OrderMove move, CoatJob job) {
        OrderThrough before = move.before();
        boolean late = move.after().late(job.start());
        if (before == null) {
            return late ? "the late order, later than needed: tell sales" : "the late order";
        }
        return !late
                ? ""
                : before.late(job.start()) ? "later than needed as before" : "now later than needed: tell sales";
    }
}
