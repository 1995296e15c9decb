package boltlore.desk.sales;

import boltlore.book.orders.DraftDesk.Draft;
import boltlore.choosing.Conflict;
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
 * @param against the answers that do not go together, each of which may be left open instead
 * @param ways changes after which they do
 * @param quoted version that was quoted last, as a number; empty where none was
 */
public record ContradictedPage(
        String number,
        String seen,
        String says,
        List<Card.Settled> against,
        List<OpeningPage.Way> ways,
        boolean mayGoBack,
        String quoted) {

    static Answer.Shown of(Draft draft, Choosing choosing, List<Card.Version> versions) {
        ConflictWords words = new ConflictWords(draft.order().choices().family());
        Conflict conflict = choosing.chooser().conflict(draft.order().choices(), CardMaker.importance(draft));
        String quoted = versions.isEmpty() || !versions.get(versions.size() - 1).outOfDate()
                ? ""
                : String.valueOf(versions.size());
        return Answer.page(
                draft.order().name(),
                "sales/contradicted.jte",
                new ContradictedPage(
                        draft.order().name(),
                        draft.seen(),
                        words.contradiction(conflict),
                        conflict.choices().stream()
                                .map(choice -> new Card.Settled(
                                        "", words.says(choice), choice.option().text()))
                                .toList(),
                        ways(draft, choosing, words),
                        !draft.earlier().isEmpty(),
                        quoted));
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
