package boltlore.trades.coating;

import boltlore.bill.Bill;
import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Finish;
import boltlore.order.Extra;
import java.math.BigDecimal;

/** What coating an extra of an order costs. */
public final class ExtraCoating {

    private ExtraCoating() {}

    /** Of one of it, in the workshop's currency, unrounded; nothing for what is not coated or comes from the customer. */
    public static BigDecimal ofOne(Extra extra, Bill bill, Catalogue catalogue) {
        return ExtraPieces.ofOne(extra, bill, catalogue)
                .map(pieces -> cost(pieces, catalogue))
                .reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    private static BigDecimal cost(ExtraPieces.Pieces pieces, Catalogue catalogue) {
        Finish finish = catalogue.finishes().get(pieces.finish());
        return finish == null
                ? BigDecimal.ZERO
                : CoatingCost.compute(pieces.part(), finish, catalogue).multiply(pieces.quantity());
    }
}
