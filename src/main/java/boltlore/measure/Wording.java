package boltlore.measure;

import java.util.Map;
import java.util.TreeMap;

/** A text that customers or partners read, by language code; English is always there. */
public record Wording(Map<String, String> byLanguage) {

    public static final String ENGLISH = "en";

    public Wording {
        if (!byLanguage.containsKey(ENGLISH)) {
            throw new IllegalArgumentException("A wording has an English text");
        }
        byLanguage = java.util.Collections.unmodifiableMap(new TreeMap<>(byLanguage));
    }

    public static Wording english(String text) {
        return new Wording(Map.of(ENGLISH, text));
    }

    /** The text in that language, or the English one where it has not been translated. */
    public String in(String language) {
        return byLanguage.getOrDefault(language, english());
    }

    /** The same in every language with that behind it. */
    public Wording with(String end) {
        Map<String, String> longer = new TreeMap<>(byLanguage);
        longer.replaceAll((language, text) -> text + end);
        return new Wording(longer);
    }

    public String english() {
        return byLanguage.getOrDefault(ENGLISH, "");
    }

    @Override
    public String toString() {
        return english();
    }
}
