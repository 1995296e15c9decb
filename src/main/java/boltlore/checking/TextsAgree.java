package boltlore.checking;

import boltlore.catalogue.Catalogue;
import boltlore.checking.Translations.Text;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * One text says the same in every language: the same numbers with the same units of time, and each language in its own place.
 * Small words tell a language; words that two of them have tell nothing.
 */
final class TextsAgree {

    private static final Pattern NUMBER = Pattern.compile("(?<![\\p{L}\\d])\\d+(?:[.,]\\d+)?");
    private static final Pattern TOKEN = Pattern.compile("\\d+(?:[.,]\\d+)?|\\p{L}+");
    private static final Pattern WORD = Pattern.compile("\\p{L}+");

    /** Of time, by their beginnings: what people mistake for one another. */
    private static final Map<String, String> UNITS = Map.ofEntries(
            Map.entry("second", "s"),
            Map.entry("seconds", "s"),
            Map.entry("minute", "min"),
            Map.entry("minutes", "min"),
            Map.entry("hour", "h"),
            Map.entry("hours", "h"),
            Map.entry("day", "d"),
            Map.entry("days", "d"),
            Map.entry("week", "w"),
            Map.entry("weeks", "w"),
            Map.entry("month", "m"),
            Map.entry("months", "m"),
            Map.entry("sekunde", "s"),
            Map.entry("sekunden", "s"),
            Map.entry("minuten", "min"),
            Map.entry("stunde", "h"),
            Map.entry("stunden", "h"),
            Map.entry("tag", "d"),
            Map.entry("tage", "d"),
            Map.entry("tagen", "d"),
            Map.entry("woche", "w"),
            Map.entry("wochen", "w"),
            Map.entry("monat", "m"),
            Map.entry("monate", "m"),
            Map.entry("monaten", "m"),
            Map.entry("seconde", "s"),
            Map.entry("secondes", "s"),
            Map.entry("heure", "h"),
            Map.entry("heures", "h"),
            Map.entry("jour", "d"),
            Map.entry("jours", "d"),
            Map.entry("semaine", "w"),
            Map.entry("semaines", "w"),
            Map.entry("mois", "m"));

    private static final Map<String, Map<String, String>> COUNTED = Map.of(
            "en", counted("two three four five six seven eight ten"),
            "de", counted("zwei drei vier fünf sechs sieben acht zehn"),
            "fr", counted("deux trois quatre cinq six sept huit dix"));

    private static final Map<String, Set<String>> SMALL = Map.of(
            "en", Set.of("the", "and", "with", "without", "for", "of", "to", "from", "is", "are", "or", "by", "at"),
            "de",
                    Set.of(
                            "der", "das", "dem", "den", "und", "mit", "ohne", "für", "ist", "sind", "oder", "am", "im",
                            "vom", "zum"),
            "fr",
                    Set.of(
                            "le", "la", "les", "du", "et", "avec", "sans", "pour", "est", "sont", "ou", "par", "aux",
                            "au", "dans"));

    private static final Map<String, String> LANGUAGE_OF = SMALL.entrySet().stream()
            .flatMap(small -> small.getValue().stream().map(word -> Map.entry(word, small.getKey())))
            .collect(Collectors.toMap(Map.Entry::getKey, Map.Entry::getValue));

    private TextsAgree() {}

    private static Map<String, String> counted(String words) {
        List<String> numbers = List.of("2", "3", "4", "5", "6", "7", "8", "10");
        Map<String, String> counted = new TreeMap<>();
        String[] all = words.split(" ", -1);
        for (int at = 0; at < all.length; at++) {
            counted.put(all[at], numbers.get(at));
        }
        return counted;
    }

    static Stream<Remark> remarks(Catalogue catalogue) {
        return Translations.texts(catalogue).flatMap(text -> Stream.concat(figures(text).stream(), languages(text)));
    }

    /** Another number of numbers is another way to say it: 'terminal 15' is a key switch elsewhere. */
    private static Optional<Remark> figures(Text text) {
        List<String> figures = figures(text.wording().english());
        List<String> times = times("en", text.wording().english());
        return text.wording().byLanguage().entrySet().stream()
                .filter(each -> {
                    List<String> there = figures(each.getValue());
                    return (there.size() == figures.size() && !there.equals(figures))
                            || !times(each.getKey(), each.getValue()).equals(times);
                })
                .findFirst()
                .map(each -> remark(text, each.getKey(), figures, times));
    }

    private static Remark remark(Text text, String language, List<String> figures, List<String> times) {
        String words = text.wording().in(language);
        return new Remark(
                text.about(),
                Check.TEXT_FIGURES,
                said(figures(words), times(language, words)) + " in the text in " + language,
                said(figures, times) + ", as the English one has it",
                "Say the same numbers and units of time in every language");
    }

    private static String said(List<String> figures, List<String> times) {
        List<String> all = new ArrayList<>(figures);
        all.addAll(times);
        return all.isEmpty() ? "no number" : String.join(", ", all);
    }

    /** In no order, for languages put them elsewhere. */
    private static List<String> figures(String text) {
        return NUMBER.matcher(text)
                .results()
                .map(found -> found.group().replace(',', '.'))
                .sorted()
                .toList();
    }

    /** '5 min' whether five is in digits or in letters. */
    private static List<String> times(String language, String text) {
        Map<String, String> counted = COUNTED.getOrDefault(language, Map.of());
        List<String> times = new ArrayList<>();
        String before = "";
        Matcher word = TOKEN.matcher(text.toLowerCase(Locale.ROOT));
        while (word.find()) {
            String unit = UNITS.get(word.group());
            String number = counted.getOrDefault(before, before);
            if (unit != null && NUMBER.matcher(number).matches()) {
                times.add(number.replace(',', '.') + " " + unit);
            }
            before = word.group();
        }
        Collections.sort(times);
        return times;
    }

    private static Stream<Remark> languages(Text text) {
        return text.wording().byLanguage().entrySet().stream().flatMap(each -> {
            String language = each.getKey();
            List<String> told = WORD.matcher(each.getValue().toLowerCase(Locale.ROOT))
                    .results()
                    .flatMap(word -> Stream.ofNullable(LANGUAGE_OF.get(word.group())))
                    .toList();
            return told.isEmpty() || told.contains(language) || !SMALL.containsKey(language)
                    ? Stream.empty()
                    : Stream.of(new Remark(
                            text.about(),
                            Check.TEXT_LANGUAGE,
                            "'" + each.getValue() + "' under '" + language + "', in words of '" + told.get(0) + "'",
                            "each language under its own code",
                            "Look whether two texts have changed places"));
        });
    }
}
