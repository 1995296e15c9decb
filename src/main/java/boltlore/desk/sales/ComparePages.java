package boltlore.desk.sales;

import boltlore.answers.Comparison;
import boltlore.asking.KitFigures;
import boltlore.book.KitDifference;
import boltlore.book.Offer;
import boltlore.book.OrderStanding;
import boltlore.book.OrderState;
import boltlore.book.db.Reading;
import boltlore.book.orders.OrderDesk;
import boltlore.book.orders.VersionsDiffer;
import boltlore.catalogue.Option;
import boltlore.choices.Choice;
import boltlore.choosing.ConflictWords;
import boltlore.desk.frame.Answer;
import boltlore.desk.frame.Call;
import boltlore.desk.frame.OrderRow;
import boltlore.desk.frame.Room.Doors;
import boltlore.desk.frame.Sentences;
import boltlore.desk.frame.Workshop;
import boltlore.desk.sheets.Kits;
import boltlore.faults.Outcome;
import boltlore.measure.Digits;
import boltlore.trades.KitInWork;
import boltlore.trades.TradeOption;
import boltlore.trades.costing.quote.OrderPricing;
import boltlore.trades.costing.quote.QuoteOptions;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Currency;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;

/** What differs: between two versions of a quotation, and between two orders side by side. */
public final class ComparePages {

    private final Workshop workshop;
    private final Kits kits;

    ComparePages(Workshop workshop) {
        this.workshop = workshop;
        this.kits = new Kits(workshop);
    }

    void open(Doors doors) {
        doors.look("/sales/compare", this::compare);
        doors.look(SalesRoom.ORDER + "{order}/versions/{version}", this::version);
    }

    /**
     * Two versions of one order.
     *
     * @param says what the order says otherwise
     * @param parts what comes in and goes out
     */
    public record Versions(
            String number,
            int before,
            int after,
            String netBefore,
            String netAfter,
            int daysBefore,
            int daysAfter,
            List<String> says,
            List<Part> parts,
            boolean sameCatalogue) {}

    /** How many of a part there are in each. */
    public record Part(String part, String unit, String before, String after) {}

    private Answer version(Call call) {
        String order = call.path("order");
        int after = call.path("version").matches("[0-9]{1,5}") ? Integer.parseInt(call.path("version")) : 0;
        Outcome<VersionsDiffer> differ =
                workshop.book().read(reading -> VersionsDiffer.of(reading, order, after - 1, after));
        if (!(differ instanceof Outcome.Sound<VersionsDiffer> sound)) {
            return new Answer.Missing(Sentences.of(differ.faults()).get(0));
        }
        VersionsDiffer between = sound.value();
        List<Part> parts = between.kit().changes().stream().map(this::part).toList();
        return Answer.page(
                order + ": what changed from version " + (after - 1) + " to " + after,
                "sales/versions-differ.jte",
                new Versions(
                        order,
                        after - 1,
                        after,
                        net(between.before().offer()),
                        net(between.after().offer()),
                        between.before().offer().leadDays(),
                        between.after().offer().leadDays(),
                        said(order, between),
                        parts,
                        between.sameCatalogue()));
    }

    private List<String> said(String order, VersionsDiffer between) {
        String family = workshop.book()
                .read(reading -> reading.orders().find(order).orElseThrow().family());
        return between.said().stream()
                .map(said -> workshop.names().said(family, said))
                .toList();
    }

    private Part part(KitDifference.Change change) {
        return new Part(
                workshop.names().piece(change.piece()),
                change.unit(),
                Digits.plain(change.before()),
                Digits.plain(change.after()));
    }

    private static String net(Offer offer) {
        return KitFigures.money(Currency.getInstance(offer.currency()), offer.net());
    }

    /**
     * Two orders side by side.
     *
     * @param orders to choose from, open ones first; others may be typed
     * @param why something cannot be compared, in sentences
     */
    public record SideBySide(
            List<OrderRow> orders, String one, String other, List<Line> lines, List<Part> parts, List<String> why) {}

