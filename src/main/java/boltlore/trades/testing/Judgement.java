package boltlore.trades.testing;

import java.math.BigDecimal;
import java.util.List;

/** What becomes of one test. */
public sealed interface Judgement {

    record Passed() implements Judgement {}

    /**
     * Beyond its limit.
     *
     * @param by how far beyond its limit, in the row's unit; 0 where the limit itself fails, or a state was found
     */
    record Failed(BigDecimal by) implements Judgement {}

    /** These boxes are not filled in. */
    record Missing(List<Box> boxes) implements Judgement {}

    /** Something is filled in, but nobody can say whether it is good. */
    record Unreadable(List<Flaw> flaws) implements Judgement {}

    /** Nothing to hold the reading against. */
    record NoLimit(NotKnown what) implements Judgement {}

    default boolean passed() {
        return this instanceof Passed;
    }
}
