package boltlore.findings;

import java.util.Locale;

/** What a finding asks of whoever reads it, the most serious first. */
public enum Severity {
    /** Must be mended before work goes on. */
    STOP,
    /** A person checks it, and may waive it with a reason. */
    CHECK,
    /** To be known; nothing is asked for. */
    NOTE;

    /** The word that stands on sheets and screens. */
    public String says() {
        return says(Locale.ENGLISH.getLanguage());
    }

    public String says(String language) {
        return Sentences.word("severity." + name().toLowerCase(Locale.ROOT), language);
    }

    /** The word in JSON, whatever the language. */
    public String code() {
        return name().toLowerCase(Locale.ROOT);
    }
}
