package boltlore.bring;

import java.util.EnumMap;
import java.util.Map;
import java.util.SortedMap;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * A row that names a part.
 *
 * @param row of the sheet, from 1
 * @param section the heading that it stands under, or empty
 * @param texts what the row says, by what it is; of several columns of a kind, one after the other
 * @param quantity how many, or null where the row does not say it, or says it in columns of values
 * @param values how many for each value of an option, by column; empty where there are no such columns
 * @param alternate whether it may stand in for another part, and is not needed beside it
 */
public record Entry(
        int row,
        String section,
        Map<Role, String> texts,
        @Nullable Amount quantity,
        SortedMap<Integer, Amount> values,
        boolean alternate) {

    String text(Role role) {
        return texts.getOrDefault(role, "");
    }

    /** The same without what it says of that. */
    Entry without(Role role) {
        Map<Role, String> left = new EnumMap<>(texts);
        left.remove(role);
        return new Entry(row, section, left, quantity, values, alternate);
    }

    /** What the part is called: by its name, else by its description or its number. */
    String name() {
        for (Role role : new Role[] {Role.NAME, Role.DESCRIPTION, Role.PART_NUMBER, Role.ORDER_CODE, Role.MAKER_CODE}) {
            if (!text(role).isEmpty()) {
                return text(role);
            }
        }
        return "";
    }

    /** The same with what tells it from others of that name. */
    String fullName() {
        String more = text(Role.DESCRIPTION);
        return more.isEmpty() || name().equals(more) ? name() : name() + ", " + more;
    }

    @Override
    public String toString() {
        return row + " " + fullName() + " x "
                + (quantity == null ? "?" : quantity.number().toPlainString() + quantity.unit())
                + values.entrySet().stream()
                        .map(value -> " " + value.getKey() + ":"
                                + value.getValue().number().toPlainString())
                        .collect(Collectors.joining());
    }
}
