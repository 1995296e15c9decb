package boltlore.trades.costing.sheets;

import boltlore.catalogue.ExchangeRate;
import boltlore.catalogue.SalesTax;
import boltlore.explanation.ChoiceWords;
import boltlore.measure.Party;
import boltlore.order.Order;
import boltlore.report.Cell;
import boltlore.report.Column;
import boltlore.report.Formula;
import boltlore.report.Page;
import boltlore.report.PageBuilder;
import boltlore.report.Particulars;
import boltlore.report.ParticularsBuilder;
import boltlore.report.Phrases;
import boltlore.report.Signatures;
import boltlore.report.TableBuilder;
import boltlore.report.TableSpec;
import boltlore.trades.Parties;
import boltlore.trades.TaxFree;
import boltlore.trades.costing.quote.OptionPrices;
import boltlore.trades.costing.quote.Quotation;
import boltlore.trades.costing.quote.QuotedExtra;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** The first page of a quotation: for whom, what, for how much, until when. */
final class OfferPage {

    private static final int DAYS_IN_A_WEEK = 7;

    private static final String AMOUNT = "amount";
    private static final int PERCENT = 2;

    private final QuotedOrder quoted;
    private final Quotation quotation;
    private final Phrases phrases;

    OfferPage(QuotedOrder quoted) {
        this.quoted = quoted;
        this.quotation = quoted.quotation();
        this.phrases = quoted.phrases();
    }

    PageBuilder page() {
        PageBuilder page = Page.named(phrases.say("page")).print(quoted.print());
        page.title(phrases.say("title")).add(head());
        page.heading(phrases.say("chosen"))
                .note("chosen", String.join(". ", ChoiceWords.say(quoted.order(), quoted.language())) + ".");
        page.heading(phrases.say("price")).add(prices());
        if (quoted.options() != null) {
            page.note("options", phrases.say("optionsSay"));
        }
        if (!quotation.extras().isEmpty()) {
            page.note("extras", phrases.say("extrasSay"));
        }
        tax(page);
        cores(page);
        page.note("validity", holds());
        page.note("readiness", phrases.say("shipping", String.valueOf(quotation.leadDays()), String.valueOf(weeks())));
        NotIncluded.on(page, quoted);
        return page.add(new Signatures(List.of(phrases.say("accept"), phrases.say("offer")), phrases.say("date")));
    }

    /** What comes back for old units stands apart from the price: nobody knows yet whether they come back. */
    private void cores(PageBuilder page) {
        if (quotation.cores().isEmpty()) {
            return;
        }
        TableBuilder table = TableSpec.<Quotation.CoreCredit>named("core-credits")
                .text("part", phrases.say("part"), core -> core.part().text())
                .text(
                        "name",
                        phrases.say("coreName"),
                        50,
                        core -> quoted.catalogue().part(core.part()).name().in(quoted.language()))
                .quantity("quantity", phrases.say("quantity"), "", Quotation.CoreCredit::quantity)
                .money("credit", phrases.say("coreCredit"), quotation.currency(), Quotation.CoreCredit::all)
                .of(quotation.cores());
        table.total("credits", phrases.say("coreCredits")).sum("credit", quotation.coreCredits());
        page.heading(phrases.say("cores")).add(table).note("cores", phrases.say("coresSay"));
    }

    private ParticularsBuilder head() {
        Order order = quoted.order();
        ParticularsBuilder says = Particulars.named("order")
                .say("number", phrases.say("number"), quoted.number())
                .say("order", phrases.say("order"), order.name())
                .say("on", phrases.say("on"), quotation.on())
                .say("valid-until", phrases.say("validUntil"), quotation.validUntil());
        parties(says);
        says.say("vehicle", phrases.say("vehicle"), quoted.family().says().in(quoted.language()));
        if (!order.chassis().isEmpty()) {
            says.say("chassis", phrases.say("chassis"), order.chassis());
        }
        says.say("currency", phrases.say("currency"), quotation.currency().getCurrencyCode())
                .say("lead", phrases.say("lead"), phrases.say("leadDays", String.valueOf(quotation.leadDays())));
        if (quotation.terms().delivery() != null) {
            says.say(
                    "delivery",
                    phrases.say("delivery"),
                    quotation.terms().delivery().says());
        }
        return quotation.terms().payment().isEmpty()
                ? says
                : says.say("payment", phrases.say("payment"), quotation.terms().payment());
    }

    /** Who sells, who pays, and who receives it where that is somebody else; each with what the tax office knows it by. */
    private void parties(ParticularsBuilder says) {
        Order order = quoted.order();
        Parties parties = Parties.of(order, quoted.catalogue());
        party(says, "seller", parties.seller());
        says.say("customer", phrases.say("customer"), order.customer());
        if (!order.partner().isEmpty()) {
            says.say("partner", phrases.say("partner"), order.partner());
        }
        parties.buyer().ifPresent(buyer -> party(says, "buyer", buyer));
        parties.consignee()
                .filter(consignee -> !parties.buyer().equals(Optional.of(consignee)))
                .ifPresent(consignee -> says.say("consignee", phrases.say("consignee"), consignee.inLine()));
    }

    private void party(ParticularsBuilder says, String key, Party party) {
        says.say(key, phrases.say(key), party.inLine());
        if (!party.taxNumber().isEmpty()) {
            String number = party.hasVatNumber() ? "vatNumber" : "taxNumber";
            String called = phrases.say(key.equals("buyer") ? number + "Yours" : number);
            says.say(key + "-tax-number", called, party.taxNumber());
        }
    }

