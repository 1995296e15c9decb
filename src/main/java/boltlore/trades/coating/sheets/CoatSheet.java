package boltlore.trades.coating.sheets;

import boltlore.bill.Bill;
import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Workshop;
import boltlore.order.Order;
import boltlore.report.Workbook;
import boltlore.report.WorkbookBuilder;
import boltlore.trades.coating.CoatPlan;
import boltlore.trades.coating.CoatPlanner;
import boltlore.trades.coating.LateMoves;
import boltlore.trades.coating.SendOut;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;

/** The powder-coat batch sheet of one order, or of several that are coated together. */
public final class CoatSheet {

    public static final String FILE = "powder-coat-batch";

    private static final int NAMED_IN_FOOTER = 4;

    private CoatSheet() {}

    /** At least one bill; none of them may stop its sheets. */
    public static Workbook of(List<Bill> bills, Catalogue catalogue) {
        return of(CoatPlanner.of(bills, catalogue), catalogue);
    }

    public static Workbook of(CoatPlan plan, Catalogue catalogue) {
        return of(CoatJob.of(plan, catalogue));
    }

    public static Workbook of(CoatJob job) {
        CoatPlan plan = job.plan();
        String footer = "Powder-coat batch sheet, " + orders(plan);
        WorkbookBuilder workbook = Workbook.of(FILE, "Powder-coat batch sheet")
                .about(orders(plan))
                .by(job.workshop().name());
        placed(plan).ifPresent(workbook::dated);
        workbook.page(FrontPage.of(job, footer));
        pages(workbook, job, footer);
        return workbook.build();
    }

    private static void pages(WorkbookBuilder workbook, CoatJob job, String footer) {
        office(workbook, job, footer);
        CoatPlan plan = job.plan();
        plan.batches().forEach(batch -> workbook.page(BatchPage.of(batch, plan, job.shop(), footer)));
        plan.runs().forEach(run -> RunPage.on(workbook, run, job, footer));
        plan.batches().stream()
                .filter(batch -> !batch.rows().isEmpty())
                .forEach(batch -> workbook.page(FilmPage.of(batch, footer)));
        plan.sendOuts().forEach(sendOut -> pages(workbook, sendOut, job.workshop(), footer));
    }

    /** What is looked at before anything hangs. */
    private static void office(WorkbookBuilder workbook, CoatJob job, String footer) {
        CoatPlan plan = job.plan();
        LateMoves late = job.late();
        if (late != null) {
            workbook.page(LatePage.of(job, late, footer));
        }
        if (plan.orders().size() > 1) {
            workbook.page(OrdersPage.of(job, footer));
        }
        if (!plan.heldBack().isEmpty()) {
            workbook.page(HeldBackPage.of(plan.heldBack(), footer));
        }
        if (!plan.runs().isEmpty()) {
            workbook.page(PowdersPage.of(job, footer));
        }
    }

    private static void pages(WorkbookBuilder workbook, SendOut sendOut, Workshop workshop, String footer) {
        workbook.page(SendOutPage.of(sendOut, workshop, footer));
        if (EarthTable.speaksOf(sendOut.rows())) {
            workbook.page(SendOutPage.back(sendOut, footer));
        }
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

    /** The day of the latest order: the sheet cannot be older. */
    static Optional<LocalDate> placed(CoatPlan plan) {
        return plan.orders().stream()
                .map(Order::placed)
                .filter(Objects::nonNull)
                .max(Comparator.naturalOrder());
    }
}
