package boltlore.desk.sales;

import boltlore.asking.KitFigures;
import boltlore.choosing.AnswerEffects;
import boltlore.choosing.BestKit;
import boltlore.choosing.ChoiceState;
import boltlore.logic.Deadline;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;

/** The line at the foot of a card: what the order comes to, as far as it is answered. */
final class CardFoot {

    private CardFoot() {}

    static Card.Foot of(AnswerEffects effects, ChoiceState.Sound standing, boolean whole) {
        Optional<BestKit> kit;
        try {
            kit = effects.cheapest(whole ? standing.withForced() : standing.choices());
        } catch (Deadline.Passed tooLate) {
            return new Card.Foot("What it comes to is not worked out yet: " + tooLate.why() + ".", List.of());
        }
        return kit.map(found -> new Card.Foot(
                        whole ? "The kit comes to" : "The cheapest complete kit comes to", figures(found)))
                .orElseGet(() -> new Card.Foot("Each kit with these choices has a finding that stops it.", List.of()));
    }

    static List<Card.Fact> figures(BestKit kit) {
        return List.of(
                new Card.Fact(
                        "Price before tax",
                        kit.pricing()
                                .quotation()
                                .map(KitFigures::beforeTax)
                                .orElseGet(() -> kit.pricing().whyNoPrice())),
                new Card.Fact(
                        "Mass of the kit",
                        kit.massKg().setScale(1, RoundingMode.HALF_UP).toPlainString() + " kg"),
                new Card.Fact("Lead time", kit.leadDays() + " days"));
    }
}
