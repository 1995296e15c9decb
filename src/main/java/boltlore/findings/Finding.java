package boltlore.findings;

import java.util.Collection;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;

/**
 * Something that a person must know.
 *
 * @param subject stable name of what it is about, by which it is waived: a line, a joint, a cable
 * @param data the arguments of the kind's sentence by name, in the order given: texts, numbers, lists, texts in
 * several languages or another finding
 */
public record Finding(Kind kind, String subject, Map<String, Object> data) {

    private static final Comparator<Finding> WORST_FIRST = Comparator.comparing(Finding::severity);

    public Finding {
        data = Collections.unmodifiableMap(new LinkedHashMap<>(data));
    }

    /**
     * With its data as names and values in turn.
     *
     * @param named name and value in turn
     */
    public static Finding of(Kind kind, String subject, Object... named) {
        Map<String, Object> data = new LinkedHashMap<>();
        for (int i = 0; i + 1 < named.length; i += 2) {
            data.put((String) named[i], named[i + 1]);
        }
        return new Finding(kind, subject, data);
    }

    /** The orders that it is about, where its sentence names any: what is made of several orders needs no guess. */
    public List<String> orders() {
        return Stream.of("order", "orders")
                .map(data::get)
                .filter(Objects::nonNull)
                .flatMap(names -> names instanceof Collection<?> all ? all.stream() : Stream.of(names))
                .map(Object::toString)
                .toList();
    }

    public Severity severity() {
        return kind.severity();
    }

    public boolean stops() {
        return severity() == Severity.STOP;
    }

    /** The sentence, in English. */
    public String says() {
        return says("en");
    }

    /** The sentence, in English where that language has none. */
    public String says(String language) {
        return Sentences.say(this, language);
    }

    static Comparator<Finding> worstFirst() {
        return WORST_FIRST;
    }
}
