package boltlore.trades.shipping.sheets;

import boltlore.catalogue.PriceBook;
import boltlore.faults.Outcome;
import boltlore.trades.costing.PricedBill;
import boltlore.trades.costing.path.LeadPath;
import boltlore.trades.costing.quote.Asked;
import boltlore.trades.costing.quote.Calculation;
import boltlore.trades.costing.quote.Quoting;
import boltlore.trades.costing.sheets.CostSheet;
import boltlore.trades.shipping.SellingPrice;

/** The price that customs values are made of. */
public final class ShipPrice {

    private ShipPrice() {}

    /** The quotation's where the workshop writes quotations, else that of the costed bill. */
    public static Outcome<SellingPrice> of(PricedBill priced, Asked asked) {
        PriceBook prices = priced.catalogue().prices();
        return prices == null
                ? Outcome.sound(SellingPrice.of(priced))
                : Quoting.of(
                                CostSheet.cost(priced, prices),
                                asked,
                                LeadPath.of(priced).days())
                        .then(calculation -> Outcome.sound(quoted(calculation, priced)));
    }

    /** The price that a quotation of the bill came to. */
    public static SellingPrice quoted(Calculation calculation, PricedBill priced) {
        return SellingPrice.of(calculation.quotation(), priced.bill().order().extra());
    }
}
