package boltlore.proof;

import boltlore.catalogue.Limit;
import boltlore.choices.Choices;
import java.util.List;
import java.util.Optional;

/** What becomes of a statement. */
public sealed interface Answer {

    Statement statement();

    record Proved(Statement statement) implements Answer {}

    /**
     * Refuted.
     *
     * @param witness a valid order that shows it; empty where the defect is that there is no order
     * @param cause what it is about the witness that brings the defect about
     * @param limits that bring the defect about, or that speak of the same options and let it through
     */
    record Defect(Statement statement, Optional<Choices> witness, Cause cause, List<Limit> limits, Touched touched)
            implements Answer {}

    /** Not asked, because another defect already says it. */
    record SaidAlready(Statement statement, Statement by) implements Answer {}

    /** Neither proved nor refuted, whatever the time. */
    record NotDecided(Statement statement, String why) implements Answer {}

    /** Not reached before the time was up. */
    record Unproved(Statement statement) implements Answer {}
}