    /** What each of two orders says of one thing. */
    public record Line(String of, String one, String other) {
        public boolean differs() {
            return !one.equals(other);
        }
    }

    private Answer compare(Call call) {
        List<OrderRow> orders = workshop.book().read(reading -> offered(reading, call));
        String one = call.said("one");
        String other = call.said("other");
        if (one.isEmpty() || other.isEmpty()) {
            return page(new SideBySide(orders, one, other, List.of(), List.of(), List.of()));
        }
        Outcome<SideBySide> both = kit(call, one)
                .then(first -> kit(call, other).then(second -> Outcome.sound(sideBySide(orders, first, second))));
        return page(
                both instanceof Outcome.Sound<SideBySide> sound
                        ? sound.value()
                        : new SideBySide(orders, one, other, List.of(), List.of(), Sentences.of(both.faults())));
    }

    /** What somebody has in hand: open orders first, then those that are owed. */
    private List<OrderRow> offered(Reading reading, Call call) {
        return Stream.<Predicate<OrderState>>of(OrderState::open, OrderState::owed)
                .map(which -> OrderState.ALL.stream().filter(which).toList())
                .flatMap(states -> OrderRow.list(workshop, reading, states, call.today()).stream())
                .distinct()
                .toList();
    }

    private static Answer page(SideBySide page) {
        return Answer.page("Two orders side by side", "sales/compare.jte", page);
    }

    private Outcome<KitInWork> kit(Call call, String order) {
        Outcome<OrderStanding> standing = workshop.book().read((Reading reading) -> OrderDesk.standing(reading, order));
        return standing.then(found -> kits.of(found, call.today()));
    }

    private SideBySide sideBySide(List<OrderRow> orders, KitInWork first, KitInWork second) {
        List<Line> lines = new ArrayList<>(figures(first, second));
        Set<String> asked = new LinkedHashSet<>();
        first.order().choices().family().options().forEach(option -> asked.add(option.asks()));
        second.order().choices().family().options().forEach(option -> asked.add(option.asks()));
        asked.forEach(asks -> lines.add(new Line(asks, says(first, asks), says(second, asks))));
        List<Part> parts = Comparison.of(first.bill(), second.bill()).changes().entrySet().stream()
                .map(change -> new Part(
                        workshop.names()
                                .piece(new KitDifference.Piece(
                                        change.getKey().part().text(),
                                        change.getKey().revision(),
                                        change.getKey().finish())),
                        first.catalogue().part(change.getKey().part()).unit(),
                        Digits.plain(change.getValue().before()),
                        Digits.plain(change.getValue().after())))
                .toList();
        return new SideBySide(
                orders, first.order().name(), second.order().name(), List.copyOf(lines), parts, List.of());
    }

    private static List<Line> figures(KitInWork first, KitInWork second) {
        OrderPricing one = QuoteOptions.pricing(first, TradeOption.Given.NONE);
        OrderPricing other = QuoteOptions.pricing(second, TradeOption.Given.NONE);
        return List.of(
                new Line("Price before tax", price(one), price(other)),
                new Line("Mass of the kit", mass(one), mass(other)),
                new Line("Lead time", one.leadDays() + " days", other.leadDays() + " days"));
    }

    private static String price(OrderPricing pricing) {
        return pricing.quotation().map(KitFigures::beforeTax).orElseGet(pricing::whyNoPrice);
    }

    private static String mass(OrderPricing pricing) {
        return pricing.costed()
                        .totals()
                        .massKg()
                        .setScale(1, RoundingMode.HALF_UP)
                        .toPlainString() + " kg";
    }

    private static String says(KitInWork kit, String asks) {
        ConflictWords words = new ConflictWords(kit.order().choices().family());
        return kit.order().choices().family().options().stream()
                .filter(option -> option.asks().equals(asks))
                .findFirst()
                .map(Option::name)
                .flatMap(name -> kit.order().choices().value(name).map(value -> words.says(new Choice(name, value))))
                .orElse("–");
    }
}
