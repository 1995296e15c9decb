package boltlore.proof;

import boltlore.catalogue.Condition;
import boltlore.logic.Any;
import boltlore.measure.LineName;
import java.util.List;
import java.util.Optional;

/**
 * A finding that orders may have.
 *
 * @param when they have it, as a condition over options; empty where that outgrew its bound
 * @param lines that it speaks of
 * @param says the finding as a sentence about some order
 */
public record PossibleFinding(
        String subject, String detail, Optional<Condition> when, List<LineName> lines, String says) {

    public static PossibleFinding of(String subject, String detail, Condition when, List<LineName> lines, String says) {
        return new PossibleFinding(subject, detail, Optional.of(when), lines, says);
    }

    /** The statement that no valid order has it. */
    public Statement statement(StatementKind kind) {
        Question question = when.map(Question::noOrder)
                .orElseGet(() -> new Question.TooLarge("its quantities depend on too many conditions"));
        return new Statement(kind, subject, detail, says, question, when.orElse(Any.NEVER), lines, List.of());
    }
}
