package boltlore.trades.costing.sheets;

import boltlore.bill.Bill;
import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Family;
import boltlore.catalogue.PriceBook;
import boltlore.order.Order;
import boltlore.report.Phrases;
import boltlore.report.PrintSetup;
import boltlore.trades.costing.quote.OptionPrices;
import boltlore.trades.costing.quote.Quotation;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What all pages of a quotation speak of.
 *
 * @param options what each option makes of the price, or null where nobody can say
 */
record QuotedOrder(
        Quotation quotation,
        Bill bill,
        Catalogue catalogue,
        Phrases phrases,
        @Nullable OptionPrices options) {

    /** 'Q-BL-1001-2': of the order's second version. */
    String number() {
        return "Q-" + order().name() + "-" + quotation.terms().version();
    }

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
                .withFooter(catalogue.workshop().name() + " · " + phrases.say("title") + " " + number() + " · "
                        + quotation.on());
    }
}
