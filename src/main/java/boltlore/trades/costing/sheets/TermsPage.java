package boltlore.trades.costing.sheets;

import boltlore.catalogue.Pack;
import boltlore.choices.Choices;
import boltlore.choices.Conditions;
import boltlore.measure.Party;
import boltlore.power.ChosenPower;
import boltlore.power.Power;
import boltlore.report.CautionNotes;
import boltlore.report.Page;
import boltlore.report.PageBuilder;
import boltlore.report.Phrases;
import boltlore.trades.Parties;
import boltlore.trades.weighing.Weighing;
import java.util.List;

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
        page.heading(phrases.say("weight")).note("weight", WeightStatement.say(weighing, country(), phrases));
        battery(page);
        page.heading(phrases.say("charging"))
                .note("charging", charging(quoted.order().choices()));
        cautions(page);
        return page;
    }

    /** Where the vehicle goes, as nearly as the order tells; empty where it tells nothing. */
    private String country() {
        Parties parties = Parties.of(quoted.order(), quoted.catalogue());
        return parties.consignee().or(parties::buyer).map(Party::country).orElse("");
    }

    /** What the pack holds; nothing is said of a family whose packs nobody has described. */
    private void battery(PageBuilder page) {
        Choices choices = quoted.order().choices();
        List<Pack> packs = quoted.family().electrics().packs().stream()
                .filter(pack -> Conditions.holds(pack.when(), choices))
                .toList();
        if (packs.size() == 1) {
            Pack pack = packs.get(0);
            page.heading(phrases.say("battery"))
                    .note(
                            "battery",
                            phrases.say(
                                    "batteryHolds",
                                    phrases.number(pack.nominalKwh(), 1),
                                    phrases.number(pack.usableKwh(), 1),
                                    phrases.number(pack.nominalVolts(), 0),
                                    String.valueOf(pack.modules())));
        }
    }

    /** With what power the vehicle charges and feeds loads. */
    private String charging(Choices choices) {
        String charging =
                ChosenPower.charging(choices).map(this::charging).orElseGet(() -> phrases.say("chargingUnknown"));
        return ChosenPower.exportKw(choices)
                .map(kw -> charging + " " + phrases.say("outlet", phrases.number(kw, 1)))
                .orElse(charging);
    }

    private String charging(Power power) {
        return phrases.say(
                power.phases() == 1 ? "chargingOnePhase" : "chargingAt",
                phrases.number(power.kilowatts(), 1),
                String.valueOf(power.phases()),
                phrases.number(power.volts(), 0),
                phrases.number(power.amps(), 0));
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
