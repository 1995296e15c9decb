package boltlore.desk.sales;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * An order that is still open, as its card shows it.
 *
 * @param seen names the draft that this card was made from
 * @param facts what it says beside its choices
 * @param settled answers so far, each a sentence
 * @param question the next one; null where all is settled
 * @param foot what it comes to
 * @param wants what must still be said before it can be quoted, each with its field
 * @param holds what must be mended before the customer can order what was quoted last, in sentences
 * @param mayGoBack whether there is a change to take back
 * @param quotable whether every question has its answer
 */
public record Card(
        String number,
        String seen,
        String state,
        String family,
        List<Fact> facts,
        List<Settled> settled,
        @Nullable Question question,
        Foot foot,
        List<Want> wants,
        List<Version> versions,
        List<String> holds,
        boolean mayGoBack,
        boolean quotable) {

    /** The same card with what was quoted, and what holds the last of it. */
    Card with(List<Version> quoted, List<String> held) {
        return new Card(
                number, seen, state, family, facts, settled, question, foot, wants, quoted, held, mayGoBack, quotable);
    }

    /** Whether what was quoted last is what the card says now. */
    public boolean quoted() {
        return !versions.isEmpty() && !versions.get(versions.size() - 1).outOfDate();
    }

    /** A label, and what stands under it. */
    public record Fact(String label, String says) {}

    /**
     * An answer.
     *
     * @param option by which it is asked again; empty where nothing but other answers changes it
     */
    public record Settled(String asks, String says, String option) {}

    /**
     * A question with its answers; the closed ones stand below.
     *
     * @param together answers of a question that may have several, each by itself; none of one that has one answer
     */
    public record Question(
            String option,
            String asks,
            String currency,
            List<Answer> answers,
            List<Closed> closed,
            List<Member> together) {}

    /**
     * One of several answers.
     *
     * @param with what it changes
     */
    public record Member(String option, String says, boolean chosen, Answer with) {}

    /**
     * What an answer changes.
     *
     * @param price with its sign, in the currency of the question
     * @param closes what it rules out, in words; empty where it rules out nothing
     */
    public record Answer(
            String value,
            String says,
            boolean usual,
            boolean chosen,
            String price,
            String kg,
            String days,
            String closes) {}

    /** An answer that cannot be given any more, and why. */
    public record Closed(String value, String says) {}

    /**
     * The line at the foot.
     *
     * @param says what the figures are of
     * @param figures price before tax, mass and lead time; none where no kit can be had
     */
    public record Foot(String says, List<Fact> figures) {}

    /**
     * Something beside the choices.
     *
     * @param values that may be said; none where it is typed
     */
    public record Want(String field, String asks, String hint, List<Fact> values) {}

    /** A version of the quotation. */
    public record Version(
            int number, String on, String validUntil, String net, String total, int leadDays, boolean outOfDate) {}
}
