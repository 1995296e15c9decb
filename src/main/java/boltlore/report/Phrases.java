package boltlore.report;

import boltlore.measure.Wording;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.util.Properties;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** The words of a sheet in one language, from a text file by language; English where one is missing. */
public final class Phrases {

    private final Properties own;
    private final Properties english;

    private Phrases(Properties own, Properties english) {
        this.own = own;
        this.english = english;
    }

    /** The words of that sheet; its files stand beside the class, as 'contents-en.properties'. */
    public static Phrases of(Class<?> beside, String sheet, String language) {
        Properties english = read(beside, sheet, Wording.ENGLISH);
        return new Phrases(language.matches("[a-z]{2,3}") ? read(beside, sheet, language) : english, english);
    }

    /**
     * The words with that name.
     *
     * @param arguments what stands where the words say {0}, {1} …
     * @throws IllegalArgumentException where not even English has them
     */
    public String say(String name, String... arguments) {
        String words = own.getProperty(name, english.getProperty(name));
        if (words == null) {
            throw new IllegalArgumentException("No words '" + name + "'");
        }
        for (int i = 0; i < arguments.length; i++) {
            words = words.replace("{" + i + "}", arguments[i]);
        }
        return words;
    }

    /** The part's unit as people of that language write it; a unit that has no words stands as it is. */
    public String unit(String unit) {
        String name = "unit." + unit;
        return own.getProperty(name, english.getProperty(name, unit));
    }

    /** The number with that many decimals, rounded half-up, and the language's decimal sign, named 'decimalSign'. */
    public String number(BigDecimal number, int decimals) {
        return number.setScale(decimals, RoundingMode.HALF_UP).toPlainString().replace(".", say("decimalSign"));
    }

    public Set<String> names() {
        return own.stringPropertyNames();
    }

    private static Properties read(Class<?> beside, String sheet, String language) {
        Properties phrases = new Properties();
        try (@Nullable InputStream in = beside.getResourceAsStream(sheet + "-" + language + ".properties")) {
            if (in != null) {
                phrases.load(new InputStreamReader(in, StandardCharsets.UTF_8));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return phrases;
    }
}
