package boltlore.picking;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A place in the stores, written AISLE-BAY-RACK-SHELF-PLACE, for example C-01-02-A-03. */
record Bin(String aisle, int bay, String rack, String shelf, String place) {

    private static final Pattern WRITTEN =
            Pattern.compile("([A-Za-z]+)-([0-9]{1,6})-([A-Za-z0-9]+)-([A-Za-z0-9]+)-([A-Za-z0-9]+)");

    static Optional<Bin> written(String text) {
        Matcher matcher = WRITTEN.matcher(text);
        return matcher.matches()
                ? Optional.of(new Bin(
                        matcher.group(1),
                        Integer.parseInt(matcher.group(2)),
                        matcher.group(3),
                        matcher.group(4),
                        matcher.group(5)))
                : Optional.empty();
    }
}
