package boltlore.trades.costing.sheets;

import boltlore.report.Cell;
import boltlore.trades.costing.quote.Quotation;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;

/** A line of a quotation's prices; its amount is a figure, or a formula where it is a discount. */
record OfferLine(String key, String part, String says, Cell amount) {

    /** Each at what is to be paid for it; the first takes what rounding leaves, so that all come to the net price. */
    static List<OfferLine> paid(List<OfferLine> lines, Quotation quotation) {
        List<OfferLine> paid = new ArrayList<>();
        BigDecimal left = quotation.net();
        for (OfferLine line : lines.subList(1, lines.size())) {
            BigDecimal amount = paid(((Cell.Figure) line.amount()).value(), quotation);
            left = left.subtract(amount);
            paid.add(line.at(amount));
        }
        paid.add(0, lines.get(0).at(left));
        return paid;
    }

    private OfferLine at(BigDecimal amount) {
        return new OfferLine(key, part, says, Cell.of(amount));
    }

    private static BigDecimal paid(BigDecimal listed, Quotation quotation) {
        BigDecimal off = listed.multiply(quotation.discountPercent()).movePointLeft(2);
        return listed.subtract(off)
                .setScale(Math.max(0, quotation.currency().getDefaultFractionDigits()), RoundingMode.HALF_UP);
    }
}
