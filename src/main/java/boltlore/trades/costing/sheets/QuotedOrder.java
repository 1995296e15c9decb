package boltlore.trades.costing.sheets;

import boltlore.bill.Bill;
import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Family;
import boltlore.catalogue.PriceBook;
import boltlore.order.Order;
import boltlore.report.Phrases;
import boltlore.report.PrintSetup;
import boltlore.trades.costing.quote.Quotation;
import java.util.Optional;

/** What all pages of a quotation speak of. */
record QuotedOrder(Quotation quotation, Bill bill, Catalogue catalogue, Phrases phrases) {

    Order order() {
        return bill.order();
    }

    String language() {
        return bill.order().language();
    }

    Family family() {
        return bill.resolved().choices().family();
    }

    /** Of these only what is written for customers may be read here. */
    Optional<PriceBook> prices() {
        return Optional.ofNullable(catalogue.prices());
    }

    PrintSetup print() {
        return PrintSetup.PORTRAIT
                .withCount(new PrintSetup.PageCount(phrases.say("pageWord"), phrases.say("pageOf")))
                .withFooter(catalogue.workshop().name() + " · " + phrases.say("title") + " " + order().name() + " · "
                        + quotation.on());
    }
}
