package boltlore.sheets.shipping;

import boltlore.catalogue.PriceBook;
import boltlore.faults.Outcome;
import boltlore.pricing.PricedBill;
import boltlore.pricing.path.LeadPath;
import boltlore.pricing.quote.Asked;
import boltlore.pricing.quote.Calculation;
import boltlore.pricing.quote.Quoting;
import boltlore.sheets.pricing.CostSheet;
import boltlore.shipping.SellingPrice;

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
