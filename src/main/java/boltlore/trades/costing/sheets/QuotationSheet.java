package boltlore.trades.costing.sheets;

import boltlore.bill.Bill;
import boltlore.catalogue.Catalogue;
import boltlore.report.Phrases;
import boltlore.report.Report;
import boltlore.trades.costing.quote.Quotation;
import boltlore.trades.weighing.Weighing;

/**
 * The quotation of one order, in the order's language. It is made of a quotation, which holds no cost, and of the bill
 * without prices, so that no cost can stand in it.
 */
public final class QuotationSheet {

    public static final String FILE = "quotation";

    private QuotationSheet() {}

    public static Report compose(Quotation quotation, Bill bill, Weighing weighing, Catalogue catalogue) {
        Phrases phrases = phrases(bill.order().language());
        QuotedOrder quoted = new QuotedOrder(quotation, bill, catalogue, phrases);
        return Report.named(FILE, phrases.say("title"))
                .about(phrases.say("order") + " " + bill.order().name())
                .by(catalogue.workshop().name())
                .dated(quotation.on())
                .in(bill.order().language())
                .page(new OfferPage(quoted).page())
                .page(IncludedPage.compose(quoted))
                .page(new TermsPage(quoted, weighing).page())
                .build();
    }

    static Phrases phrases(String language) {
        return Phrases.of(QuotationSheet.class, FILE, language);
    }
}