    /** Kit with its options, extras, discount, tax and total, as the customer sees them; all sums are live. */
    private TableBuilder prices() {
        TableSpec<OfferLine> spec = TableSpec.<OfferLine>named("price")
                .text("position", phrases.say("position"), 76, OfferLine::says)
                .column(Column.money(AMOUNT, phrases.say("amount"), quotation.currency()), OfferLine::amount)
                .code("line", OfferLine::key)
                .code("part", OfferLine::part);
        TableBuilder table = spec.empty();
        List<OfferLine> lines = kit();
        quotation
                .extras()
                .forEach(extra -> lines.add(new OfferLine("extra", part(extra), extra(extra), Cell.of(extra.price()))));
        List<Formula> listed = new ArrayList<>();
        for (OfferLine line : isPartners() ? OfferLine.paid(lines, quotation) : lines) {
            String key = "line-" + (listed.size() + 1);
            spec.add(table, key, line);
            listed.add(Formula.cell(key, AMOUNT));
        }
        if (quotation.discount().signum() != 0 && !isPartners()) {
            String says = phrases.say("discount", phrases.number(quotation.discountPercent()));
            spec.add(table, "", new OfferLine("discount", "", says, discount(listed)));
        }
        table.total("net", phrases.say("net")).sum(AMOUNT, quotation.net());
        Formula total = Formula.cell("net", AMOUNT);
        SalesTax tax = quotation.tax();
        if (tax != null) {
            String says = phrases.say("tax", tax.says().in(quoted.language()), phrases.number(tax.percent()));
            table.subtotal("tax", says)
                    .put(AMOUNT, rounded(Formula.product(total, percent(tax.percent()))), quotation.taxAmount());
            total = Formula.sum(total, Formula.cell("tax", AMOUNT));
        }
        table.total("total", phrases.say("total")).put(AMOUNT, total, quotation.total());
        return table;
    }

    /** The kit in one line, or in its plainest form and option by option, which come to the same. */
    private List<OfferLine> kit() {
        OptionPrices options = quoted.options();
        List<OfferLine> lines = new ArrayList<>();
        if (options == null) {
            lines.add(new OfferLine("kit", "", phrases.say("kit"), Cell.of(quotation.kitPrice())));
            return lines;
        }
        lines.add(new OfferLine("kit", "", phrases.say("plainKit"), Cell.of(options.plain())));
        for (int i = options.steps().size() - 1; i >= 0; i--) {
            OptionPrices.Step step = options.steps().get(i);
            lines.add(new OfferLine("option", "", option(step), Cell.of(step.amount())));
        }
        return lines;
    }

    private String option(OptionPrices.Step step) {
        String language = quoted.language();
        String chosen = step.changed().stream()
                .map(changed -> changed.chosen().says().in(language))
                .collect(Collectors.joining(" + "));
        String without = step.changed().stream()
                .map(changed -> changed.without().says().in(language))
                .collect(Collectors.joining(" + "));
        return phrases.say("option", chosen, without);
    }

    /** What a partner is allowed is nobody else's business: the customer, who reads the paper too, sees what is left. */
    private boolean isPartners() {
        return !quoted.order().partner().isEmpty() && quotation.discount().signum() != 0;
    }

    private Cell discount(List<Formula> listed) {
        Formula list = new Formula.Sum(listed);
        BigDecimal off = quotation.discountPercent().negate();
        return Cell.of(
                rounded(Formula.product(list, percent(off))),
                quotation.discount().negate());
    }

    private static Formula percent(BigDecimal percent) {
        return Formula.fixed(percent.movePointLeft(PERCENT));
    }

    private Formula rounded(Formula amount) {
        return amount.rounded(digits());
    }

    private int digits() {
        return Math.max(0, quotation.currency().getDefaultFractionDigits());
    }

    private static String part(QuotedExtra extra) {
        return extra.part() == null ? "" : extra.part().text();
    }

    private String extra(QuotedExtra extra) {
        String says = extra.part() == null
                ? extra.says()
                : quoted.catalogue().part(extra.part()).name().in(quoted.language());
        String words = extra.suppliedByCustomer() ? "yours" : "extra";
        return phrases.say(words, says, phrases.number(extra.quantity()), phrases.unit(extra.unit(), extra.quantity()));
    }

    private void tax(PageBuilder page) {
        page.note(
                "tax",
                quotation.tax() == null
                        ? phrases.say("noTax")
                        : quotation.tax().because().in(quoted.language()));
        if (quotation.tax() != null && quotation.tax().percent().signum() == 0) {
            Parties parties = Parties.of(quoted.order(), quoted.catalogue());
            TaxFree.of(parties).ifPresent(why -> page.note("tax-free", why.says(parties, quoted.language())));
        }
    }

    private String holds() {
        ExchangeRate rate = quotation.rate();
        String until = phrases.day(quotation.validUntil());
        return rate == null
                ? phrases.say("holds", until)
                : phrases.say(
                        "rate",
                        rate.currency().getCurrencyCode(),
                        phrases.number(rate.forOne(), rate.forOne().scale()),
                        quoted.catalogue().workshop().currency().getCurrencyCode(),
                        phrases.day(rate.date()),
                        until);
    }

    /** The nearest whole weeks; the days stand beside them. */
    private int weeks() {
        return Math.max(1, (2 * quotation.leadDays() + DAYS_IN_A_WEEK) / (2 * DAYS_IN_A_WEEK));
    }
}
