package boltlore.trades.costing.sheets;

import boltlore.catalogue.ExchangeRate;
import boltlore.catalogue.PriceStep;
import boltlore.catalogue.Profit;
import boltlore.catalogue.Workshop;
import boltlore.findings.Findings;
import boltlore.measure.Digits;
import boltlore.measure.Money;
import boltlore.order.Order;
import boltlore.report.FindingsTable;
import boltlore.report.Kind;
import boltlore.report.Page;
import boltlore.report.PageBuilder;
import boltlore.report.Particulars;
import boltlore.report.ParticularsBuilder;
import boltlore.report.TableBuilder;
import boltlore.report.TableSpec;
import boltlore.trades.costing.cost.Element;
import boltlore.trades.costing.cost.Elements;
import boltlore.trades.costing.cost.FullCost;
import boltlore.trades.costing.quote.Calculation;
import boltlore.trades.costing.quote.Quotation;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Arrays;
import java.util.Currency;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The first page: the full cost by element, the price made of it, the margin that is left, and what was found. */
final class CostPage {

    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);

    /** A step from the full cost to what the customer pays, in the workshop's currency or in the quoted one. */
    private record PriceLine(
            String step,
            @Nullable BigDecimal cost,
            @Nullable BigDecimal quoted) {}

    private final Calculation calculation;
    private final FullCost cost;
    private final Quotation quotation;
    private final Currency home;

    CostPage(Calculation calculation) {
        this.calculation = calculation;
        this.cost = calculation.cost();
        this.quotation = calculation.quotation();
        this.home = cost.costed().currency();
    }

    PageBuilder page(Findings findings, String footer) {
        PageBuilder page = Page.named("Cost").footer(footer).title("Cost statement, for the workshop only");
        page.add(head());
        page.heading("Full cost").add(elements()).picture(CostBars.draw(cost));
        page.heading("From cost to price").add(price()).add(margin());
        cores(page);
        FindingsTable.add(page, findings, workshopLanguage());
        return page;
    }

    /** The cost holds what suppliers take for old units; what comes back for them is no margin before it has come. */
    private void cores(PageBuilder page) {
        if (!quotation.cores().isEmpty()) {
            page.heading("Core credits")
                    .add(Particulars.named("core-credits")
                            .say(
                                    "core-credits",
                                    "Credited to the customer when all old units are back",
                                    Kind.money(quotation.currency()),
                                    quotation.coreCredits()))
                    .note("The cost of these parts holds it. It is neither in the price before tax nor in the margin.");
        }
    }

    private ParticularsBuilder head() {
        Order order = cost.costed().bill().order();
        Workshop workshop = cost.costed().catalogue().workshop();
        ParticularsBuilder says = Particulars.named("order")
                .say("workshop", "Workshop", workshop.name() + ", " + workshop.place())
                .say("order", "Order", order.name())
                .say("customer", "Customer", order.customer());
        if (!order.partner().isEmpty()) {
            says.say("partner", "Partner workshop", order.partner());
        }
        dates(says).say("currency", "Costs in", home.getCurrencyCode());
        ExchangeRate rate = quotation.rate();
        if (rate != null) {
            says.say("rate", "Exchange rate", Kind.quantity(), rate.forOne()).say("rate-of", "Rate of", rate.date());
        }
        return says.say("lead", "Lead time", quotation.leadDays() + " days");
    }

    private ParticularsBuilder dates(ParticularsBuilder says) {
        return says.say("on", "Quoted on", quotation.on())
                .say("valid-until", "Valid until", quotation.validUntil())
                .say("quoted-in", "Quoted in", quotation.currency().getCurrencyCode());
    }

    /** The full cost of kit and extras by element, with each element's share. */
    TableBuilder elements() {
        Elements kit = cost.kit();
        Elements extras = cost.ofExtras();
        TableBuilder table = TableSpec.<Element>named("elements")
                .text("element", "Element", Element::says)
                .money("kit", "Kit", home, kit::of)
                .money("extras", "Extras", home, extras::of)
                .percent(
                        "share",
                        "Share of all",
                        1,
                        element -> share(kit.of(element).add(extras.of(element))))
                .of(Arrays.asList(Element.values()));
        table.total("total", "Full cost").sum("kit", kit.total()).sum("extras", extras.total());
        return table;
    }

    /** In per cent; 0 of nothing. */
    private BigDecimal share(BigDecimal part) {
        BigDecimal whole = cost.total();
        return whole.signum() == 0 ? BigDecimal.ZERO : part.multiply(HUNDRED).divide(whole, MathContext.DECIMAL128);
    }

    /** Each step from the full cost to what the customer pays. */
    TableBuilder price() {
        TableBuilder table = TableSpec.<PriceLine>named("price")
                .text("step", "Step", 60, PriceLine::step)
                .money("cost", "Calculated", home, PriceLine::cost)
                .money("quoted", "Quoted", quotation.currency(), PriceLine::quoted)
                .of(List.of(
                        new PriceLine("Full cost of the kit", cost.kit().total(), null),
                        new PriceLine("Full cost of the extras", cost.ofExtras().total(), null),
                        new PriceLine("Price of the kit, " + profit(), calculation.reckoned(), null),
                        quoted("Price of the kit, " + rounded(), quotation.kitPrice()),
                        quoted("Price of the extras", quotation.extrasPrice()),
                        quoted(
                                "Discount, " + quotation.discountPercent().toPlainString() + " %",
                                quotation.discount().negate()),
                        quoted("Price before tax", quotation.net()),
                        quoted("Tax", quotation.taxAmount())));
        table.total("total", "Total due").put("quoted", quotation.total());
        return table;
    }

    private static PriceLine quoted(String step, BigDecimal amount) {
        return new PriceLine(step, null, amount);
    }

    /** 'by a margin of 22 % of the price'. */
    private String profit() {
        Profit profit = calculation.profit();
        String percent = Digits.plain(profit.percent()) + " %";
        return profit.isMargin()
                ? "by a margin of " + percent + " of the price"
                : "by a mark-up of " + percent + " on the cost";
    }

    private String rounded() {
        PriceStep step = cost.prices().step();
        ExchangeRate rate = quotation.rate();
        String through = rate == null ? "" : "at " + Digits.plain(rate.forOne()) + " of " + rate.date() + ", ";
        return through + "rounded " + (step.way() == PriceStep.Way.UP ? "up to " : "to the nearest ")
                + Digits.plain(step.step());
    }

    /** The sums, and what discount and rounding leave; below 0 a loss. */
    private ParticularsBuilder margin() {
        BigDecimal left = Money.rounded(calculation.left(), home);
        BigDecimal percent = calculation.marginLeftPercent();
        return Particulars.named("margin")
                .say("full-cost", "Full cost of kit and extras", Kind.money(home), cost.total())
                .say("total-due", "Total due", Kind.money(quotation.currency()), quotation.total())
                .say("margin-left", "Margin after discount and rounding", Kind.money(home), left)
                .say("margin-left-percent", "Margin, % of the price before tax", Kind.percent(2), percent);
    }

    private String workshopLanguage() {
        return cost.costed().catalogue().workshop().language();
    }

    /** For the terminal: days, margin, lead time, and what may leave the house. */
    ParticularsBuilder glance() {
        BigDecimal percent = calculation.marginLeftPercent().setScale(1, RoundingMode.HALF_UP);
        return dates(Particulars.named("glance"))
                .say(
                        "margin",
                        "Margin",
                        Money.says(calculation.left(), home) + " (" + percent + " %), after discount and rounding")
                .say("lead", "Lead time", LeadPage.says(cost.costed().times().path(), workshopLanguage()))
                .say("send", "Send out", "only the folder 'customer'");
    }
}
