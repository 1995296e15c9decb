package boltlore.trades.costing.sheets;

import boltlore.report.Column;
import boltlore.report.RowBuilder;
import boltlore.report.Table;
import boltlore.report.TableBuilder;
import boltlore.trades.costing.quote.Calculation;
import boltlore.trades.costing.quote.Quotation;
import java.math.BigDecimal;
import java.util.Currency;

/** Each step from the full cost to what the customer pays, in the workshop's currency and in the quoted one. */
final class PriceTable {

    private final Calculation calculation;
    private final Quotation quotation;
    private final TableBuilder table;

    private PriceTable(Calculation calculation) {
        this.calculation = calculation;
        this.quotation = calculation.quotation();
        Currency home = calculation.cost().priced().currency();
        this.table = Table.named("price")
                .columns(
                        Column.text("step", "Step").atMost(60),
                        Column.money("cost", "Worked out", home),
                        Column.money("quoted", "Quoted", quotation.currency()));
    }

    static TableBuilder of(Calculation calculation) {
        return new PriceTable(calculation).table();
    }

    private TableBuilder table() {
        row("Full cost of the kit").put("cost", calculation.cost().kit().total());
        row("Full cost of the extras").put("cost", calculation.cost().ofExtras().total());
        row("Price of the kit, " + PriceWords.profit(calculation.profit())).put("cost", calculation.reckoned());
        quoted("Price of the kit, " + PriceWords.rounded(calculation), quotation.kitPrice());
        quoted("Price of the extras", quotation.extrasPrice());
        quoted(
                "Discount, " + quotation.discountPercent().toPlainString() + " %",
                quotation.discount().negate());
        quoted("Price before tax", quotation.net());
        quoted("Tax", quotation.taxAmount());
        table.total("total", "The customer pays").put("quoted", quotation.total());
        return table;
    }

    private RowBuilder row(String step) {
        return table.row().put("step", step);
    }

    private void quoted(String step, BigDecimal amount) {
        row(step).put("quoted", amount);
    }
}
