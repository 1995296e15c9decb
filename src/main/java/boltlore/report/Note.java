package boltlore.report;

/**
 * A paragraph in a ruled box; a caution's box is ruled heavily, and says in words what can hurt.
 *
 * @param look {@link Look#NOTE} or {@link Look#CAUTION}
 * @param lead words that stand out before the text, may be empty in a note
 */
public record Note(Look look, String lead, String text) implements Block {

    public Note {
        if (look == Look.CAUTION && lead.isBlank()) {
            throw new IllegalArgumentException("A caution says in a word that it is one: " + text);
        }
    }

    public static Note plain(String lead, String text) {
        return new Note(Look.NOTE, lead, text);
    }

    public static Note caution(String lead, String text) {
        return new Note(Look.CAUTION, lead, text);
    }

    /** Lead and text in one line. */
    public String words() {
        return lead.isBlank() ? text : lead + ": " + text;
    }

    @Override
    public <R> R as(Cases<R> cases) {
        return cases.note(this);
    }
}
