package boltlore.cli;

import boltlore.bill.Bill;
import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Family;
import boltlore.faults.Outcome;
import boltlore.report.SheetFile;
import boltlore.trades.costing.path.LeadPath;
import boltlore.trades.costing.quote.Asked;
import boltlore.trades.costing.quote.Calculation;
import boltlore.trades.costing.quote.OrderPricing;
import boltlore.trades.costing.sheets.CostSheet;
import boltlore.trades.costing.sheets.QuotationSheet;
import boltlore.trades.orders.SheetFormats;
import boltlore.trades.weighing.Weigher;
import boltlore.trades.weighing.Weighing;
import java.util.List;
import java.util.stream.Stream;

/** An order's price and lead time with what they stand on. */
record PricedOrder(Catalogue catalogue, Calculation calculation) implements WorkedOrder {

    static Outcome<PricedOrder> of(Catalogue catalogue, Bill bill, Asked asked) {
        return OrderPricing.of(bill, catalogue, asked)
                .calculation()
                .then(calculation -> Outcome.sound(new PricedOrder(catalogue, calculation)));
    }

    LeadPath path() {
        return calculation.cost().priced().times().path();
    }

    Bill bill() {
        return calculation.cost().priced().bill();
    }

    @Override
    public String name() {
        return bill().order().name();
    }

    /** What leaves the house and what must not, in folders of their own. */
    @Override
    public List<SheetFile> files() {
        Family family = bill().resolved().choices().family();
        Weighing weighing = Weigher.weigh(catalogue, family, bill());
        List<SheetFile> customer =
                SheetFormats.of(List.of(QuotationSheet.of(calculation.quotation(), bill(), weighing, catalogue)));
        List<SheetFile> workshop = SheetFormats.of(List.of(CostSheet.of(calculation)));
        return Stream.concat(
                        customer.stream().map(file -> file.under("customer")),
                        workshop.stream().map(file -> file.under("workshop")))
                .toList();
    }
}
