package boltlore.desk.frame;

import boltlore.book.Entry;
import boltlore.book.db.Reading;
import boltlore.faults.Outcome;
import boltlore.json.Json;
import boltlore.json.JsonFile;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.function.BinaryOperator;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** What a form has left in the book, in sentences, for the page that follows it. */
public final class Told {

    static final String FIELD = "done";

    private static final int MOST = 6;
    private static final Pattern ENTRY = Pattern.compile("[0-9]{1,15}");

    private Told() {}

    /** Of the entry that the page's address names, and those that were made with it; none where it names none. */
    public static List<String> of(Reading reading, Call call) {
        String said = call.said(FIELD);
        if (!ENTRY.matcher(said).matches()) {
            return List.of();
        }
        List<Entry> entries = reading.journal().after(Long.parseLong(said) - 1, MOST + 1);
        List<Entry> together = entries.stream()
                .takeWhile(entry -> entry.stamp().equals(entries.get(0).stamp()))
                .toList();
        List<String> all = together.stream().limit(MOST).map(Told::says).collect(Collectors.toList());
        if (together.size() > MOST) {
            all.add("And more entries after these.");
        }
        return List.copyOf(all);
    }

    /** 'Entry 214, part issued, order BL-1001: part PX-12, quantity 4.' */
    static String says(Entry entry) {
        String about = entry.subject().what().isEmpty()
                ? ""
                : ", " + entry.subject().what() + " " + entry.subject().name();
        String data = facts(entry.data(), (name, value) -> value);
        return "Entry " + entry.number() + ", " + entry.kind() + about + (data.isEmpty() ? "." : ": " + data + ".");
    }

    /**
     * What an entry says beside its kind, 'part PX-12, quantity 4': texts and numbers, no hashes.
     *
     * @param named what people call a value of that name
     */
    public static String facts(Entry entry, BinaryOperator<String> named) {
        return facts(entry.data(), named);
    }

    private static String facts(String data, BinaryOperator<String> named) {
        if (JsonFile.parse("", data.getBytes(StandardCharsets.UTF_8)) instanceof Outcome.Sound<Json> sound
                && sound.value() instanceof Json.Obj object) {
            return object.members().entrySet().stream()
                    .map(member -> fact(member.getKey(), member.getValue(), named))
                    .filter(fact -> !fact.isEmpty())
                    .collect(Collectors.joining(", "));
        }
        return "";
    }

    private static String fact(String name, Json value, BinaryOperator<String> named) {
        if (value instanceof Json.Text text) {
            return isHash(text.text()) ? "" : name + " " + named.apply(name, text.text());
        }
        return value instanceof Json.Num number
                ? name + " " + number.number().stripTrailingZeros().toPlainString()
                : "";
    }

    private static boolean isHash(String text) {
        return text.matches("[0-9a-f]{64}");
    }
}
