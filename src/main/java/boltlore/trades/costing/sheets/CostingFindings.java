package boltlore.trades.costing.sheets;

import static boltlore.trades.costing.sheets.CostingFinding.BUYING_RATE_OLD;
import static boltlore.trades.costing.sheets.CostingFinding.DISCOUNT_ABOVE_AGREED;
import static boltlore.trades.costing.sheets.CostingFinding.DUE_DATE_TOO_SOON;
import static boltlore.trades.costing.sheets.CostingFinding.LOSS;
import static boltlore.trades.costing.sheets.CostingFinding.MARGIN_BELOW_TARGET;
import static boltlore.trades.costing.sheets.CostingFinding.NO_PRICE;
import static boltlore.trades.costing.sheets.CostingFinding.ORDER_BY_DATE_PAST;

import boltlore.catalogue.Part;
import boltlore.catalogue.PartnerTerms;
import boltlore.catalogue.PriceBook;
import boltlore.catalogue.Profit;
import boltlore.findings.Finding;
import boltlore.findings.Findings;
import boltlore.findings.Kind;
import boltlore.measure.Money;
import boltlore.order.Order;
import boltlore.trades.KitFinding;
import boltlore.trades.costing.CostedBill;
import boltlore.trades.costing.path.LeadPath;
import boltlore.trades.costing.path.Slot;
import boltlore.trades.costing.path.Step;
import boltlore.trades.costing.quote.Calculation;
import boltlore.trades.costing.quote.OrderPricing;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Currency;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Holds the price of an order against its full cost and what is agreed, and its lead time against the time there is. */
final class CostingFindings {

    private static final String PRICE = "price";
    private static final String LEAD_TIME = "lead time";
    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);

    /** A price that is rounded to a step may miss the target by this much, in points: our own choice. */
    private static final BigDecimal ROUNDING = new BigDecimal("0.1");

    private final List<Finding> all = new ArrayList<>();

    private CostingFindings() {}

    /** @param on the day of the quotation, on which everything may be ordered */
    static Findings find(OrderPricing pricing, LocalDate on) {
        CostingFindings findings = new CostingFindings();
        pricing.found().ifPresentOrElse(findings::price, () -> findings.noPrice(pricing));
        findings.rates(pricing.costed(), on);
        Order order = pricing.costed().bill().order();
        if (order.due() != null) {
            findings.dates(pricing.path(), on, order.due());
        }
        return new Findings(findings.all);
    }

    /** The newest rate of a currency that preferred offers are in converts all of them. */
    private void rates(CostedBill costed, LocalDate on) {
        PriceBook prices = costed.catalogue().prices();
        Map<Currency, List<String>> bought = costed.rows().stream()
                .filter(row -> !row.insideBought())
                .map(row -> row.item().part())
                .filter(part -> part.buying() != null && !part.buying().offers().isEmpty())
                .collect(Collectors.groupingBy(
                        part -> Objects.requireNonNull(part.buying())
                                .offers()
                                .get(0)
                                .currency(),
                        () -> new TreeMap<>(Comparator.comparing(Currency::getCurrencyCode)),
                        Collectors.collectingAndThen(
                                Collectors.mapping(part -> part.number().text(), Collectors.toCollection(TreeSet::new)),
                                List::copyOf)));
        if (prices != null) {
            bought.forEach((currency, parts) -> prices.newestRate(currency)
                    .filter(rate -> !rate.holdsOn(on))
                    .ifPresent(rate -> add(
                            BUYING_RATE_OLD,
                            currency.getCurrencyCode(),
                            "currency",
                            currency.getCurrencyCode(),
                            "from",
                            rate.date(),
                            "on",
                            on,
                            "parts",
                            parts)));
        }
    }

    private void noPrice(OrderPricing pricing) {
        if (pricing.costed().catalogue().prices() == null) {
            add(KitFinding.NOT_JUDGED, PRICE, "trade", "Price", "file", "workshop/pricing.json");
            return;
        }
        pricing.calculation()
                .faults()
                .forEach(fault -> add(
                        NO_PRICE,
                        PRICE,
                        "file",
                        fault.file(),
                        "found",
                        fault.found(),
                        "expected",
                        fault.expected(),
                        "advice",
                        fault.advice()));
    }

    private void price(Calculation calculation) {
        discount(calculation);
        Currency home = calculation.cost().costed().currency();
        if (calculation.left().signum() < 0) {
            BigDecimal below = Money.rounded(calculation.left().negate(), home);
            BigDecimal cost = calculation.cost().total();
            add(LOSS, PRICE, "currency", home.getCurrencyCode(), "below", below, "cost", cost);
            return;
        }
        BigDecimal margin = calculation.marginLeftPercent();
        BigDecimal target = target(calculation.profit());
        if (margin.add(ROUNDING).compareTo(target) < 0) {
            add(MARGIN_BELOW_TARGET, PRICE, "margin", margin, "target", target);
        }
    }

    /** More than is agreed for this order, or else with the partner. */
    private void discount(Calculation calculation) {
        Order order = calculation.cost().costed().bill().order();
        PartnerTerms terms = calculation.cost().prices().partners().get(order.partner());
        BigDecimal ofPartner = terms == null ? BigDecimal.ZERO : terms.discountPercent();
        BigDecimal agreed = Objects.requireNonNullElse(order.terms().discountPercent(), ofPartner);
        BigDecimal discount = calculation.quotation().discountPercent();
        if (discount.compareTo(agreed) > 0) {
            String partner = order.partner().isEmpty() ? order.customer() : order.partner();
            add(DISCOUNT_ABOVE_AGREED, PRICE, "discount", discount, "agreed", agreed, "partner", partner);
        }
    }

    /** The margin that prices are made with, in per cent of the price: margin = mark-up / (1 + mark-up). */
    private static BigDecimal target(Profit profit) {
        return profit.isMargin()
                ? profit.percent()
                : profit.percent()
                        .multiply(HUNDRED)
                        .divide(HUNDRED.add(profit.percent()), MathContext.DECIMAL128)
                        .setScale(2, RoundingMode.HALF_UP);
    }

    private void dates(LeadPath path, LocalDate on, LocalDate due) {
        LocalDate ships = on.plusDays(path.days());
        if (!ships.isAfter(due)) {
            return;
        }
        long late = ChronoUnit.DAYS.between(due, ships);
        add(DUE_DATE_TOO_SOON, LEAD_TIME, "due", due, "on", on, "ships", ships, "days", Math.toIntExact(late));
        List<String> parts = path.first(Integer.MAX_VALUE).stream()
                .filter(slot -> slot.latestStart() < late)
                .flatMap(CostingFindings::part)
                .toList();
        if (!parts.isEmpty()) {
            add(ORDER_BY_DATE_PAST, LEAD_TIME, "count", parts.size(), "on", on, "parts", parts);
        }
    }

    private static Stream<String> part(Slot<Step> slot) {
        return Stream.ofNullable(slot.activity().what().part())
                .map(Part::number)
                .map(String::valueOf);
    }

    private void add(Kind kind, String subject, Object... named) {
        all.add(Finding.of(kind, subject, named));
    }
}
