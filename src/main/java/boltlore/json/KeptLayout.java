package boltlore.json;

import boltlore.faults.Outcome;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Writes an edited JSON text (RFC 8259) as it was laid out: what is equal in both is copied letter by letter, with the blanks
 * and line ends around it; only what is new is laid out anew.
 */
public final class KeptLayout {

    private static final int LINE = 100;
    private static final List<String> NAMES = List.of("position", "line", "option", "value", "limit", "part");

    /** Where a value stands in the text, and the values in it, each with where it begins: at its key where it has one. */
    private record Spot(int from, int to, List<Inner> inner) {}

    private record Inner(int from, Spot value) {}

    /** A member or item of the edited value, with the one that it was; null where it is new. */
    private record Pair(String key, Json now, @Nullable Was was) {}

    /** @param index among the values around it */
    private record Was(int index, Inner inner, Json value) {}

    private final String text;
    private int at;

    private KeptLayout(String text) {
        this.text = text;
    }

    /**
     * The edited text.
     *
     * @param before the text as it was, which is sound JSON
     * @param after what is to stand in it
     * @return the new text; laid out anew where the old one cannot be read
     */
    public static String of(String before, JsonOut after) {
        String written = after.written();
        return parse(before) instanceof Outcome.Sound<Json> old && parse(written) instanceof Outcome.Sound<Json> now
                ? new KeptLayout(before).edited(old.value(), now.value())
                : written;
    }

    private static Outcome<Json> parse(String text) {
        return JsonFile.parse("", text.getBytes(StandardCharsets.UTF_8));
    }

    private String edited(Json before, Json now) {
        Spot whole = spot();
        return text.substring(0, whole.from()) + value(before, whole, now) + text.substring(whole.to());
    }

    private String value(Json before, Spot spot, Json now) {
        if (inLine(before).equals(inLine(now))) {
            return text.substring(spot.from(), spot.to());
        }
        boolean objects = before instanceof Json.Obj && now instanceof Json.Obj;
        boolean lists = before instanceof Json.Arr && now instanceof Json.Arr;
        if ((!objects && !lists) || spot.inner().isEmpty()) {
            return fresh(now, spot.from());
        }
        List<Pair> pairs = objects
                ? members((Json.Obj) before, spot, (Json.Obj) now)
                : items((Json.Arr) before, spot, (Json.Arr) now);
        return pairs.isEmpty() ? fresh(now, spot.from()) : joined(pairs, spot);
    }

    private static String inLine(Json json) {
        return JsonOut.of(json).writtenInLine();
    }

    private static List<Pair> members(Json.Obj before, Spot spot, Json.Obj now) {
        List<String> keys = List.copyOf(before.members().keySet());
        List<Pair> pairs = new ArrayList<>();
        now.members().forEach((key, value) -> {
            Json old = before.members().get(key);
            int index = keys.indexOf(key);
            pairs.add(new Pair(
                    key, value, old == null ? null : new Was(index, spot.inner().get(index), old)));
        });
        return pairs;
    }

    /** Items are the same by what they say, by their name, or where none came or went by their place. */
    private static List<Pair> items(Json.Arr before, Spot spot, Json.Arr now) {
        List<Pair> pairs = new ArrayList<>();
        int next = 0;
        for (int i = 0; i < now.items().size(); i++) {
            Json item = now.items().get(i);
            int index = before.items().size() == now.items().size() ? i : same(before.items(), next, item);
            boolean known = index < before.items().size();
            pairs.add(new Pair(
                    "",
                    item,
                    known
                            ? new Was(
                                    index,
                                    spot.inner().get(index),
                                    before.items().get(index))
                            : null));
            next = known ? index + 1 : next;
        }
        return pairs;
    }

    private static int same(List<Json> before, int from, Json item) {
        int index = from;
        while (index < before.size()
                && !inLine(before.get(index)).equals(inLine(item))
                && !(item instanceof Json.Obj && name(before.get(index)).equals(name(item)))) {
            index++;
        }
        return index;
    }

    private static String name(Json item) {
        Map<String, Json> members = item instanceof Json.Obj object ? object.members() : Map.of();
        return NAMES.stream()
                .filter(members::containsKey)
                .findFirst()
                .map(key -> inLine(members.getOrDefault(key, item)))
                .orElse("");
    }

    private String joined(List<Pair> pairs, Spot spot) {
        List<Inner> inner = spot.inner();
        String lead = text.substring(spot.from() + 1, inner.get(0).from());
        String between = inner.size() > 1
                ? text.substring(inner.get(0).value().to(), inner.get(1).from())
                : lead.isEmpty() ? ", " : "," + lead;
        StringBuilder joined = new StringBuilder().append(text.charAt(spot.from()));
        for (int i = 0; i < pairs.size(); i++) {
            Pair pair = pairs.get(i);
            Was was = pair.was();
            String gap = was == null || was.index() == 0
                    ? between
                    : text.substring(
                            inner.get(was.index() - 1).value().to(), was.inner().from());
            joined.append(i == 0 ? lead : gap);
            if (was == null) {
                String key =
                        pair.key().isEmpty() ? "" : JsonOut.text(pair.key()).writtenInLine() + ": ";
                joined.append(key).append(fresh(pair.now(), inner.get(0).from()));
            } else {
                Spot value = was.inner().value();
                joined.append(text, was.inner().from(), value.from()).append(value(was.value(), value, pair.now()));
            }
        }
        int end = inner.get(inner.size() - 1).value().to();
        return joined.append(text, end, spot.to()).toString();
    }

    /** Laid out as the program does, as far to the right as what stands there. */
    private String fresh(Json now, int place) {
        int begin = text.lastIndexOf('\n', Math.max(0, place - 1)) + 1;
        int indent = begin;
        while (indent < text.length() && (text.charAt(indent) == ' ' || text.charAt(indent) == '\t')) {
            indent++;
        }
        String line = inLine(now);
        return line.length() + indent - begin <= LINE
                ? line
                : JsonOut.of(now).written().strip().replace("\n", '\n' + text.substring(begin, indent));
    }

    private Spot spot() {
        blanks();
        int from = at;
        char first = text.charAt(at);
        List<Inner> inner = new ArrayList<>();
        if (first == '{' || first == '[') {
            at++;
            for (blanks(); text.charAt(at) != '}' && text.charAt(at) != ']'; blanks()) {
                if (text.charAt(at) == ',') {
                    at++;
                    blanks();
                }
                int begin = at;
                if (first == '{') {
                    word();
                    blanks();
                    at++;
                }
                inner.add(new Inner(begin, spot()));
            }
            at++;
        } else {
            word();
        }
        return new Spot(from, at, inner);
    }

    private void blanks() {
        while (at < text.length() && Character.isWhitespace(text.charAt(at))) {
            at++;
        }
    }

    /** A text, a number or a word. */
    private void word() {
        if (text.charAt(at) == '"') {
            for (at++; text.charAt(at) != '"'; at++) {
                at += text.charAt(at) == '\\' ? 1 : 0;
            }
            at++;
        } else {
            while (at < text.length() && ",]}: \t\r\n".indexOf(text.charAt(at)) < 0) {
                at++;
            }
        }
    }
}
