package boltlore.report;

/**
 * A paragraph in a ruled box; a caution's box is ruled heavily, and says in words what can hurt.
 *
 * @param look {@link Look#NOTE} or {@link Look#CAUTION}
 * @param key what programs know it by: the code of a caution, the matter of a note; may be empty
 * @param lead words that stand out before the text, may be empty in a note
 */
public record Note(Look look, String key, String lead, String text) implements Block {

    public Note {
        if (look == Look.CAUTION && lead.isBlank()) {
            throw new IllegalArgumentException("A caution says in a word that it is one: " + text);
        }
    }

    public static Note plain(String key, String text) {
        return new Note(Look.NOTE, key, "", text);
    }

    public static Note caution(String code, String lead, String text) {
        return new Note(Look.CAUTION, code, lead, text);
    }

    /** What stands between the lead and the text in that language: French keeps the colon off the word. */
    public static String colon(String language) {
        return language.equals("fr") ? "\u00A0: " : ": ";
    }

    /** Lead and text in one line. */
    public String words() {
        return lead.isBlank() ? text : lead + colon("en") + text;
    }

    @Override
    public <R> R as(Cases<R> cases) {
        return cases.note(this);
    }
}
