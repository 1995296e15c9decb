package boltlore.findings;

import java.util.Locale;

/**
 * A kind of finding, declared once: constants of an enum in the package that finds it. Its sentence stands in
 * {@code findings.properties} of that package under the constant's name, 'load-above-fuse', and in {@code
 * findings_de.properties}, {@code findings_fr.properties}.
 */
public interface Kind {

    /** Of the constant. */
    String name();

    Severity severity();

    /** What found it, as the trade's command is called: 'charging'. */
    String room();

    /** The written name, in orders that waive it and in JSON: 'load above fuse'. */
    default String code() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    /** What it is called on sheets and screens, in that language. */
    default String title(String language) {
        return Sentences.title(this, language);
    }

    /** Whether an order may waive it, and a family accept it. */
    default boolean waivable() {
        return severity() == Severity.CHECK;
    }
}
