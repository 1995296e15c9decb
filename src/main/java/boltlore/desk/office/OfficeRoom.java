package boltlore.desk.office;

import boltlore.book.ChangeState;
import boltlore.book.OrderStanding;
import boltlore.book.OrderState;
import boltlore.book.QuotedVersion;
import boltlore.book.db.Needs;
import boltlore.book.db.Reading;
import boltlore.book.orders.KitsAtHand;
import boltlore.book.orders.Margins;
import boltlore.catalogue.Part;
import boltlore.desk.frame.Answer;
import boltlore.desk.frame.Call;
import boltlore.desk.frame.DrawnSheet;
import boltlore.desk.frame.OrderRow;
import boltlore.desk.frame.Role;
import boltlore.desk.frame.Room;
import boltlore.desk.frame.Sentences;
import boltlore.desk.frame.Workshop;
import boltlore.desk.stores.DueIn;
import boltlore.faults.Outcome;
import boltlore.measure.Digits;
import boltlore.measure.PartNumber;
import boltlore.report.Report;
import boltlore.trades.TradeResult;
import boltlore.trades.scheduling.SchedulingTrade;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** The room that owns the day: what is due, late, short and waiting, and what the month has earned. */
public final class OfficeRoom implements Room {

    private static final int SOON_DAYS = 14;
    private static final int MOST = 200;
    private static final int MOST_SHORT = 12;
    private static final int MOST_LATE = 40;
    private static final int MOST_NAMED = 4;
    private static final List<OrderState> OWED =
            OrderState.ALL.stream().filter(OrderState::owed).toList();

    private final Workshop workshop;
    private final KitsAtHand kits;

    public OfficeRoom(Workshop workshop, KitsAtHand kits) {
        this.workshop = workshop;
        this.kits = kits;
    }

    @Override
    public Role role() {
        return Role.OWNER;
    }

    @Override
    public String path() {
        return "/office";
    }

    @Override
    public String says() {
        return "Office";
    }

    @Override
    public void open(Doors doors) {
        doors.look("/office", this::morning);
        doors.look("/office/load", this::load);
        new RecordPages(workshop).open(doors);
    }

    private Answer morning(Call call) {
        return workshop.book().read(reading -> {
            List<OrderRow> owed = OrderRow.list(reading, OWED, call.today());
            String soon = call.today().plusDays(SOON_DAYS).toString();
            List<Needs.Lacking> lacking = reading.needs().lacking(Integer.MAX_VALUE);
            return Answer.page(
                    "This morning",
                    "office/today.jte",
                    new Morning(
                            owed.stream().filter(OrderRow::late).toList(),
                            owed.stream()
                                    .filter(order -> !order.late()
                                            && !order.due().isEmpty()
                                            && order.due().compareTo(soon) <= 0)
                                    .toList(),
                            owed.size(),
                            lacking.stream()
                                    .limit(MOST_SHORT)
                                    .map(item -> lacks(reading, item))
                                    .toList(),
                            lacking.size(),
                            DueIn.all(reading, call.today()).stream()
                                    .filter(DueIn::late)
                                    .limit(MOST_LATE)
                                    .toList(),
                            waiting(reading, call.today()),
                            margins(reading, call.today())));
        });
    }

    /** As the sums of the book have it: the dated plan resolves every owed kit, and takes its time. */
    private Lacks lacks(Reading reading, Needs.Lacking item) {
        List<String> orders = reading.needs().forWhom(item.part(), item.finish()).stream()
                .map(Needs.Open::order)
                .distinct()
                .toList();
        Part part = workshop.bench().catalogue().parts().get(new PartNumber(item.part()));
        return new Lacks(
                item.first().toString(),
                item.part(),
                item.finish(),
                part == null ? "" : part.name().english(),
                Digits.plain(item.lacks()) + (part == null ? "" : " " + part.unit()),
                orders.stream().limit(MOST_NAMED).collect(Collectors.joining(", "))
                        + (orders.size() > MOST_NAMED ? " and " + (orders.size() - MOST_NAMED) + " more" : ""));
    }

