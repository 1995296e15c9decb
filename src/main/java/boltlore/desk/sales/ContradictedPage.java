package boltlore.desk.sales;

import boltlore.book.orders.DraftDesk.Draft;
import boltlore.choosing.ConflictWords;
import boltlore.choosing.Opening;
import boltlore.desk.frame.Answer;
import boltlore.desk.sales.Choosings.Choosing;
import boltlore.logic.Deadline;
import java.util.List;

/**
 * A draft whose answers do not stand together, because the catalogue has changed since or a file said so.
 *
 * @param says why
 * @param ways changes after which they do
 */
public record ContradictedPage(String number, String seen, String says, List<OpeningPage.Way> ways, boolean mayGoBack) {

    static Answer.Shown of(Draft draft, Choosing choosing) {
        ConflictWords words = new ConflictWords(draft.order().choices().family());
        String says =
                words.contradiction(choosing.chooser().conflict(draft.order().choices(), CardMaker.importance(draft)));
        return Answer.page(
                draft.order().name(),
                "sales/contradicted.jte",
                new ContradictedPage(
                        draft.order().name(),
                        draft.seen(),
                        says,
                        ways(draft, choosing, words),
                        !draft.earlier().isEmpty()));
    }

    private static List<OpeningPage.Way> ways(Draft draft, Choosing choosing, ConflictWords words) {
        try {
            return choosing.repairer().mending(draft.order().choices(), CardMaker.importance(draft))
                            instanceof Opening.Repairs repairs
                    ? OpeningPage.ways(repairs, List.of(), words)
                    : List.of();
        } catch (Deadline.Passed tooLate) {
            return List.of();
        }
    }
}
