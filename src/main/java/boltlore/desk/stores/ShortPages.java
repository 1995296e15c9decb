package boltlore.desk.stores;

import boltlore.book.db.Reading;
import boltlore.book.orders.KitsAtHand;
import boltlore.book.stores.PurchaseDesk;
import boltlore.desk.frame.Answer;
import boltlore.desk.frame.Call;
import boltlore.desk.frame.Room.Doors;
import boltlore.desk.frame.Sentences;
import boltlore.desk.frame.Stretch;
import boltlore.desk.frame.Workshop;
import boltlore.faults.Outcome;
import boltlore.measure.Digits;
import boltlore.netting.PlannedReceipt;
import boltlore.trades.buying.ShopPlan;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** What all owed orders lack together, by the day on which it is needed and for whom. */
public final class ShortPages {

    private static final int MOST = 100;

    private final Workshop workshop;
    private final KitsAtHand kits;

    ShortPages(Workshop workshop, KitsAtHand kits) {
        this.workshop = workshop;
        this.kits = kits;
    }

    void open(Doors doors) {
        doors.look("/stores/short", this::all);
    }

    private Answer all(Call call) {
        String of = call.said("of");
        boolean late = call.said("late").equals("yes");
        Outcome<List<Lacking>> rows = workshop.book()
                .read(reading -> rows(reading, kits, workshop, call.today()))
                .then(all -> Outcome.sound(all.stream()
                        .filter(row -> !late || row.lateDays() > 0)
                        .filter(row -> of.isEmpty()
                                || row.part().equals(of)
                                || row.orders().contains(of))
                        .toList()));
        return rows instanceof Outcome.Sound<List<Lacking>> sound
                ? Answer.page(
                        "Short",
                        "stores/short.jte",
                        new AllShort(
                                of,
                                late,
                                Stretch.of(
                                        sound.value(),
                                        call,
                                        MOST,
                                        "/stores/short?of=" + PickPages.coded(of) + (late ? "&late=yes" : ""))))
                : new Answer.Missing(Sentences.missing(rows.faults()));
    }

    /** What all owed orders and service orders lack together; empty where there are none. */
    static Outcome<Optional<ShopPlan>> plan(Reading reading, KitsAtHand kits, Workshop workshop, LocalDate today) {
        return kits.owed(reading, today)
                .then(owed -> Outcome.sound(
                        owed.isEmpty() && reading.needs().afterShipping().isEmpty()
                                ? Optional.empty()
                                : Optional.of(ShopPlan.of(
                                        owed, workshop.bench().catalogue(), PurchaseDesk.now(reading, owed, today)))));
    }

    /** First what is needed first; none where no order is owed. */
    public static Outcome<List<Lacking>> rows(Reading reading, KitsAtHand kits, Workshop workshop, LocalDate today) {
        return plan(reading, kits, workshop, today)
                .then(plan -> Outcome.sound(plan.map(ShortPages::rows).orElseGet(List::of)));
    }

    private static List<Lacking> rows(ShopPlan plan) {
        return plan.netting().planned().stream()
                .sorted(Comparator.comparingInt(PlannedReceipt::due).thenComparing(PlannedReceipt::item))
                .map(receipt -> row(plan, receipt))
                .toList();
    }

    private static Lacking row(ShopPlan plan, PlannedReceipt receipt) {
        return new Lacking(
                LocalDate.ofEpochDay(receipt.due()).toString(),
                receipt.item().part().text(),
                receipt.item().finish(),
                plan.catalogue().part(receipt.item().part()).name().english(),
                Digits.plain(receipt.quantity()) + " "
                        + plan.catalogue().part(receipt.item().part()).unit(),
                plan.forWhom(receipt),
                List.copyOf(plan.netting().askedBy(receipt).outside().keySet()),
                plan.verb(receipt) + " by " + LocalDate.ofEpochDay(receipt.release()),
                receipt.lateBy(plan.netting().now()));
    }

    /** What is short, or only what of it should have been begun. */
    public record AllShort(String of, boolean late, Stretch<Lacking> rows) {}

    /**
     * A part that is short.
     *
     * @param needed day as 2026-06-19
     * @param forWhom 'BL-1001 4, stock 2'
     * @param act what is to be done by when
     * @param lateDays days by which that is past due
     */
    public record Lacking(
            String needed,
            String part,
            String finish,
            String name,
            String quantity,
            String forWhom,
            List<String> orders,
            String act,
            int lateDays) {}
}
