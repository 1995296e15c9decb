package boltlore.catalogue;

import boltlore.measure.OptionName;
import boltlore.measure.Wording;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/**
 * All days, or all chassis numbers, cut wherever an effectivity of a family begins or ends: within one piece no two orders
 * differ by it. The pieces are the values of an option that no customer is asked, so whatever is proved of every value of
 * every option is proved of every day and number.
 *
 * @param begins where each piece but the first begins, in days since 1970-01-01 or as a number
 */
public record EffectivityScale(By by, SortedSet<Integer> begins) {

    /** What orders are told apart by. */
    public enum By {
        PLACED(
                "placed",
                "On which day is the order placed ('placed' of the order)?",
                Map.of("en", "Ordered", "de", "Bestellt", "fr", "Commande")),
        CHASSIS(
                "chassis",
                "Which running number ends the chassis number ('chassis' of the order)?",
                Map.of("en", "Chassis", "de", "Fahrgestell", "fr", "Ch\u00e2ssis"));

        private final String written;
        private final String asks;

        @SuppressWarnings("ImmutableEnumChecker") // an immutable map
        private final Map<String, String> says;

        By(String written, String asks, Map<String, String> says) {
            this.written = written;
            this.asks = asks;
            this.says = says;
        }

        /** The word for it in conditions and orders, and the name of its option. */
        public String written() {
            return written;
        }

        public OptionName option() {
            return new OptionName(written);
        }

        public static Optional<By> named(String written) {
            for (By by : values()) {
                if (by.written.equals(written)) {
                    return Optional.of(by);
                }
            }
            return Optional.empty();
        }

        private String text(int at) {
            return this == CHASSIS
                    ? Integer.toString(at)
                    : LocalDate.ofEpochDay(at).toString();
        }
    }

    private static final Map<String, String> FROM = Map.of("en", " from ", "de", " ab ", "fr", " \u00e0 partir du ");
    private static final Map<String, String> UNTIL = Map.of("en", " until ", "de", " bis ", "fr", " jusqu\u2019au ");
    private static final Map<String, String> TO = Map.of("en", " to ", "de", " bis ", "fr", " au ");

    public EffectivityScale {
        begins = Collections.unmodifiableSortedSet(new TreeSet<>(begins));
    }

    /** A piece, both ends included; a null end is open. */
    public record Piece(@Nullable Integer first, @Nullable Integer last) {

        /** Some day or number in it. */
        public int any() {
            return first != null ? first : last != null ? last : 0;
        }
    }

    static @Nullable Integer day(@Nullable LocalDate day) {
        return day == null ? null : Math.toIntExact(day.toEpochDay());
    }

    /** The pieces from the first to the last, each with the name of its value. */
    public Map<String, Piece> pieces() {
        Map<String, Piece> pieces = new LinkedHashMap<>();
        List<Integer> ends = new ArrayList<>(begins);
        Integer first = null;
        for (Integer next : ends) {
            put(new Piece(first, next - 1), pieces);
            first = next;
        }
        put(new Piece(first, null), pieces);
        return Collections.unmodifiableMap(pieces);
    }

    private void put(Piece piece, Map<String, Piece> pieces) {
        pieces.put(name(piece), piece);
    }

    /** The value that holds on that day or for that number. */
    public String at(int wanted) {
        return pieces().entrySet().stream()
                .filter(piece -> piece.getValue().last() == null
                        || wanted <= piece.getValue().last())
                .map(Map.Entry::getKey)
                .findFirst()
                .orElseThrow();
    }

    /** The piece of that value. */
    public Optional<Piece> piece(String value) {
        return Optional.ofNullable(pieces().get(value));
    }

    /** That an order lies between these ends, at which the scale is cut. */
    public Condition within(@Nullable Integer first, @Nullable Integer last) {
        SortedSet<String> values = new TreeSet<>();
        pieces().forEach((name, piece) -> {
            boolean begun = first == null || (piece.first() != null && piece.first() >= first);
            boolean over = last != null && (piece.last() == null || piece.last() > last);
            if (begun && !over) {
                values.add(name);
            }
        });
        return new Condition.Is(by.option(), Collections.unmodifiableSortedSet(values));
    }

    /** The option whose values are the pieces. */
    public Option option() {
        List<OptionValue> values = pieces().entrySet().stream()
                .map(piece -> new OptionValue(piece.getKey(), says(piece.getValue()), Facts.NONE))
                .toList();
        return new Option(by.option(), by.asks, null, values, null, List.of(), null, this);
    }

    private String name(Piece piece) {
        if (piece.first() == null) {
            return piece.last() == null ? "any" : "until-" + by.text(piece.last());
        }
        String from = by.text(piece.first());
        return piece.last() == null ? "from-" + from : from + "-to-" + by.text(piece.last());
    }

    private Wording says(Piece piece) {
        Map<String, String> texts = new TreeMap<>();
        by.says.forEach((language, word) -> texts.put(language, word + says(piece, language)));
        return new Wording(texts);
    }

    private String says(Piece piece, String language) {
        if (piece.first() == null) {
            return piece.last() == null ? "" : UNTIL.get(language) + by.text(piece.last());
        }
        String from = FROM.get(language) + by.text(piece.first());
        return piece.last() == null ? from : from + TO.get(language) + by.text(piece.last());
    }
}
