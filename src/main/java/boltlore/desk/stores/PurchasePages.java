package boltlore.desk.stores;

import boltlore.book.PurchaseStanding;
import boltlore.book.PurchaseStanding.LineStanding;
import boltlore.book.stores.PurchaseDesk;
import boltlore.desk.frame.Acting;
import boltlore.desk.frame.Answer;
import boltlore.desk.frame.Call;
import boltlore.desk.frame.DrawnSheet;
import boltlore.desk.frame.Room.Doors;
import boltlore.desk.frame.Sentences;
import boltlore.desk.frame.Told;
import boltlore.desk.frame.Typed;
import boltlore.desk.frame.Workshop;
import boltlore.faults.Fault;
import boltlore.faults.Outcome;
import boltlore.json.TextShape;
import boltlore.measure.Digits;
import boltlore.measure.Money;
import boltlore.report.Report;
import boltlore.trades.buying.PurchaseOrderSheet;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Currency;
import java.util.List;

/** Purchase orders: placed for what is short, printed for the supplier, promised, received, closed. */
public final class PurchasePages {

    private static final int DAYS_AHEAD = 7;

    private final Workshop workshop;
    private final ShortPages lacking;
    private final DeliveryPages deliveries;

    PurchasePages(Workshop workshop, ShortPages lacking) {
        this.workshop = workshop;
        this.lacking = lacking;
        this.deliveries = new DeliveryPages(workshop, lacking);
    }

    void open(Doors doors) {
        doors.look("/stores/purchases", this::list);
        doors.act("/stores/purchases", this::place);
        doors.look("/stores/purchase/{number}", this::one);
        doors.look("/stores/purchase/{number}/sheet", this::sheet);
        doors.act("/stores/purchase/{number}/promise", this::promise);
        doors.act("/stores/purchase/{number}/close", this::close);
        deliveries.open(doors);
    }

    private Answer list(Call call) {
        Typed typed = new Typed(call);
        LocalDate until = call.said("until").isEmpty()
                ? call.today().plusDays(DAYS_AHEAD)
                : typed.day("until", "To be ordered by", call.today());
        boolean all = call.said("all").equals("yes");
        return workshop.book().read(reading -> {
            ShortPages.Lately lately = lacking.lately(reading, call.today());
            Outcome<List<ToOrder>> toOrder = typed.sound().then(ok -> suppliers(lately, until));
            List<ToOrder> suppliers = toOrder instanceof Outcome.Sound<List<ToOrder>> sound ? sound.value() : List.of();
            List<Row> rows = reading.stock().purchases(all).stream()
                    .map(purchase -> row(purchase, call.today()))
                    .toList();
            int known = reading.stock().purchaseCount();
            return Acting.refused(
                    Answer.page(
                            "Purchase orders",
                            "stores/purchases.jte",
                            new Purchases(
                                    Told.of(reading, call),
                                    lately.note(),
                                    rows,
                                    all,
                                    suppliers,
                                    until.toString(),
                                    known,
                                    workshop.bench()
                                            .catalogue()
                                            .workshop()
                                            .currency()
                                            .getCurrencyCode())),
                    toOrder.faults());
        });
    }

    /** What must be ordered of each supplier by a day. */
    private Outcome<List<ToOrder>> suppliers(ShortPages.Lately lately, LocalDate until) {
        return lately.plan()
                .then(plan -> Outcome.sound(ToOrder.of(
                        plan.stream().flatMap(each -> each.purchases().stream()),
                        until,
                        workshop.bench().catalogue().workshop().currency())));
    }

    private static Row row(PurchaseStanding purchase, LocalDate today) {
        List<LineStanding> left = purchase.lines().stream()
                .filter(line -> line.left().signum() > 0)
                .toList();
        LocalDate due =
                left.stream().map(LineStanding::due).min(LocalDate::compareTo).orElse(null);
        return new Row(
                purchase.purchase(),
                purchase.supplier(),
                purchase.on().toString(),
                purchase.lines().size(),
                left.size(),
                due == null ? "" : due.toString(),
                due != null && purchase.open() && due.isBefore(today),
                purchase.open());
    }

    private Answer place(Call call) {
        Typed typed = new Typed(call);
        List<String> suppliers = typed.texts("supplier", "Supplier", TextShape.LINE);
        LocalDate until = typed.day("until", "To be ordered by", call.today());
        int known = typed.count("known", "Purchase orders");
        String why = typed.sentence("reason", "Remark");
        return Acting.done(
                call,
                "/stores/purchases",
                by -> typed.sound()
                        .then(ok -> workshop.book().read(reading -> {
                            reading.notDone(by);
                            return lacking.now(reading, call.today());
                        }))
                        .then(plan -> plan.isEmpty()
                                ? Outcome.faulty(Fault.of("", "no order that is owed", "at least one", ""))
                                : new PurchaseDesk(workshop.book(), by)
                                        .place(plan.get(), known, suppliers, until, why)),
                this::list);
    }

