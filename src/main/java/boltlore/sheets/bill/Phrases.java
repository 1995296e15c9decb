package boltlore.sheets.bill;

import boltlore.measure.Wording;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Properties;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** The words of the contents list in one language, from a text file by language; English where one is missing. */
final class Phrases {

    private final Properties own;
    private final Properties english;

    private Phrases(Properties own, Properties english) {
        this.own = own;
        this.english = english;
    }

    static Phrases in(String language) {
        Properties english = read(Wording.ENGLISH);
        return new Phrases(language.matches("[a-z]{2,3}") ? read(language) : english, english);
    }

    /**
     * The words with that name.
     *
     * @throws IllegalArgumentException where not even English has them
     */
    String say(String name) {
        String words = own.getProperty(name, english.getProperty(name));
        if (words == null) {
            throw new IllegalArgumentException("No words '" + name + "'");
        }
        return words;
    }

    /** The part's unit as people of that language write it; a unit that has no words stands as it is. */
    String unit(String unit) {
        String name = "unit." + unit;
        return own.getProperty(name, english.getProperty(name, unit));
    }

    Set<String> names() {
        return own.stringPropertyNames();
    }

    private static Properties read(String language) {
        Properties phrases = new Properties();
        try (@Nullable InputStream in = Phrases.class.getResourceAsStream("contents-" + language + ".properties")) {
            if (in != null) {
                phrases.load(new InputStreamReader(in, StandardCharsets.UTF_8));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return phrases;
    }
}
