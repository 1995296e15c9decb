package boltlore.book.stores;

import boltlore.book.BuiltHappening.Worked;
import boltlore.book.By;
import boltlore.book.PurchaseHappening;
import boltlore.book.PurchaseStanding;
import boltlore.book.db.Book;
import boltlore.book.db.Reading;
import boltlore.book.db.Writing;
import boltlore.book.db.Written;
import boltlore.catalogue.Offer;
import boltlore.catalogue.Part;
import boltlore.faults.Fault;
import boltlore.faults.Outcome;
import boltlore.measure.Digits;
import boltlore.measure.Money;
import boltlore.measure.PartNumber;
import boltlore.netting.PlanningData.ScheduledReceipt;
import boltlore.netting.StockItem;
import boltlore.trades.buying.PurchaseLine;
import boltlore.trades.buying.ShopPlan;
import boltlore.trades.buying.StoresNow;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Currency;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** What all owed orders lack, and purchase orders for it. */
public final class PurchaseDesk {

    static final int FIRST = 1001;

    private final Book book;
    private final By by;

    public PurchaseDesk(Book book, By by) {
        this.book = book;
        this.by = by;
    }

    /**
     * The stores as netting sees them: what lies there, what is still to come. A receipt that is overdue is expected today.
     */
    static StoresNow now(Reading reading, LocalDate today) {
        Map<StockItem, BigDecimal> onHand = new TreeMap<>();
        reading.stock()
                .all()
                .forEach(row ->
                        onHand.merge(item(row.held().part(), row.held().finish()), row.quantity(), BigDecimal::add));
        Map<StockItem, List<ScheduledReceipt>> coming = new HashMap<>();
        reading.stock()
                .purchases(false)
                .forEach(purchase -> purchase.lines().stream()
                        .filter(line -> line.left().signum() > 0)
                        .forEach(line -> coming.computeIfAbsent(item(line.part(), ""), any -> new ArrayList<>())
                                .add(receipt(purchase, line, today))));
        return new StoresNow(today, onHand, coming);
    }

    private static ScheduledReceipt receipt(
            PurchaseStanding purchase, PurchaseStanding.LineStanding line, LocalDate today) {
        LocalDate expected = line.due().isBefore(today) ? today : line.due();
        return new ScheduledReceipt(purchase.purchase(), Math.toIntExact(expected.toEpochDay()), line.left());
    }

    static StockItem item(String part, String finish) {
        return new StockItem(new PartNumber(part), finish);
    }

    /**
     * Places purchase orders for what the plan asks of some suppliers, one each.
     *
     * @param known purchase orders that there were when the plan was made
     * @param suppliers of all where none is named
     * @param until what must be ordered by then goes out with it
     */
    public Outcome<Written<List<PurchaseStanding>>> place(
            ShopPlan plan, int known, List<String> suppliers, LocalDate until, String reason) {
        SortedMap<String, List<PurchaseLine>> bySupplier = plan.purchases().stream()
                .filter(line -> !line.supplier().isEmpty() && !line.orderBy().isAfter(until))
                .filter(line -> suppliers.isEmpty() || suppliers.contains(line.supplier()))
                .collect(Collectors.groupingBy(PurchaseLine::supplier, TreeMap::new, Collectors.toList()));
        List<Fault> unknown = suppliers.stream()
                .filter(name -> !bySupplier.containsKey(name))
                .map(name -> Fault.of(
                        "",
                        "the supplier '" + name + "'",
                        bySupplier.isEmpty()
                                ? "a supplier of whom something must be ordered by " + until
                                : String.join(", ", bySupplier.keySet()),
                        "'boltlore stock short' says what is needed when; --until looks further."))
                .toList();
        return book.write(
                by,
                writing -> asPlanned(writing, known)
                        .then(there -> unknown.isEmpty()
                                ? place(writing, plan, there, bySupplier, reason)
                                : Outcome.faulty(unknown)));
    }

