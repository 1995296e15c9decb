package boltlore.trades.shipping;

import boltlore.report.Phrases;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Words that smell of dangerous goods. They stand in the bundles 'goods' beside this class, in each language: 'gas' is met
 * by the whole word alone, 'lithium*' by what begins so, '*akku' by what ends so. An order may be written in any language,
 * so all are looked for. What the bundles call harmless, a battery cable or lithium grease, is passed over first; a battery
 * that the text names beside it is met all the same.
 */
final class GoodsWords {

    private static final List<String> WORDS = all("words");

    private static final Pattern HARMLESS = Pattern.compile(
            all("harmless").stream().map(GoodsWords::pattern).collect(Collectors.joining("|", " (?:", ")(?= )")));

    private GoodsWords() {}

    /** The first word of the text, as the bundles write it, that smells of dangerous goods. */
    static Optional<String> in(String text) {
        String all = " "
                + text.toLowerCase(Locale.ROOT)
                        .replaceAll("[^\\p{L}\\p{N}]+", " ")
                        .strip() + " ";
        String words = HARMLESS.matcher(all).replaceAll("");
        return WORDS.stream().filter(word -> words.contains(looked(word))).findFirst();
    }

    private static List<String> all(String key) {
        return Stream.of("en", "de", "fr")
                .flatMap(language -> Arrays.stream(
                        Phrases.of(GoodsWords.class, "goods", language).say(key).split(",")))
                .map(String::strip)
                .toList();
    }

    private static String pattern(String harmless) {
        return harmless.endsWith("*")
                ? Pattern.quote(harmless.substring(0, harmless.length() - 1)) + "[\\p{L}\\p{N}]*"
                : Pattern.quote(harmless);
    }

    private static String looked(String word) {
        String begun = word.startsWith("*") ? word.substring(1) : " " + word;
        return begun.endsWith("*") ? begun.substring(0, begun.length() - 1) : begun + " ";
    }
}
