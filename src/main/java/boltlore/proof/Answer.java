package boltlore.proof;

import boltlore.catalogue.Limit;
import boltlore.choices.Choice;
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
     * @param whenever choices of the witness that alone bring the defect about in every valid order that has them
     * @param limits that bring the defect about, or that speak of the same options and let it through
     */
    record Defect(
            Statement statement, Optional<Choices> witness, List<Choice> whenever, List<Limit> limits, Touched touched)
            implements Answer {}

    /** Not asked, because another defect already says it. */
    record SaidAlready(Statement statement, Statement by) implements Answer {}

    /** Neither proved nor refuted, whatever the time. */
    record NotDecided(Statement statement, String why) implements Answer {}

    /** Not reached before the time was up. */
    record Unproved(Statement statement) implements Answer {}
}
