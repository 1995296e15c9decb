package boltlore.desk.sales;

import boltlore.asking.AskedHead;
import boltlore.catalogue.Family;
import boltlore.catalogue.Measure;
import boltlore.choosing.ChoiceState;
import boltlore.desk.sales.Choosings.Choosing;
import boltlore.explanation.FindingWords;
import boltlore.measure.Digits;
import boltlore.order.Order;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** What an order must still say when all its choices are settled. */
final class CardWants {

    private CardWants() {}

    /** What no choice says, and the kit does not ship without. */
    static List<Card.Want> of(Order order, Choosing choosing, ChoiceState.Sound standing) {
        Family family = order.choices().family();
        List<Card.Want> wants = new ArrayList<>();
        if (AskedHead.BRACKETS.missing(order)) {
            FindingWords says = new FindingWords(family);
            String unused = choosing.best().unused(standing.withForced()).stream()
                    .map(line -> says.line(line.text()).english())
                    .collect(Collectors.joining(", "));
            if (!unused.isEmpty()) {
                wants.add(new Card.Want(
                        AskedHead.BRACKETS.command(),
                        "Brackets that support nothing in this kit",
                        unused + ".",
                        List.of(new Card.Fact("out", "Leave them out"), new Card.Fact("keep", "Keep them for later"))));
            }
        }
        for (Measure measure : family.measures()) {
            if (!order.measuredMm().containsKey(measure.name())) {
                wants.add(new Card.Want(
                        AskedHead.MEASURED.command() + "-" + measure.name(),
                        measure.asks().english(),
                        "In mm, from " + Digits.plain(measure.fromMm()) + " to " + Digits.plain(measure.toMm())
                                + ", usually " + Digits.plain(measure.usualMm()) + ". Nothing is cut to it before it"
                                + " is measured.",
                        List.of()));
            }
        }
        return wants;
    }
}
