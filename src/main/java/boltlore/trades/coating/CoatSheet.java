package boltlore.trades.coating;

import boltlore.findings.Findings;
import boltlore.order.Order;
import boltlore.report.CautionNotes;
import boltlore.report.Column;
import boltlore.report.FindingsTable;
import boltlore.report.Heading;
import boltlore.report.Look;
import boltlore.report.Page;
import boltlore.report.PageBuilder;
import boltlore.report.Particulars;
import boltlore.report.ParticularsBuilder;
import boltlore.report.Report;
import boltlore.report.ReportBuilder;
import boltlore.report.TableBuilder;
import boltlore.report.TableSpec;
import boltlore.report.Words;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The powder-coat batch sheet of one order, or of several that are coated together. */
final class CoatSheet {

    /** Name of the cautions that stand on the first page where something is coated in our own shop. */
    private static final String IN_OUR_SHOP = "coating-shop";

    static final String FILE = "powder-coat-batch";

    private static final int ORDERS_NAMED = 6;
    private static final int NAMED_IN_FOOTER = 4;

    private static TableSpec<Lot> spec() {
        return TableSpec.<Lot>named("batches")
                .text("what", "Batch or send-out", Lot::what)
                .said("finish", "Finish", 24, Lot::finish)
                .text("where", "Where", 22, Lot::where)
                .text("powder", "Powder", 20, Lot::powder)
                .date("out", "Out by", Lot::out)
                .date("need", "In store by", Lot::need)
                .whole("pieces", "Pieces", "", Lot::pieces)
                .decimal("area", "Area", "m²", 3, Lot::areaM2);
    }

    private static final TableSpec<BatchRow> ON_HOLD = onHold();

    private static TableSpec<BatchRow> onHold() {
        TableSpec<BatchRow> table = CoatWords.named(TableSpec.named("on-hold"), 30, row -> row);
        table.text("revision", "Rev", row -> row.part().revision())
                .said("finish", "Finish", 30, row -> row.finish().says());
        return CoatWords.counted(CoatWords.marked(table, 30, row -> row), row -> row)
                .box(Column.blank("decision", "Left out or kept"))
                .box(Column.signature("by", "Decided by"));
    }

    private CoatSheet() {}

    static Report compose(CoatJob job, Findings findings) {
        CoatPlan plan = job.plan();
        String footer = "Powder-coat batch sheet, " + orders(plan);
        ReportBuilder report = begun(FILE, "Powder-coat batch sheet", job)
                .found(findings)
                .glance(new Heading(orders(plan), Look.TITLE), work(job).build());
        glance(report, job);
        PageBuilder front = front(job, findings, footer);
        if (!plan.batches().isEmpty()) {
            front.also(BatchPage.compose(job, footer));
        }
        report.page(front);
        office(report, job, footer);
        if (!plan.runs().isEmpty()) {
            PageBuilder powders = PowdersPage.compose(job, footer);
            RunPage.all(job, footer).ifPresent(powders::also);
            report.page(powders);
        }
        List<OvenBatch> read =
                plan.batches().stream().filter(batch -> !batch.rows().isEmpty()).toList();
        if (!read.isEmpty()) {
            report.page(FilmPage.compose(read, job, footer));
        }
        plan.sendOuts().forEach(sendOut -> SendOutPage.on(report, sendOut, job.workshop(), footer));
        return report.build();
    }

    /** A workbook of the plan: whose it is, what it is about, how old it is. */
    static ReportBuilder begun(String file, String title, CoatJob job) {
        ReportBuilder report = Report.named(file, title)
                .about(orders(job.plan()))
                .by(job.workshop().name())
                .in(Words.of(job.workshop().language(), CoatSheet.class));
        job.plan().orders().stream()
                .map(Order::placed)
                .filter(Objects::nonNull)
                .max(Comparator.naturalOrder())
                .ifPresent(report::dated);
        return report;
    }

    /** 'Order BL-1001', 'Orders BL-1001, BL-1002', or how many where there are more than fit a footer. */
    static String orders(CoatPlan plan) {
        List<Order> orders = plan.orders();
        if (orders.size() > NAMED_IN_FOOTER) {
            return orders.size() + " orders, " + orders.get(0).name() + " first";
        }
        String names = orders.stream().map(Order::name).collect(Collectors.joining(", "));
        return (orders.size() == 1 ? "Order " : "Orders ") + names;
    }

    /** What a late order moves, or all there is to coat. */
    private static void glance(ReportBuilder report, CoatJob job) {
        LateMoves late = job.late();
        if (late != null) {
            report.glance(
                    OrdersPage.moved(late).build(),
                    OrdersPage.loads().of(late.loads()).build());
        } else if (!lots(job.plan()).isEmpty()) {
            report.glance(spec().of(lots(job.plan())).build());
        }
    }

