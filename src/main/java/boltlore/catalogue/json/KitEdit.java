package boltlore.catalogue.json;

import java.util.Optional;

/**
 * A line of a kit that is other than before.
 *
 * @param part number of its part, where that changes
 * @param quantity in plain digits, where that changes
 * @param when its condition as JSON, where that changes
 * @param note for the workshop, where that changes; empty where there is none
 */
public record KitEdit(
        String position,
        String line,
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
    public record Change(String from, String to) {}

    /** The change from one to the other, if there is one. */
    public static Optional<Change> change(String from, String to) {
        return from.equals(to) ? Optional.empty() : Optional.of(new Change(from, to));
    }

    /** A line that goes. */
    public static KitEdit removed(String position, String line) {
        return new KitEdit(
                position, line, Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Kind.REMOVED);
    }

    /** A line that comes. */
    public static KitEdit added(String position, String line, String part, String quantity, String when, String note) {
        return new KitEdit(
                position, line, change("", part), change("", quantity), change("", when), change("", note), Kind.ADDED);
    }

    /** Whether anything is other than before. */
    public boolean changes() {
        return kind != Kind.CHANGED || part.isPresent() || quantity.isPresent() || when.isPresent() || note.isPresent();
    }

    /** 'line hub: quantity 2 instead of 1; fitted when {…} instead of {…}'. */
    public String says() {
        if (kind == Kind.REMOVED) {
            return "line " + line + " at " + position + " is taken out";
        }
        StringBuilder says = new StringBuilder("line " + line + " at " + position);
        says.append(kind == Kind.ADDED ? " is new: " : ": ");
        String between = "";
        between = append(says, between, "part", part);
        between = append(says, between, "quantity", quantity);
        between = append(says, between, "fitted when", when);
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
