package boltlore.desk.bench;

import boltlore.book.OrderStanding;
import boltlore.book.OrderState;
import boltlore.book.db.Reading;
import boltlore.book.orders.KeptFinding;
import boltlore.book.orders.KitsAtHand;
import boltlore.book.orders.OrderDesk;
import boltlore.book.stores.CratesJudged;
import boltlore.book.stores.PackDesk;
import boltlore.book.stores.PackDesk.Count;
import boltlore.desk.frame.Acting;
import boltlore.desk.frame.Answer;
import boltlore.desk.frame.Call;
import boltlore.desk.frame.DrawnSheet;
import boltlore.desk.frame.Room.Doors;
import boltlore.desk.frame.Sentences;
import boltlore.desk.frame.Told;
import boltlore.desk.frame.Typed;
import boltlore.desk.frame.Workshop;
import boltlore.faults.Outcome;
import boltlore.measure.Digits;
import boltlore.measure.Wording;
import boltlore.report.Report;
import boltlore.trades.TradeOption.Given;
import boltlore.trades.shipping.ShippingTrade;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** Bags counted a second time, crates packed and drawn, papers and labels, and the way out. */
public final class ShipPages {

    private static final int MOST_CRATES = 1000;

    private final Workshop workshop;
    private final KitsAtHand kits;

    ShipPages(Workshop workshop, KitsAtHand kits) {
        this.workshop = workshop;
        this.kits = kits;
    }

    void open(Doors doors) {
        doors.look("/bench/pack/{order}", this::bags);
        doors.act("/bench/pack/{order}/count", this::count);
        doors.act("/bench/pack/{order}", this::pack);
        doors.look("/bench/ship/{order}", this::papers);
        doors.act("/bench/ship/{order}", this::ship);
    }

    private Answer bags(Call call) {
        String order = call.path("order");
        return workshop.book().read(reading -> {
            Outcome<Answer> page = kits.of(reading, order, call.today())
                    .then(kit -> Outcome.sound(Answer.page(
                            "Pack " + order,
                            "bench/pack.jte",
                            new Packing(
                                    Told.of(reading, call),
                                    order,
                                    inBags(PackDesk.bags(reading, kit), call),
                                    reading.packing()
                                            .packed(order)
                                            .map(packed -> packed.crates() + " closed"
                                                    + (packed.massKg() == null
                                                            ? ""
                                                            : ", " + Digits.plain(packed.massKg()) + " kg"))
                                            .orElse("not packed"),
                                    planned(CratesJudged.of(kit))))));
            return shown(page);
        });
    }

    private static String planned(CratesJudged plan) {
        return plan.planned()
                + (plan.plannedKg().signum() == 0 ? "" : ", " + Digits.plain(plan.plannedKg()) + " kg gross");
    }

    private static Answer shown(Outcome<Answer> page) {
        return page instanceof Outcome.Sound<Answer> sound
                ? sound.value()
                : new Answer.Missing(Sentences.missing(page.faults()));
    }

    private List<Bag> inBags(List<PackDesk.InBag> all, Call call) {
        Map<String, List<Row>> bags = all.stream()
                .collect(Collectors.groupingBy(
                        PackDesk.InBag::bag,
                        LinkedHashMap::new,
                        Collectors.mapping(one -> row(one, call), Collectors.toList())));
        return bags.entrySet().stream()
                .map(bag -> new Bag(says(bag.getKey()), bag.getValue()))
                .toList();
    }

    /** As people call it; of what is packed loose, its stage. */
    private String says(String bag) {
        Wording says = workshop.bench().catalogue().workshop().bags().get(bag);
        return says == null ? workshop.bench().catalogue().workshop().stageSays(bag, "en") : says.english();
    }

    private Row row(PackDesk.InBag one, Call call) {
        BigDecimal counted = one.counted();
        String stands = counted == null
                ? "not counted"
                : one.right() ? "right" : "WRONG, " + Digits.plain(counted) + " counted";
        int at = call.all("key").indexOf(key(one.bag(), one.part(), one.finish()));
        List<String> typed = call.all("counted");
        return new Row(
                key(one.bag(), one.part(), one.finish()),
                one.part(),
                workshop.bench().named(one.part()),
                workshop.names().finish(one.finish()),
                Digits.plain(one.wanted()) + " " + one.unit(),
                stands,
                at < 0 || at >= typed.size() ? "" : typed.get(at));
    }

    private static String key(String bag, String part, String finish) {
        return bag + "|" + part + "|" + finish;
    }

    private Answer count(Call call) {
        Typed typed = new Typed(call);
        String order = call.path("order");
        String why = typed.sentence("reason", "Remark");
        return Acting.done(
                call,
                "/bench/pack/" + order,
                by -> typed.sound()
                        .then(ok -> workshop.book()
                                .read(reading -> kits.of(reading, order, call.today())
                                        .then(kit -> counts(PackDesk.bags(reading, kit), call)
                                                .then(counts -> Outcome.sound(Map.entry(kit, counts))))))
                        .then(both -> new PackDesk(workshop.book(), by).count(both.getKey(), both.getValue(), why)),
                this::bags);
    }

