package boltlore.desk.sales;

import boltlore.asking.FigureWords;
import boltlore.asking.KitFigures;
import boltlore.book.orders.DraftDesk.Draft;
import boltlore.choices.Choice;
import boltlore.choosing.BestKit;
import boltlore.choosing.Conflict;
import boltlore.choosing.ConflictWords;
import boltlore.choosing.Opening;
import boltlore.choosing.Repair;
import boltlore.desk.frame.Answer;
import boltlore.desk.sales.Choosings.Choosing;
import boltlore.logic.Deadline;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * What would have to change for an answer that cannot be given.
 *
 * @param wanted the answer in words
 * @param says in a sentence where there is no way, or more than are shown; may be empty
 */
public record OpeningPage(String number, String seen, String wanted, String why, String says, List<Way> ways) {

    private static final int SHOWN = 4;

    /**
     * A change that leads there.
     *
     * @param says what changes, and what that changes of price and days
     * @param changes as option=value, what is wanted among them
     */
    public record Way(String says, List<String> changes) {}

    static Answer of(Draft draft, Choosing choosing, Choice wanted) {
        ConflictWords words = new ConflictWords(draft.order().choices().family());
        Conflict conflict = choosing.chooser().whyClosed(draft.order().choices(), wanted, CardMaker.importance(draft));
        List<Way> ways = List.of();
        String says = "";
        try {
            Opening opening = choosing.repairer().opening(draft.order().choices(), wanted, CardMaker.importance(draft));
            if (opening instanceof Opening.Repairs repairs) {
                ways = ways(repairs, List.of(wanted), words);
                boolean more = repairs.repairs().size() > SHOWN || !repairs.complete();
                says = more ? "There are further ways." : "";
            } else if (opening instanceof Opening.AlreadyOpen) {
                ways = List.of(new Way("Nothing else has to change.", List.of(written(wanted))));
            } else {
                says = opening instanceof Opening.Stopped
                        ? "No change helps: each kit with it has a finding that stops it."
                        : "No change of other answers leads to it.";
            }
        } catch (Deadline.Passed tooLate) {
            says = "No change that helps was found, because " + tooLate.why() + ".";
        }
        return Answer.page(
                draft.order().name() + ": " + words.says(wanted),
                "sales/opening.jte",
                new OpeningPage(
                        draft.order().name(),
                        draft.seen(),
                        words.says(wanted),
                        words.closed(wanted, conflict),
                        says,
                        ways));
    }

    static List<Way> ways(Opening.Repairs repairs, List<Choice> wanted, ConflictWords words) {
        return repairs.repairs().stream()
                .limit(SHOWN)
                .map(repair -> way(repair, wanted, words))
                .toList();
    }

    private static Way way(Repair repair, List<Choice> wanted, ConflictWords words) {
        List<String> says = new ArrayList<>();
        for (int i = 0; i < repair.givenUp().size(); i++) {
            says.add(words.says(repair.taken().get(i)) + " instead of "
                    + words.says(repair.givenUp().get(i)));
        }
        return new Way(
                String.join("; ", says) + ": " + figures(repair) + ".",
                Stream.concat(wanted.stream(), repair.taken().stream())
                        .map(OpeningPage::written)
                        .toList());
    }

    private static String written(Choice choice) {
        return choice.option().text() + "=" + choice.value();
    }

    private static String figures(Repair repair) {
        BestKit kit = repair.kit();
        return repair.before() == null
                ? KitFigures.say(kit.pricing())
                : repair.morePrice()
                                .map(more -> FigureWords.difference(kit, more))
                                .orElse("no price")
                        + ", " + FigureWords.days(repair.moreLeadDays());
    }
}