    /** What waits for somebody, in sentences. */
    private static List<String> waiting(Reading reading, LocalDate today) {
        List<String> waiting = new ArrayList<>();
        for (OrderStanding order : reading.orders().in(List.of(OrderState.QUOTED), MOST)) {
            List<QuotedVersion> versions = reading.orders().quotations(order.name());
            LocalDate until = versions.get(versions.size() - 1).offer().validUntil();
            if (!until.isAfter(today.plusDays(SOON_DAYS))) {
                waiting.add("The quotation of " + order.name() + (until.isBefore(today) ? " ran" : " runs") + " out on "
                        + until + ".");
            }
        }
        reading.changes()
                .in(ChangeState.PROPOSED)
                .forEach(change ->
                        waiting.add("Change " + change.number() + " of " + change.order() + " waits for a decision."));
        reading.changes()
                .in(ChangeState.ACCEPTED)
                .forEach(change -> waiting.add(
                        "Change " + change.number() + " of " + change.order() + " is accepted and not carried out."));
        for (OrderStanding order : reading.orders().in(OWED, MOST)) {
            if (order.state() == OrderState.ORDERED) {
                waiting.add("Work on " + order.name() + " has not begun.");
            } else if (order.state() == OrderState.TESTED) {
                waiting.add(order.name() + " is tested and has not left.");
            }
            reading.shop().records(order.name()).stream()
                    .reduce((earlier, later) -> later)
                    .filter(record -> !record.passed())
                    .ifPresent(record ->
                            waiting.add("The last " + record.of() + " record of " + order.name() + " is not passed."));
        }
        return waiting;
    }

    private static List<MarginRow> margins(Reading reading, LocalDate today) {
        return Margins.since(
                        reading,
                        today.withDayOfMonth(1).atStartOfDay(ZoneOffset.UTC).toInstant())
                .stream()
                .map(margin -> new MarginRow(
                        margin.family(),
                        margin.orders(),
                        margin.net().toPlainString() + " " + margin.currency(),
                        margin.full().toPlainString() + " " + margin.currency(),
                        margin.margin().toPlainString() + " " + margin.currency(),
                        margin.percent().toPlainString() + " %"))
                .toList();
    }

    /** The load of each week, drawn, and the same in figures. */
    private Answer load(Call call) {
        Outcome<List<TradeResult>> planned = workshop.book()
                .read(reading -> kits.owed(reading, call.today()))
                .then(owed -> owed.isEmpty()
                        ? Outcome.sound(List.of())
                        : new SchedulingTrade().work(owed, SchedulingTrade.from(call.today())));
        if (!(planned instanceof Outcome.Sound<List<TradeResult>> sound)) {
            return new Answer.Missing(Sentences.missing(planned.faults()));
        }
        if (sound.value().isEmpty() || sound.value().get(0).sheets().isEmpty()) {
            return new Answer.Missing("No order is owed, or nobody has said which hours the work centres have.");
        }
        Report report = sound.value().get(0).sheets().get(0).report().get();
        return DrawnSheet.isAsked(call)
                ? DrawnSheet.handed(report, call)
                : Answer.page(
                        "Load of the weeks",
                        "office/load.jte",
                        new Load(
                                late(call.today()),
                                DrawnSheet.of(report, call, "/office/load?", "Load", "Load in figures")));
    }

    /**
     * The morning's list.
     *
     * @param soon due within two weeks
     * @param lacking the first parts that are short, of so many
     */
    public record Morning(
            List<OrderRow> late,
            List<OrderRow> soon,
            int owed,
            List<Lacks> lacking,
            int lackingAll,
            List<DueIn> overdue,
            List<String> waiting,
            List<MarginRow> margins) {}

    /** A part that is short, and for which orders. */
    public record Lacks(String needed, String part, String finish, String name, String quantity, String forWhom) {}

    /** What the month's orders of one kit leave above their full cost. */
    public record MarginRow(String family, int orders, String net, String full, String margin, String percent) {}

    private List<OrderRow> late(LocalDate today) {
        return workshop.book().read(reading -> OrderRow.list(reading, OWED, today)).stream()
                .filter(OrderRow::late)
                .toList();
    }

    /**
     * The weeks from this one on.
     *
     * @param late what should have been finished before it
     */
    public record Load(List<OrderRow> late, DrawnSheet sheet) {}
}
