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
import java.time.LocalDate;

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

    /** As on the day of the order; that of the costed bill where it has none, or where no quotation can be made of it. */
    public static SellingPrice usual(PricedBill priced) {
        LocalDate placed = priced.bill().order().placed();
        return placed != null && of(priced, new Asked(placed, null, null)) instanceof Outcome.Sound<SellingPrice> sound
                ? sound.value()
                : SellingPrice.of(priced);
    }

    private static SellingPrice quoted(Calculation calculation, PricedBill priced) {
        return SellingPrice.of(calculation.quotation(), priced.bill().order().extra());
    }
}
