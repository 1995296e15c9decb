package boltlore.desk.stores;

import boltlore.book.Entry;
import boltlore.book.db.Reading;
import boltlore.book.orders.KitsAtHand;
import boltlore.book.stores.OwedPlan;
import boltlore.desk.frame.Answer;
import boltlore.desk.frame.Call;
import boltlore.desk.frame.Room.Doors;
import boltlore.desk.frame.Sentences;
import boltlore.desk.frame.Stretch;
import boltlore.desk.frame.WorkedOut;
import boltlore.desk.frame.Workshop;
import boltlore.faults.Outcome;
import boltlore.measure.Digits;
import boltlore.netting.Netting;
import boltlore.netting.PlannedReceipt;
import boltlore.trades.buying.ShopPlan;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;

/** What all owed orders lack together, by the day on which it is needed and for whom. */
public final class ShortPages {

    private static final int MOST = 100;
    private static final int MOST_ENTRIES = 1000;

    private final Workshop workshop;
    private final KitsAtHand kits;
    private final WorkedOut<Key, Outcome<Optional<ShopPlan>>> plans = new WorkedOut<>(WorkedOut.SLOW_MS);
    private long seen;
    private long touched;

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
        return workshop.book().read(reading -> {
            Lately lately = lately(reading, call.today());
            Outcome<Stretch<Lacking>> rows = lately.plan()
                    .then(plan -> Outcome.sound(Stretch.of(
                                    plan.map(found -> receipts(reading, found, of, late))
                                            .orElseGet(List::of),
                                    call,
                                    MOST,
                                    "/stores/short?of=" + PickPages.coded(of) + (late ? "&late=yes" : ""))
                            .map(receipt -> row(plan.orElseThrow(), receipt))));
            return rows instanceof Outcome.Sound<Stretch<Lacking>> sound
                    ? Answer.page("Short", "stores/short.jte", new AllShort(lately.note(), of, late, sound.value()))
                    : new Answer.Missing(Sentences.missing(rows.faults()));
        });
    }

    /** The day of a plan, and the last entry that it depends on. */
    private record Key(LocalDate today, long entry) {}

    /**
     * What is short, where it takes long as it was lately.
     *
     * @param note says so; none where it is as it is
     */
    record Lately(Outcome<Optional<ShopPlan>> plan, List<String> note) {}

    Lately lately(Reading reading, LocalDate today) {
        WorkedOut.Shown<Outcome<Optional<ShopPlan>>> shown = plans.of(
                new Key(today, touched(reading)),
                () -> now(reading, today),
                () -> workshop.book().read(again -> now(again, today)));
        return new Lately(
                shown.value()
                        .then(plan -> Outcome.sound(
                                plan.map(found -> found.telling(List.of(), key -> behind(reading, key))))),
                shown.current()
                        ? List.of()
                        : List.of("So it was lately. The book has changed since and the plan is being made anew: look"
                                + " again in a moment."));
    }

    private static SortedMap<String, BigDecimal> behind(Reading reading, String key) {
        SortedMap<String, BigDecimal> orders = reading.dayNeeds().behind(key);
        return orders.isEmpty() ? new TreeMap<>(Map.of("an order that has got it since", BigDecimal.ONE)) : orders;
    }

    private synchronized long touched(Reading reading) {
        long last = reading.journal().last().map(Entry::number).orElse(0L);
        boolean many = last - seen > MOST_ENTRIES;
        if (many || (last > seen && OwedPlan.isTouchedBy(reading.journal().kindsAfter(seen)))) {
            touched = last;
        }
        seen = Math.max(seen, last);
        return touched;
    }

    /** What all owed orders and service orders lack together, as it is now; empty where there are none. */
    Outcome<Optional<ShopPlan>> now(Reading reading, LocalDate today) {
        return OwedPlan.of(reading, workshop.bench().catalogue(), today, orders -> kits.of(reading, orders, today));
    }

    /** First what is needed first; of one part or order where one is named. */
    private static List<PlannedReceipt> receipts(Reading reading, ShopPlan plan, String of, boolean late) {
        Set<String> asked = of.isEmpty() ? Set.of() : reading.dayNeeds().keys(of);
        return plan.netting().planned().stream()
                .filter(receipt -> !late || receipt.lateBy(plan.netting().now()) > 0)
                .filter(receipt -> of.isEmpty()
                        || receipt.item().part().text().equals(of)
                        || (!Collections.disjoint(
                                        plan.netting()
                                                .askedBy(receipt)
                                                .outside()
                                                .keySet(),
                                        asked)
                                && plan.askedBy(receipt).outside().containsKey(of)))
                .sorted(Comparator.comparingInt(PlannedReceipt::due).thenComparing(PlannedReceipt::item))
                .toList();
    }

    private Lacking row(ShopPlan plan, PlannedReceipt receipt) {
        return new Lacking(
                LocalDate.ofEpochDay(receipt.due()).toString(),
                receipt.item().part().text(),
                workshop.names().finish(receipt.item().finish()),
                plan.catalogue().part(receipt.item().part()).name().english(),
                Digits.plain(receipt.quantity()) + " "
                        + plan.catalogue().part(receipt.item().part()).unit(),
                askers(plan.askedBy(receipt)),
                way(plan.verb(receipt), receipt.item().part().text()),
                plan.verb(receipt) + " by " + LocalDate.ofEpochDay(receipt.release()),
                receipt.lateBy(plan.netting().now()));
    }

    private static String way(String verb, String part) {
        return switch (verb) {
            case "order" -> "/stores/purchases";
            case "coat" -> "/fabrication/coat";
            default -> "/stores/made?word=" + PickPages.coded(part);
        };
    }

    private static List<Asker> askers(Netting.Asked asked) {
        List<Asker> askers = new ArrayList<>();
        asked.outside()
                .forEach((order, quantity) ->
                        askers.add(new Asker(order, !order.contains(" "), Digits.plain(quantity))));
        if (asked.stays().signum() > 0) {
            askers.add(new Asker("stock", false, Digits.plain(asked.stays())));
        }
        return askers;
    }

    /** Who asks for how much: an order, or the stores themselves. */
    public record Asker(String of, boolean order, String quantity) {}

    /** What is short, or only what of it should have been begun. */
    public record AllShort(List<String> note, String of, boolean late, Stretch<Lacking> rows) {}

    /**
     * A part that is short.
     *
     * @param needed day as 2026-06-19
     * @param forWhom who asks for it
     * @param way the page on which that is done
     * @param act what is to be done by when
     * @param lateDays days by which that is past due
     */
    public record Lacking(
            String needed,
            String part,
            String finish,
            String name,
            String quantity,
            List<Asker> forWhom,
            String way,
            String act,
            int lateDays) {}
}
