package boltlore.bring;

/**
 * A column of a table, and what it is taken for.
 *
 * @param at from 0 in the sheet
 * @param option of a column of {@link Role#VALUE} the option, in the words of the heading over it; else empty
 * @param value of such a column its value, in the words of its heading; else empty
 * @param sure whether that is beyond doubt
 * @param because why it is taken for that
 */
public record Column(int at, String heading, Role role, String option, String value, boolean sure, String because) {

    Column as(Role other, boolean certain, String reason) {
        return new Column(at, heading, other, option, value, certain, reason);
    }

    Column valueOf(String itsOption, String itsValue, boolean certain, String reason) {
        return new Column(at, heading, Role.VALUE, itsOption, itsValue, certain, reason);
    }
}
