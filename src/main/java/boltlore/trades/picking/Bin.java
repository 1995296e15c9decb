package boltlore.trades.picking;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A place in the stores, written AISLE-BAY-RACK-SHELF-PLACE, for example C-01-02-A-03.
 *
 * @param across rack, shelf and place within the bay, each ready for comparing
 */
record Bin(String aisle, int bay, List<String> across) {

    private static final Pattern WRITTEN =
            Pattern.compile("([A-Za-z]+)-([0-9]{1,6})-([A-Za-z0-9]+)-([A-Za-z0-9]+)-([A-Za-z0-9]+)");
    private static final Pattern LEADING_ZEROS = Pattern.compile("^0+(?=.)");
    private static final Pattern NUMBER = Pattern.compile("[0-9]+");

    static Optional<Bin> written(String text) {
        Matcher matcher = WRITTEN.matcher(text);
        if (!matcher.matches()) {
            return Optional.empty();
        }
        List<String> across =
                List.of(comparable(matcher.group(3)), comparable(matcher.group(4)), comparable(matcher.group(5)));
        return Optional.of(new Bin(matcher.group(1), Integer.parseInt(matcher.group(2)), across));
    }

    /** A number gets its count of digits before it, so that 2 comes before 10. */
    private static String comparable(String text) {
        String value = LEADING_ZEROS.matcher(text).replaceFirst("");
        return NUMBER.matcher(value).matches() ? (char) ('0' + value.length()) + value : text;
    }
}
