package boltlore.trades.coating.sheets;

import boltlore.report.Column;
import boltlore.report.Page;
import boltlore.report.PageBuilder;
import boltlore.report.RowBuilder;
import boltlore.report.Table;
import boltlore.report.TableBuilder;
import boltlore.trades.coating.OrderThrough;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/** All orders with the day on which the last of their pieces comes out of the oven. */
final class OrdersPage {

    private static final List<Column> WHO = List.of(
            Column.text("order", "Order"),
            Column.text("customer", "Customer").atMost(30),
            Column.text("need", "In store by"),
            Column.text("round", "Round"),
            Column.whole("pieces", "Pieces in own oven"),
            Column.text("last", "Through after"));
    private static final Column DAY = Column.text("day", "Coated on");
    private static final Column REMARK = Column.text("remark", "Remark").atMost(36);

    private OrdersPage() {}

    static PageBuilder of(CoatJob job, String footer) {
        PageBuilder page = Page.named("Orders").landscape().footer(footer).title("Orders, earliest need first");
        if (job.timetable().known()) {
            page.note("Working days are Monday to Friday, " + job.shop().time().dayMinutes()
                    + " minutes each" + (job.start() == null ? ", counted from day 1" : ", from " + job.start())
                    + ". Each oven takes one load after the other; cleaning the booth is counted in full. Holidays and"
                    + " what goes out to coaters are not in it.");
        }
        return page.add(table(job));
    }

    private static TableBuilder table(CoatJob job) {
        List<Column> columns = new ArrayList<>(WHO);
        columns.addAll(job.timetable().known() ? List.of(DAY, REMARK) : List.of());
        TableBuilder table = Table.named("orders").columns(columns.toArray(Column[]::new));
        List<OrderThrough> orders = job.through();
        orders.forEach(order -> fill(table.row(), order, job));
        long pieces = orders.stream().mapToLong(OrderThrough::pieces).sum();
        table.total("total", "All orders").sum("pieces", BigDecimal.valueOf(pieces));
        return table;
    }

    private static void fill(RowBuilder cells, OrderThrough order, CoatJob job) {
        cells.put("order", order.order().name())
                .put("customer", order.order().customer())
                .put("need", CoatWords.day(order.needBy()))
                .put("round", String.valueOf(order.round()))
                .put("pieces", order.pieces())
                .put("last", order.lastLoad() == 0 ? "no load" : "load " + order.lastLoad());
        if (job.timetable().known()) {
            cells.put("day", job.day(order.day())).put("remark", remark(order, job));
        }
    }

    static String remark(OrderThrough order, CoatJob job) {
        return order.late(job.start()) ? "later than needed: tell sales" : "";
    }
}