    /** How many purchase orders there are, as the plan was made with. */
    private static Outcome<Integer> asPlanned(Writing writing, int known) {
        int there = writing.stock().purchaseCount();
        return there == known
                ? Outcome.sound(there)
                : Outcome.faulty(Fault.of(
                        "",
                        "purchase orders that were placed since this was worked out: "
                                + String.join("; ", OwedPlan.placedSince(writing, known)),
                        "those that the plan was made with",
                        "Look again at what is short; nothing was placed."));
    }

    private Outcome<List<PurchaseStanding>> place(
            Writing writing,
            ShopPlan plan,
            int there,
            SortedMap<String, List<PurchaseLine>> bySupplier,
            String reason) {
        int next = FIRST + there;
        List<PurchaseStanding> placed = new ArrayList<>();
        for (Map.Entry<String, List<PurchaseLine>> supplier : bySupplier.entrySet()) {
            String number = "PO-" + next++;
            writing.add(
                    new PurchaseHappening.Placed(
                            number,
                            supplier.getKey(),
                            supplier.getValue().get(0).currency().getCurrencyCode(),
                            by.today(),
                            lines(supplier.getValue(), by.today())),
                    reason);
            supplier.getValue().forEach(line -> bought(writing, plan, line));
            placed.add(writing.stock().purchase(number).orElseThrow());
        }
        return Outcome.sound(placed);
    }

    /** A part that is needed several times stands once, at the price of all of it, for the earliest day. */
    private static List<PurchaseHappening.Line> lines(List<PurchaseLine> lines, LocalDate today) {
        SortedMap<PartNumber, List<PurchaseLine>> byPart = lines.stream()
                .collect(Collectors.groupingBy(line -> line.part().number(), TreeMap::new, Collectors.toList()));
        return byPart.values().stream().map(ofPart -> line(ofPart, today)).toList();
    }

    /**
     * What a purchase order comes to before tax.
     *
     * @param cost in the supplier's currency
     * @param home in the workshop's
     */
    public record Sum(BigDecimal cost, BigDecimal home) {}

    /**
     * What these lines come to as one purchase order.
     *
     * @param lines of one supplier
     * @param home currency of the workshop
     * @return line by line at the price of all of a part, rounded to the minor unit
     */
    public static Sum sum(List<PurchaseLine> lines, Currency home) {
        BigDecimal cost = BigDecimal.ZERO;
        BigDecimal inHome = BigDecimal.ZERO;
        for (List<PurchaseLine> ofPart : lines.stream()
                .collect(Collectors.groupingBy(line -> line.part().number(), TreeMap::new, Collectors.toList()))
                .values()) {
            BigDecimal quantity = quantity(ofPart);
            Sum each = each(ofPart);
            cost = cost.add(
                    Money.rounded(quantity.multiply(each.cost()), ofPart.get(0).currency()));
            inHome = inHome.add(Money.rounded(quantity.multiply(each.home()), home));
        }
        return new Sum(cost, inHome);
    }

