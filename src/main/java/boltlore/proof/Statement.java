package boltlore.proof;

import boltlore.catalogue.Condition;
import boltlore.catalogue.Limit;
import boltlore.logic.Any;
import boltlore.measure.LineName;
import java.util.List;

/**
 * One thing that is to hold of a family.
 *
 * @param subject name of the line, position, part, pair, limit or value it is about
 * @param detail names that make it exact; may be empty
 * @param refuted the sentence that is true when the statement is not
 * @param touches the valid orders that are touched when it is refuted, as a condition over options
 * @param lines that it speaks of
 * @param limits that it speaks of
 */
public record Statement(
        StatementKind kind,
        String subject,
        String detail,
        String refuted,
        Question question,
        Condition touches,
        List<LineName> lines,
        List<Limit> limits) {

    /** Stands for all statements of the kind, where there was no time to make them. */
    static Statement notStated(StatementKind kind) {
        Question none = new Question.TooLarge("there was no time to state it");
        return new Statement(kind, "", "", kind.holds(), none, Any.NEVER, List.of(), List.of());
    }

    /** The same, told of one order. */
    Statement refutedBy(String sentence) {
        return new Statement(kind, subject, detail, sentence, question, touches, lines, limits);
    }

    /** Kind, subject and detail in one line. */
    public String title() {
        String named = subject.isEmpty() ? kind.name() : kind.name() + ": " + subject;
        return detail.isEmpty() ? named : named + " (" + detail + ")";
    }
}
