package boltlore.trades.costing.sheets;

import boltlore.report.CautionNotes;
import boltlore.report.Page;
import boltlore.report.PageBuilder;
import boltlore.report.Phrases;
import boltlore.trades.weighing.Weighing;

/** What else belongs to a quotation: brackets, weight, charging, cautions. */
final class TermsPage {

    private final QuotedOrder quoted;
    private final Weighing weighing;
    private final Phrases phrases;

    TermsPage(QuotedOrder quoted, Weighing weighing) {
        this.quoted = quoted;
        this.weighing = weighing;
        this.phrases = quoted.phrases();
    }

    PageBuilder page() {
        PageBuilder page = Page.named(phrases.say("termsPage")).print(quoted.print());
        page.title(phrases.say("terms"));
        UnusedBrackets.on(page, quoted);
        page.heading(phrases.say("weight")).note(WeightStatement.of(weighing, phrases));
        page.heading(phrases.say("charging"))
                .note(ChargingStatement.of(quoted.order().choices(), phrases));
        cautions(page);
        return page;
    }

    private void cautions(PageBuilder page) {
        String lead = phrases.say("caution");
        page.caution(lead, phrases.say("cautionFitting"));
        CautionNotes.add(
                page,
                quoted.bill().resolved().kit().cautionsOn("contents"),
                quoted.catalogue().workshop(),
                lead,
                quoted.language());
        page.caution(lead, phrases.say("cautionFigures"));
    }
}
