package boltlore.trades.shipping;

import boltlore.report.Phrases;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Words that smell of dangerous goods. They stand in the bundles 'goods' beside this class, in each language: 'gas' is met
 * by the whole word alone, 'lithium*' by what begins so, '*akku' by what ends so. An order may be written in any language,
 * so all are looked for.
 */
final class GoodsWords {

    private static final List<String> WORDS = Stream.of("en", "de", "fr")
            .flatMap(language -> Arrays.stream(
                    Phrases.of(GoodsWords.class, "goods", language).say("words").split(",")))
            .map(String::strip)
            .toList();

    private GoodsWords() {}

    /** The first word of the text, as the bundles write it, that smells of dangerous goods. */
    static Optional<String> in(String text) {
        String words = " "
                + text.toLowerCase(Locale.ROOT)
                        .replaceAll("[^\\p{L}\\p{N}]+", " ")
                        .strip() + " ";
        return WORDS.stream().filter(word -> words.contains(looked(word))).findFirst();
    }

    private static String looked(String word) {
        String begun = word.startsWith("*") ? word.substring(1) : " " + word;
        return begun.endsWith("*") ? begun.substring(0, begun.length() - 1) : begun + " ";
    }
}
