package boltlore.json;

import java.math.BigDecimal;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Consumer;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * A JSON value to be written. Built from its pieces and turned into text by {@link #written()}: keys in the order in
 * which they were put, decimals as texts in plain digits, two blanks of indent, {@code \n} at line ends, so that the
 * same value always gives the same bytes.
 *
 * <pre>{@code
 * JsonOut.object()
 *     .put("order", order.name())
 *     .put("cost", cost)                                    // BigDecimal: "12.50"
 *     .put("lines", JsonOut.list(lines, line -> JsonOut.text(line.name().text())))
 *     .written();
 * }</pre>
 */
public sealed interface JsonOut {

    /** A number, a truth or nothing, as it stands in the text. */
    record Plain(String literal) implements JsonOut {}

    record Text(String text) implements JsonOut {}

    /** A list; {@code aLineEach}: each item in a line of its own, however long, as rows of a table are. */
    record Items(List<JsonOut> items, boolean aLineEach) implements JsonOut {}

    /** An object under construction. */
    final class Members implements JsonOut {

        private final Map<String, JsonOut> members = new LinkedHashMap<>();

        private Members() {}

        /**
         * Puts a value behind those that are there.
         *
         * @throws IllegalArgumentException where the key has been put before
         */
        public Members put(String key, JsonOut value) {
            if (members.putIfAbsent(key, value) != null) {
                throw new IllegalArgumentException("Key put twice: " + key);
            }
            return this;
        }

        /** Under the key, or under the other one where the key holds another value; the same value is put once. */
        public Members putOnce(String key, String otherKey, JsonOut value) {
            JsonOut known = members.get(key);
            if (known == null) {
                members.put(key, value);
            } else if (!known.toString().equals(value.toString())) {
                members.put(otherKey, value);
            }
            return this;
        }

        public Members put(String key, String value) {
            return put(key, text(value));
        }

        /** One of a few words: the constant's name in small letters, with blanks. */
        public Members put(String key, Enum<?> value) {
            return put(key, value.name().toLowerCase(Locale.ROOT).replace('_', ' '));
        }

        public Members put(String key, BigDecimal value) {
            return put(key, decimal(value));
        }

        public Members put(String key, long value) {
            return put(key, whole(value));
        }

        public Members put(String key, boolean value) {
            return put(key, truth(value));
        }

        /** Puts the text unless it is null or empty. */
        public Members putIfAny(String key, @Nullable String value) {
            return value == null || value.isEmpty() ? this : put(key, value);
        }

        /** Puts the decimal unless it is null. */
        public Members putIfAny(String key, @Nullable BigDecimal value) {
            return value == null ? this : put(key, value);
        }

        /** Puts the texts unless there are none. */
        public Members putIfAny(String key, Collection<?> texts) {
            return texts.isEmpty() ? this : put(key, texts(texts));
        }

        Map<String, JsonOut> members() {
            return members;
        }

        @Override
        public String toString() {
            return members.toString();
        }
    }

    static Members object() {
        return new Members();
    }

    static JsonOut text(String text) {
        return new Text(text);
    }

    /** A decimal as a text in plain digits, with the digits it has. */
    static JsonOut decimal(BigDecimal decimal) {
        return text(decimal.toPlainString());
    }

    /** A decimal as a number, with the digits it has. */
    static JsonOut number(BigDecimal decimal) {
        return new Plain(decimal.toPlainString());
    }

    static JsonOut whole(long number) {
        return new Plain(Long.toString(number));
    }

    static JsonOut truth(boolean truth) {
        return new Plain(Boolean.toString(truth));
    }

    static JsonOut nothing() {
        return new Plain("null");
    }

    static JsonOut list(List<? extends JsonOut> items) {
        return new Items(List.copyOf(items), false);
    }

    /** Rows of a table, a line each: so they can be searched, compared and taken apart line by line. */
    static JsonOut rows(List<? extends JsonOut> rows) {
        return new Items(List.copyOf(rows), true);
    }

    static <T> JsonOut list(Collection<T> all, Function<? super T, ? extends JsonOut> each) {
        return list(all.stream().<JsonOut>map(each).toList());
    }

    /** A list of texts, each by its toString. */
    static JsonOut texts(Collection<?> all) {
        return list(all, each -> text(String.valueOf(each)));
    }

    /** The JSON text with a line break at the end. */
    default String written() {
        return JsonLayout.lay(this);
    }

    /** The JSON text in one line without a break at its end, as in a file of one value a line. */
    default String writtenInLine() {
        return JsonLayout.layInLine(this);
    }

    /** A value as it was read; numbers keep the digits that they have. */
    static JsonOut of(Json json) {
        if (json instanceof Json.Obj object) {
            Members members = object();
            object.members().forEach((key, member) -> members.put(key, of(member)));
            return members;
        }
        if (json instanceof Json.Arr array) {
            return list(array.items(), JsonOut::of);
        }
        if (json instanceof Json.Text text) {
            return text(text.text());
        }
        if (json instanceof Json.Num number) {
            return number(number.number());
        }
        return json instanceof Json.Truth truth ? truth(truth.truth()) : nothing();
    }

    /** The text of this value as an item for {@link #writeList}. */
    default String writtenInList() {
        return JsonLayout.layInList(this);
    }

    /**
     * Writes a list piece by piece, without the line break at its end, as {@link #written()} would write it in one: for
     * more items than should be held twice.
     *
     * @param items each {@link #writtenInList}; the list is too long for one line
     */
    static void writeList(List<String> items, Consumer<String> out) {
        String before = "[\n  ";
        for (String item : items) {
            out.accept(before);
            out.accept(item);
            before = ",\n  ";
        }
        out.accept(items.isEmpty() ? "[]" : "\n]");
    }
}