    private static Outcome<List<Count>> counts(List<PackDesk.InBag> bags, Call call) {
        Typed typed = new Typed(call);
        List<String> keys = call.all("key");
        List<String> said = call.all("counted");
        List<Count> counts = new ArrayList<>();
        for (PackDesk.InBag bag : bags) {
            int at = keys.indexOf(key(bag.bag(), bag.part(), bag.finish()));
            String text = at < 0 || at >= said.size() ? "" : said.get(at);
            if (!text.isEmpty()) {
                counts.add(new Count(
                        bag.bag(),
                        bag.part(),
                        bag.finish(),
                        typed.number("counted", bag.bag() + ", " + bag.part(), text)));
            }
        }
        if (counts.isEmpty()) {
            typed.fault("counted", "Counts", "nothing filled in", "what was counted, of one part at least");
        }
        return typed.sound().then(ok -> Outcome.sound(counts));
    }

    private Answer pack(Call call) {
        Typed typed = new Typed(call);
        String order = call.path("order");
        BigDecimal crates = typed.amount("crates", "Crates");
        boolean whole =
                crates.stripTrailingZeros().scale() <= 0 && crates.compareTo(BigDecimal.valueOf(MOST_CRATES)) <= 0;
        if (!whole) {
            typed.fault("crates", "Crates", call.said("crates"), "a whole number up to " + MOST_CRATES);
        }
        BigDecimal mass = typed.amountOrNone("mass", "Gross mass");
        String why = typed.sentence("reason", "Remark");
        return Acting.done(
                call,
                "/bench/ship/" + order,
                by -> typed.sound()
                        .then(ok -> workshop.book().read(reading -> kits.of(reading, order, call.today())))
                        .then(kit -> new PackDesk(workshop.book(), by)
                                .pack(kit, crates.intValueExact(), mass.signum() == 0 ? null : mass, why)),
                this::bags);
    }

    private Answer papers(Call call) {
        String order = call.path("order");
        return workshop.book().read(reading -> {
            Outcome<Report> report = kits.of(reading, order, call.today())
                    .then(kit -> new ShippingTrade().work(List.of(kit), Given.NONE))
                    .then(results -> Outcome.sound(
                            results.get(0).sheets().get(0).report().get()));
            if (!(report instanceof Outcome.Sound<Report> sound)) {
                return new Answer.Missing(Sentences.missing(report.faults()));
            }
            return DrawnSheet.isAsked(call)
                    ? DrawnSheet.handed(sound.value(), call)
                    : Answer.page(
                            "Ship " + order,
                            "bench/ship.jte",
                            leaving(reading, reading.orders().find(order).orElseThrow(), call, sound.value()));
        });
    }

    /** What a person checks before it leaves, each in the words in which it was found. */
    private static List<String> toCheck(Reading reading, OrderStanding order) {
        return KeptFinding.of(reading, order).stream()
                .filter(KeptFinding::isToCheck)
                .map(KeptFinding::says)
                .toList();
    }

    private Leaving leaving(Reading reading, OrderStanding order, Call call, Report papers) {
        String name = order.name();
        return new Leaving(
                Told.of(reading, call),
                name,
                order.state().written(),
                order.state().owed(),
                reading.packing().packed(name).map(packed -> packed.crates()).orElse(0),
                Hold.of(workshop, reading, order),
                order.state().owed() ? toCheck(reading, order) : List.of(),
                DrawnSheet.of(papers, call, "/bench/ship/" + name + "?", "Crates"));
    }

    private Answer ship(Call call) {
        Typed typed = new Typed(call);
        String why = typed.sentence("reason", "Reason");
        boolean release = call.said("release").equals("yes");
        if (!call.said("gone").equals("yes")) {
            typed.fault("gone", "All its crates", "no tick", "one, once all of them have left");
        }
        return Acting.done(
                call,
                "/bench/ship/" + call.path("order"),
                by -> typed.sound()
                        .then(ok -> new OrderDesk(workshop.book(), by)
                                .move(call.path("order"), OrderState.SHIPPED, release, why)),
                this::papers);
    }

    /**
     * All bags of a kit.
     *
     * @param planned how many crates it is to lie in, and how heavy they are
     */
    public record Packing(List<String> told, String order, List<Bag> bags, String crates, String planned) {}

    /** One bag. */
    public record Bag(String name, List<Row> rows) {}

    /** A part in a bag, and how its second count came out. */
    public record Row(
            String key, String part, String name, String finish, String wanted, String stands, String typed) {}

    /**
     * An order on its way out.
     *
     * @param crates in which it lies; 0 where it is not packed
     * @param holds what keeps it here
     * @param checks what a person checks, in sentences
     */
    public record Leaving(
            List<String> told,
            String order,
            String state,
            boolean owed,
            int crates,
            List<Hold> holds,
            List<String> checks,
            DrawnSheet sheet) {

        /** What nobody may pass. */
        public List<Hold> missing() {
            return holds.stream().filter(hold -> !hold.mayPass()).toList();
        }

        /** What a person may answer for. */
        public List<Hold> toRelease() {
            return holds.stream().filter(Hold::mayPass).toList();
        }
    }
}
