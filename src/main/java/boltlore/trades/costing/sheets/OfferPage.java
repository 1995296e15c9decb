package boltlore.trades.costing.sheets;

import boltlore.catalogue.ExchangeRate;
import boltlore.catalogue.SalesTax;
import boltlore.explanation.ChoiceWords;
import boltlore.report.Page;
import boltlore.report.PageBuilder;
import boltlore.report.Particulars;
import boltlore.report.ParticularsBuilder;
import boltlore.report.Phrases;
import boltlore.report.Signatures;
import boltlore.report.TableBuilder;
import boltlore.report.TableSpec;
import boltlore.trades.costing.quote.Quotation;
import boltlore.trades.costing.quote.QuotedExtra;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/** The first page of a quotation: for whom, what, for how much, until when. */
final class OfferPage {

    private static final int DAYS_IN_A_WEEK = 7;

    private record Line(String key, String part, String says, BigDecimal amount) {}

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
        ParticularsBuilder says = Particulars.named("order")
                .say("order", phrases.say("order"), quoted.order().name())
                .say("customer", phrases.say("customer"), quoted.order().customer())
                .say("vehicle", phrases.say("vehicle"), quoted.family().says().in(quoted.language()));
        if (!quoted.order().partner().isEmpty()) {
            says.say("partner", phrases.say("partner"), quoted.order().partner());
        }
        return says.say("on", phrases.say("on"), quotation.on())
                .say("valid-until", phrases.say("validUntil"), quotation.validUntil())
                .say("currency", phrases.say("currency"), quotation.currency().getCurrencyCode())
                .say("lead", phrases.say("lead"), phrases.say("leadDays", String.valueOf(quotation.leadDays())));
    }

    /** Kit, extras, discount, tax and total, as the customer sees them. */
    private TableBuilder prices() {
        List<Line> lines = new ArrayList<>(List.of(new Line("kit", "", phrases.say("kit"), quotation.kitPrice())));
        quotation.extras().forEach(extra -> lines.add(new Line("extra", part(extra), extra(extra), extra.price())));
        if (quotation.discount().signum() != 0) {
            String discount = phrases.say("discount", phrases.number(quotation.discountPercent()));
            lines.add(new Line("discount", "", discount, quotation.discount().negate()));
        }
        TableBuilder table = TableSpec.<Line>named("price")
                .text("position", phrases.say("position"), 76, Line::says)
                .money("amount", phrases.say("amount"), quotation.currency(), Line::amount)
                .code("line", Line::key)
                .code("part", Line::part)
                .of(lines);
        table.total("net", phrases.say("net")).sum("amount", quotation.net());
        SalesTax tax = quotation.tax();
        if (tax != null) {
            String says = phrases.say("tax", tax.says().in(quoted.language()), phrases.number(tax.percent()));
            table.subtotal("tax", says).put("amount", quotation.taxAmount());
        }
        table.total("total", phrases.say("total")).put("amount", quotation.total());
        return table;
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
    }

    private String holds() {
        ExchangeRate rate = quotation.rate();
        String until = phrases.day(quotation.validUntil());
        if (rate == null) {
            return phrases.say("holds", until);
        }
        BigDecimal forOne = rate.forOne();
        return phrases.say(
                "rate",
                rate.currency().getCurrencyCode(),
                phrases.number(forOne, forOne.scale()),
                quoted.catalogue().workshop().currency().getCurrencyCode(),
                phrases.day(rate.date()),
                until);
    }

    /** The nearest whole weeks; the days stand beside them. */
    private int weeks() {
        return Math.max(1, (2 * quotation.leadDays() + DAYS_IN_A_WEEK) / (2 * DAYS_IN_A_WEEK));
    }
}
