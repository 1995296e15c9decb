package boltlore.catalogue.json;

import java.util.Optional;
import java.util.function.UnaryOperator;

/**
 * A line of a kit that is other than before.
 *
 * @param line its name, before the edit
 * @param name that it gets, where that changes
 * @param part number of its part, where that changes
 * @param quantity in plain digits, where that changes
 * @param when its condition as JSON, where that changes
 * @param note for the workshop, where that changes; empty where there is none
 */
public record KitEdit(
        String position,
        String line,
        Optional<Change> name,
        Optional<Change> part,
        Optional<Change> quantity,
        Optional<Change> when,
        Optional<Change> note,
        Kind kind) {

    /** What becomes of the line. */
    public enum Kind {
        ADDED,
        CHANGED,
        REMOVED
    }

    /** A value before and after. */
    public record Change(String from, String to) {

        Change in(UnaryOperator<String> words) {
            return new Change(from.isEmpty() ? "" : words.apply(from), to.isEmpty() ? "" : words.apply(to));
        }
    }

    /** The change from one to the other, if there is one. */
    public static Optional<Change> change(String from, String to) {
        return from.equals(to) ? Optional.empty() : Optional.of(new Change(from, to));
    }

    /** A line that goes. */
    public static KitEdit removed(String position, String line) {
        return new KitEdit(
                position,
                line,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Kind.REMOVED);
    }

    /** A line that comes. */
    public static KitEdit added(String position, String line, String part, String quantity, String when, String note) {
        return new KitEdit(
                position,
                line,
                Optional.empty(),
                change("", part),
                change("", quantity),
                change("", when),
                change("", note),
                Kind.ADDED);
    }

    /** Whether anything is other than before. */
    public boolean changes() {
        return kind != Kind.CHANGED
                || name.isPresent()
                || part.isPresent()
                || quantity.isPresent()
                || when.isPresent()
                || note.isPresent();
    }

    /** 'line hub at wheel: quantity 2 instead of 1; fitted in orders with Early body instead of every kit'. */
    String says(UnaryOperator<String> conditions) {
        if (kind == Kind.REMOVED) {
            return "line " + line + " at " + position + " is taken out";
        }
        StringBuilder says = new StringBuilder("line " + line + " at " + position);
        says.append(kind == Kind.ADDED ? " is new: " : ": ");
        String between = "";
        between = append(says, between, "called", name.map(change -> new Change("", change.to())));
        between = append(says, between, "part", part);
        between = append(says, between, "quantity", quantity);
        between = append(says, between, "fitted in", when.map(change -> change.in(conditions)));
        if (note.isPresent() && note.get().to().isEmpty()) {
            says.append(between).append("without its note");
        } else {
            append(says, between, "note", note);
        }
        return says.toString();
    }

    private static String append(StringBuilder says, String between, String what, Optional<Change> change) {
        if (change.isEmpty()) {
            return between;
        }
        says.append(between).append(what).append(' ').append(change.get().to());
        if (!change.get().from().isEmpty()) {
            says.append(" instead of ").append(change.get().from());
        }
        return "; ";
    }
}