    /** What is looked at before anything hangs. */
    private static void office(ReportBuilder report, CoatJob job, String footer) {
        CoatPlan plan = job.plan();
        LateMoves late = job.late();
        if (late != null) {
            report.page(OrdersPage.late(job, late, footer));
        }
        if (plan.orders().size() > 1) {
            report.page(OrdersPage.compose(job, footer));
        }
        if (!plan.onHold().isEmpty()) {
            report.page(onHold(plan.onHold(), footer));
        }
    }

    private static PageBuilder front(CoatJob job, Findings findings, String footer) {
        CoatPlan plan = job.plan();
        PageBuilder page = Page.named("Overview").footer(footer);
        page.title("Powder-coat batch sheet").add(head(job));
        cautions(page, job);
        if (plan.isEmpty()) {
            page.note("Nothing in these orders is coated.");
        }
        if (!plan.onHold().isEmpty()) {
            page.note("Some pieces are on hold and not to be coated: see the page 'On hold'.");
        }
        if (!plan.runs().isEmpty()) {
            page.heading("Booth and oven").add(work(job));
        }
        if (!lots(plan).isEmpty()) {
            page.heading("Batches and send-outs, earliest need first").add(overview(plan));
        }
        FindingsTable.add(page, findings, job.workshop().language());
        return page.signatures("Released to the coating shop by", "Taken over by");
    }

    /** Those that the kits ask for, and where we coat those that the workshop wants on every batch. */
    private static void cautions(PageBuilder page, CoatJob job) {
        boolean own = !job.plan().batches().isEmpty();
        if (own) {
            CautionNotes.always(
                    page, IN_OUR_SHOP, job.workshop(), job.workshop().language());
        }
        List<String> codes = job.workshop().cautionsOf(job.plan().cautions()).stream()
                .filter(caution -> !own || !caution.always().contains(IN_OUR_SHOP))
                .map(caution -> caution.code())
                .toList();
        CautionNotes.add(page, codes, job.workshop(), "Caution", job.workshop().language());
    }

    private static ParticularsBuilder head(CoatJob job) {
        String workshop = job.workshop().name() + ", " + job.workshop().place();
        ParticularsBuilder head = Particulars.named("orders").say("workshop", "Workshop", workshop);
        List<OrderThrough> orders = job.through();
        if (orders.size() > ORDERS_NAMED) {
            return head.say("orders", "Orders", orders.size() + ", see the page 'Orders'");
        }
        orders.forEach(order -> {
            String name = order.order().name();
            head.say("order-" + name, "Order " + name, "coated and in store by " + CoatWords.day(order.needBy()));
            if (!order.order().notes().isEmpty()) {
                head.say("notes-" + name, "Notes on " + name, order.order().notes());
            }
        });
        return head;
    }

    /** The whole plan in a few figures. */
    private static ParticularsBuilder work(CoatJob job) {
        CoatPlan plan = job.plan();
        int least = plan.rounds().stream().mapToInt(Round::leastLoads).sum();
        long loads = plan.loads().count();
        ParticularsBuilder work = Particulars.named("work")
                .say("runs", "Runs of one powder", String.valueOf(plan.runs().size()))
                .say("change-overs", "Colour changes", plan.changeOvers() + PowdersPage.costOfChanges(job))
                .say("loads", "Oven loads", loads + " (at least " + least + " are needed)");
        return job.timetable().known() && loads > 0
                ? work.say("through", "Through on", job.day(job.timetable().days()))
                : work;
    }

    private static List<Lot> lots(CoatPlan plan) {
        List<Lot> lots = new ArrayList<>();
        plan.batches().forEach(batch -> lots.add(Lot.of(batch)));
        plan.sendOuts().forEach(sendOut -> lots.add(Lot.of(sendOut)));
        return lots.stream().sorted(Lot.EARLIEST_NEED).toList();
    }

    private static TableBuilder overview(CoatPlan plan) {
        List<Lot> lots = lots(plan);
        TableBuilder table = spec().box(Column.tick("done", "Done"))
                .besideThePaper()
                .text("cure", "Cure window", 22, Lot::cure)
                .of(lots);
        table.total("total", "Total")
                .sum(
                        "pieces",
                        BigDecimal.valueOf(lots.stream().mapToInt(Lot::pieces).sum()))
                .sum("area", lots.stream().map(Lot::areaM2).reduce(BigDecimal.ZERO, BigDecimal::add));
        return table;
    }

    private static PageBuilder onHold(List<BatchRow> rows, String footer) {
        TableBuilder table = ON_HOLD.of(rows);
        int pieces = rows.stream().mapToInt(BatchRow::pieces).sum();
        table.total("total", "On hold").sum("pieces", BigDecimal.valueOf(pieces));
        return Page.named("On hold")
                .landscape()
                .footer(footer)
                .title("On hold: do not coat")
                .note(
                        "These brackets support nothing in their kit, and nobody has decided yet whether they are left out or"
                                + " kept. They are in no batch, load or send-out until this sheet is issued again.")
                .add(table);
    }

    static Stream<ChangeOver> changes(CoatPlan plan) {
        return plan.runs().stream().map(PowderRun::changeOver).filter(Objects::nonNull);
    }
}