    private Answer one(Call call) {
        return workshop.book().read(reading -> {
            Outcome<PurchaseStanding> found = PurchaseDesk.any(reading, call.path("number"));
            if (!(found instanceof Outcome.Sound<PurchaseStanding> sound)) {
                return new Answer.Missing(Sentences.missing(found.faults()));
            }
            PurchaseStanding purchase = sound.value();
            return Answer.page(
                    purchase.purchase() + " to " + purchase.supplier(),
                    "stores/purchase.jte",
                    new One(
                            Told.of(reading, call),
                            row(purchase, call.today()),
                            purchase.lines().stream()
                                    .map(line -> line(line, purchase, call.today()))
                                    .toList()));
        });
    }

    private Line line(LineStanding line, PurchaseStanding purchase, LocalDate today) {
        return new Line(
                line.part(),
                workshop.bench().named(line.part()),
                line.orderCode(),
                Digits.plain(line.quantity()) + " " + line.unit(),
                Digits.plain(line.received()),
                Digits.plain(line.left()),
                line.due().toString(),
                purchase.open() && line.left().signum() > 0 && line.due().isBefore(today));
    }

    /** As it goes to the supplier, in one of the workshop's languages, and the list for the stores. */
    private Answer sheet(Call call) {
        String number = call.path("number");
        String language = workshop.bench().catalogue().workshop().languages().contains(call.said("language"))
                ? call.said("language")
                : "en";
        Outcome<PurchaseStanding> found = workshop.book().read(reading -> PurchaseDesk.any(reading, number));
        if (!(found instanceof Outcome.Sound<PurchaseStanding> sound)) {
            return new Answer.Missing(Sentences.missing(found.faults()));
        }
        Report report = report(sound.value(), language);
        String path = "/stores/purchase/" + number + "/sheet?language=" + language;
        return DrawnSheet.isAsked(call)
                ? DrawnSheet.handed(report, call)
                : Answer.page(
                        "For " + sound.value().supplier(),
                        "stores/purchase-sheet.jte",
                        new Sheet(
                                number,
                                List.copyOf(
                                        workshop.bench().catalogue().workshop().languages()),
                                language,
                                DrawnSheet.of(report, call, path)));
    }

    private Report report(PurchaseStanding purchase, String language) {
        return PurchaseOrderSheet.compose(
                workshop.bench().catalogue(),
                language,
                new PurchaseOrderSheet.Order(
                        purchase.purchase(),
                        purchase.supplier(),
                        purchase.currency(),
                        purchase.on(),
                        purchase.lines().stream()
                                .map(line -> new PurchaseOrderSheet.OrderLine(
                                        line.part(),
                                        line.orderCode(),
                                        line.quantity(),
                                        line.unit(),
                                        line.unitCost(),
                                        line.due()))
                                .toList()));
    }

    private Answer promise(Call call) {
        Typed typed = new Typed(call);
        String part = typed.text("part", "Part", TextShape.PART_NUMBER);
        LocalDate due = typed.day("due", "Promised for", call.today());
        String why = typed.sentence("reason", "Remark");
        return Acting.done(
                call,
                "/stores/purchase/" + call.path("number"),
                by -> typed.sound()
                        .then(ok -> new PurchaseDesk(workshop.book(), by).promise(call.path("number"), part, due, why)),
                this::one);
    }

    private Answer close(Call call) {
        Typed typed = new Typed(call);
        String why = typed.reason("reason", "Why the rest does not come");
        return Acting.done(
                call,
                "/stores/purchase/" + call.path("number"),
                by -> typed.sound().then(ok -> new PurchaseDesk(workshop.book(), by).close(call.path("number"), why)),
                this::one);
    }

    /**
     * Purchase orders, and what should become some.
     *
     * @param note that they are as they were lately
     * @param known how many there are of all, so that two desks do not buy the same
     */
    public record Purchases(
            List<String> told,
            List<String> note,
            List<Row> rows,
            boolean all,
            List<ToOrder> toOrder,
            String until,
            int known,
            String currency) {

        /** What all of it comes to, in the workshop's currency. */
        public String total() {
            return Money.says(
                    toOrder.stream().map(ToOrder::homeCost).reduce(BigDecimal.ZERO, BigDecimal::add),
                    Currency.getInstance(currency));
        }
    }

    /** A purchase order in a list. */
    public record Row(
            String number, String supplier, String on, int lines, int left, String due, boolean late, boolean open) {}

    /** One purchase order. */
    public record One(List<String> told, Row row, List<Line> lines) {}

    /** A line of it. */
    public record Line(
            String part,
            String name,
            String orderCode,
            String quantity,
            String received,
            String left,
            String due,
            boolean late) {}

    /** As it goes to the supplier. */
    public record Sheet(String number, List<String> languages, String language, DrawnSheet sheet) {}
}
