package boltlore.desk.office;

import boltlore.book.OrderStanding;
import boltlore.book.OrderState;
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
import boltlore.desk.frame.WorkedOut;
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
import java.util.Map;
import java.util.Optional;

/** The room that owns the day: what is due, late, short and waiting, and what the month has earned. */
public final class OfficeRoom implements Room {

    private static final int SOON_DAYS = 14;
    private static final int MOST_SHORT = 12;
    private static final int MOST_LATE = 40;
    private static final int MOST_NAMED = 4;

    /** So many orders a plan of the weeks can be read of. */
    private static final int MOST_PLANNED = 40;

    private static final List<OrderState> OWED =
            OrderState.ALL.stream().filter(OrderState::owed).toList();

    private final Workshop workshop;
    private final KitsAtHand kits;
    private final Margins margins = new Margins();
    private final WorkedOut<Planned, Outcome<Optional<Report>>> loads = new WorkedOut<>(WorkedOut.SLOW_MS);

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
            List<OrderRow> owed = OrderRow.list(workshop, reading, OWED, call.today());
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
                            owed(reading),
                            lacking.stream()
                                    .limit(MOST_SHORT)
                                    .map(item -> lacks(reading, item))
                                    .toList(),
                            lacking.size(),
                            DueIn.all(reading, call.today()).stream()
                                    .filter(DueIn::late)
                                    .limit(MOST_LATE)
                                    .toList(),
                            Waits.all(reading, call.today(), SOON_DAYS),
                            margins(reading, call.today())));
        });
    }

    /** As the sums of the book have it: the dated plan resolves every owed kit, and takes its time. */
    private Lacks lacks(Reading reading, Needs.Lacking item) {
        Needs.Askers orders = reading.needs().askers(item.part(), item.finish(), MOST_NAMED);
        Part part = workshop.bench().catalogue().parts().get(new PartNumber(item.part()));
        return new Lacks(
                item.first().toString(),
                item.part(),
                workshop.names().finish(item.finish()),
                part == null ? "" : part.name().english(),
                Digits.plain(item.lacks()) + (part == null ? "" : " " + part.unit()),
                orders.first(),
                Math.max(0, orders.all() - orders.first().size()));
    }

    private List<MarginRow> margins(Reading reading, LocalDate today) {
        return margins
                .since(
                        reading,
                        today.withDayOfMonth(1).atStartOfDay(ZoneOffset.UTC).toInstant())
                .stream()
                .map(margin -> new MarginRow(
                        workshop.names().kit(margin.family()),
                        margin.orders(),
                        margin.net().toPlainString() + " " + margin.currency(),
                        margin.full().toPlainString() + " " + margin.currency(),
                        margin.margin().toPlainString() + " " + margin.currency(),
                        margin.percent().toPlainString() + " %"))
                .toList();
    }

    /** What a plan of the weeks depends on. */
    private record Planned(List<OrderStanding> orders, LocalDate today) {}

    private Outcome<Optional<Report>> planned(List<OrderStanding> orders, LocalDate today) {
        return workshop.book()
                .read(reading -> kits.ofAll(reading, orders, today))
                .then(owed -> owed.isEmpty()
                        ? Outcome.<List<TradeResult>>sound(List.of())
                        : new SchedulingTrade().work(owed, SchedulingTrade.from(today)))
                .then(results -> Outcome.sound(results.stream()
                        .flatMap(result -> result.sheets().stream())
                        .map(sheet -> sheet.report().get())
                        .findFirst()));
    }

    /** The weeks' load takes seconds of the first who asks for it. */
    @Override
    public void ahead(LocalDate today) {
        loads(today);
    }

    private WorkedOut.Shown<Outcome<Optional<Report>>> loads(LocalDate today) {
        List<OrderStanding> first =
                workshop.book().read(reading -> reading.orders().in(OWED, MOST_PLANNED));
        return loads.of(new Planned(first, today), () -> planned(first, today));
    }

    /** The load of each week by the orders that are due first, drawn, and the same in figures. */
    private Answer load(Call call) {
        WorkedOut.Shown<Outcome<Optional<Report>>> shown = loads(call.today());
        if (!(shown.value() instanceof Outcome.Sound<Optional<Report>> sound)) {
            return new Answer.Missing(Sentences.missing(shown.value().faults()));
        }
        if (sound.value().isEmpty()) {
            return new Answer.Missing("No order is owed, or nobody has said which hours the work centres have.");
        }
        Report report = sound.value().get();
        return DrawnSheet.isAsked(call)
                ? DrawnSheet.handed(report, call)
                : Answer.page(
                        "Load of the weeks",
                        "office/load.jte",
                        new Load(
                                notes(shown.current()),
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
            List<Waits> waiting,
            List<MarginRow> margins) {}

    /** A part that is short, and for which orders. */
    public record Lacks(
            String needed, String part, String finish, String name, String quantity, List<String> orders, int more) {}

    /** What the month's orders of one kit leave above their full cost. */
    public record MarginRow(String kit, int orders, String net, String full, String margin, String percent) {}

    private static int owed(Reading reading) {
        return Math.toIntExact(reading.orders().counts().entrySet().stream()
                .filter(state -> state.getKey().owed())
                .mapToLong(Map.Entry::getValue)
                .sum());
    }

    /** What the plan leaves out, and whether it is being made anew. */
    private List<String> notes(boolean current) {
        int owed = workshop.book().read(OfficeRoom::owed);
        List<String> notes = new ArrayList<>();
        if (owed > MOST_PLANNED) {
            notes.add("Planned are the " + MOST_PLANNED + " orders that are due first, of " + owed
                    + ": hours that they leave are not free, the others need them.");
        }
        if (!current) {
            notes.add("So it was lately. The book has changed since and the plan is being made anew: look again in a"
                    + " moment.");
        }
        return notes;
    }

    private List<OrderRow> late(LocalDate today) {
        return workshop.book().read(reading -> OrderRow.list(workshop, reading, OWED, today)).stream()
                .filter(OrderRow::late)
                .toList();
    }

    /**
     * The weeks from this one on.
     *
     * @param notes what the plan leaves out
     * @param late what should have been finished before it
     */
    public record Load(List<String> notes, List<OrderRow> late, DrawnSheet sheet) {}
}
