package boltlore.proof.sheets;

import boltlore.logic.Count;
import boltlore.report.Cell;
import java.math.BigDecimal;

/** A number of orders as a cell: a figure while a spreadsheet keeps all its digits, text beyond that. */
final class Counted {

    /** Spreadsheets keep 15 decimal digits of a number. */
    private static final int MOST_DIGITS = 15;

    private Counted() {}

    static Cell cell(Count count) {
        if (!(count instanceof Count.Exactly exactly)) {
            return Cell.of("not counted");
        }
        BigDecimal orders = new BigDecimal(exactly.orders());
        return orders.precision() <= MOST_DIGITS ? Cell.of(orders) : Cell.of(orders.toPlainString());
    }
}