    private static BigDecimal quantity(List<PurchaseLine> ofPart) {
        return ofPart.stream().map(PurchaseLine::quantity).reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    /** One of the part, at the price of all of it. */
    private static Sum each(List<PurchaseLine> ofPart) {
        Part part = ofPart.get(0).part();
        List<Offer> offers = part.buying() == null ? List.of() : part.buying().offers();
        if (offers.isEmpty()) {
            return new Sum(part.cost(), part.cost());
        }
        Offer.PriceBreak price = offers.get(0).at(quantity(ofPart));
        return new Sum(price.cost(), price.homeCost());
    }

    private static PurchaseHappening.Line line(List<PurchaseLine> ofPart, LocalDate today) {
        PurchaseLine first = ofPart.get(0);
        Part part = first.part();
        LocalDate due = ofPart.stream()
                .map(line -> comes(line, today))
                .min(LocalDate::compareTo)
                .orElseThrow();
        return new PurchaseHappening.Line(
                part.number().text(),
                first.orderCode(),
                quantity(ofPart),
                part.unit(),
                each(ofPart).cost(),
                due);
    }

    /** When it is needed; where it is ordered too late for that, as soon as its lead time lets it come. */
    private static LocalDate comes(PurchaseLine line, LocalDate today) {
        LocalDate soonest = today.plusDays(ChronoUnit.DAYS.between(line.orderBy(), line.neededOn()));
        return soonest.isAfter(line.neededOn()) ? soonest : line.neededOn();
    }

    private static void bought(Writing writing, ShopPlan plan, PurchaseLine line) {
        plan.telling(plan.orders(), key -> behind(writing, key)).askedBy(line.receipt()).outside().entrySet().stream()
                .filter(asked -> !asked.getKey().isEmpty())
                .forEach(asked -> writing.add(
                        new Worked(
                                asked.getKey(),
                                line.part().number().text(),
                                line.part().revision(),
                                "",
                                "bought",
                                asked.getValue()),
                        ""));
    }

    /** As it is when the order is placed; where nobody asks any more it is bought for nobody. */
    private static SortedMap<String, BigDecimal> behind(Reading reading, String key) {
        SortedMap<String, BigDecimal> orders = reading.dayNeeds().behind(key);
        return orders.isEmpty() ? new TreeMap<>(Map.of("", BigDecimal.ONE)) : orders;
    }

    /** Notes the day that a supplier has named. */
    public Outcome<Written<PurchaseStanding>> promise(String number, String part, LocalDate due, String reason) {
        return book.write(
                by,
                writing -> open(writing, number).then(purchase -> {
                    if (purchase.lines().stream().noneMatch(line -> line.part().equals(part))) {
                        return Outcome.faulty(Fault.of(
                                "purchase order " + number,
                                "part " + part + ", which is not on it",
                                purchase.lines().stream()
                                        .map(PurchaseStanding.LineStanding::part)
                                        .collect(Collectors.joining(", ")),
                                ""));
                    }
                    writing.add(new PurchaseHappening.Promised(number, part, due), reason);
                    return open(writing, number);
                }));
    }

    /** Says that the rest will not come. */
    public Outcome<Written<PurchaseStanding>> close(String number, String reason) {
        return book.write(
                by,
                writing -> open(writing, number).then(purchase -> {
                    if (reason.isBlank()) {
                        String left = purchase.lines().stream()
                                .filter(line -> line.left().signum() > 0)
                                .map(line -> Digits.plain(line.left()) + " of " + line.part())
                                .collect(Collectors.joining(", "));
                        return Outcome.faulty(Fault.of(
                                "purchase order " + number,
                                "no reason",
                                "why " + left + " will not come",
                                "Add --reason."));
                    }
                    writing.add(new PurchaseHappening.Closed(number), reason);
                    return Outcome.sound(writing.stock().purchase(number).orElseThrow());
                }));
    }

    /** A purchase order, open or closed. */
    public static Outcome<PurchaseStanding> any(Reading reading, String number) {
        return reading.stock()
                .purchase(number)
                .map(Outcome::sound)
                .orElseGet(() -> Outcome.faulty(Fault.of(
                        "",
                        "the purchase order '" + number + "'",
                        "one of the book",
                        "'boltlore purchase list --all' shows them.")));
    }

    /** A purchase order of which something is still to come. */
    public static Outcome<PurchaseStanding> open(Reading reading, String number) {
        return reading.stock()
                .purchase(number)
                .filter(PurchaseStanding::open)
                .map(Outcome::sound)
                .orElseGet(() -> Outcome.faulty(Fault.of(
                        "",
                        "the purchase order '" + number + "'",
                        "one of which something is still to come",
                        "'boltlore purchase list' shows them.")));
    }
}
