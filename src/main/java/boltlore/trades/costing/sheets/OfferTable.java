package boltlore.trades.costing.sheets;

import boltlore.catalogue.SalesTax;
import boltlore.report.Column;
import boltlore.report.Phrases;
import boltlore.report.Table;
import boltlore.report.TableBuilder;
import boltlore.trades.costing.quote.Quotation;
import boltlore.trades.costing.quote.QuotedExtra;
import java.math.BigDecimal;

/** Kit, extras, discount, tax and total, as the customer sees them. */
final class OfferTable {

    private final QuotedOrder quoted;
    private final Phrases phrases;
    private final TableBuilder table;

    private OfferTable(QuotedOrder quoted) {
        this.quoted = quoted;
        this.phrases = quoted.phrases();
        this.table = Table.named("price")
                .columns(
                        Column.text("position", phrases.say("position")).atMost(76),
                        Column.money(
                                "amount",
                                phrases.say("amount"),
                                quoted.quotation().currency()));
    }

    static TableBuilder of(QuotedOrder quoted) {
        return new OfferTable(quoted).table();
    }

    private TableBuilder table() {
        Quotation quotation = quoted.quotation();
        row(phrases.say("kit"), quotation.kitPrice());
        quotation.extras().forEach(extra -> row(extra(extra), extra.price()));
        if (quotation.discount().signum() != 0) {
            row(
                    phrases.say("discount", phrases.number(quotation.discountPercent())),
                    quotation.discount().negate());
        }
        table.total("net", phrases.say("net")).sum("amount", quotation.net());
        tax(quotation);
        table.total("total", phrases.say("total")).put("amount", quotation.total());
        return table;
    }

    private void tax(Quotation quotation) {
        SalesTax tax = quotation.tax();
        if (tax != null) {
            String says = phrases.say("tax", tax.says().in(quoted.language()), phrases.number(tax.percent()));
            table.subtotal("tax", says).put("amount", quotation.taxAmount());
        }
    }

    private void row(String position, BigDecimal amount) {
        table.row().put("position", position).put("amount", amount);
    }

    private String extra(QuotedExtra extra) {
        String says = extra.part() == null
                ? extra.says()
                : quoted.catalogue().part(extra.part()).name().in(quoted.language());
        String words = extra.suppliedByCustomer() ? "yours" : "extra";
        return phrases.say(words, says, phrases.number(extra.quantity()), phrases.unit(extra.unit(), extra.quantity()));
    }
}
