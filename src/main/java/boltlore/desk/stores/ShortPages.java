package boltlore.desk.stores;

import boltlore.book.db.Reading;
import boltlore.book.orders.KitsAtHand;
import boltlore.book.stores.OwedPlan;
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
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;

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
        Outcome<Stretch<Lacking>> rows = workshop.book()
                .read(reading -> plan(reading, kits, workshop, call.today())
                        .then(plan -> Outcome.sound(Stretch.of(
                                        plan.map(found -> receipts(reading, found, of, late))
                                                .orElseGet(List::of),
                                        call,
                                        MOST,
                                        "/stores/short?of=" + PickPages.coded(of) + (late ? "&late=yes" : ""))
                                .map(receipt -> row(plan.orElseThrow(), receipt)))));
        return rows instanceof Outcome.Sound<Stretch<Lacking>> sound
                ? Answer.page("Short", "stores/short.jte", new AllShort(of, late, sound.value()))
                : new Answer.Missing(Sentences.missing(rows.faults()));
    }

    /** What all owed orders and service orders lack together; empty where there are none. */
    static Outcome<Optional<ShopPlan>> plan(Reading reading, KitsAtHand kits, Workshop workshop, LocalDate today) {
        return OwedPlan.of(reading, workshop.bench().catalogue(), today, orders -> kits.of(reading, orders, today))
                .then(plan -> Outcome.sound(plan.map(found -> found.telling(List.of(), reading.needs()::behind))));
    }

    /** First what is needed first; of one part or order where one is named. */
    private static List<PlannedReceipt> receipts(Reading reading, ShopPlan plan, String of, boolean late) {
        Set<String> asked = of.isEmpty() ? Set.of() : reading.needs().keys(of);
        return plan.netting().planned().stream()
                .filter(receipt -> !late || receipt.lateBy(plan.netting().now()) > 0)
                .filter(receipt -> of.isEmpty()
                        || receipt.item().part().text().equals(of)
                        || !Collections.disjoint(
                                        plan.netting()
                                                .askedBy(receipt)
                                                .outside()
                                                .keySet(),
                                        asked)
                                && plan.askedBy(receipt).outside().containsKey(of))
                .sorted(Comparator.comparingInt(PlannedReceipt::due).thenComparing(PlannedReceipt::item))
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
            String act,
            int lateDays) {}
}
