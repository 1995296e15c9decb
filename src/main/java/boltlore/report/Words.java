package boltlore.report;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.text.DecimalFormatSymbols;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What the English words of sheets are in another language: of files {@code words.txt} beside the classes that make the
 * sheets, in the packages above them, and beside this class. An English text stands at the left edge, what it is in each
 * language below it:
 *
 * <pre>
 * {0#} lines from bins
 *   de: {0#} Positionen aus Fächern
 *   fr: {0#} lignes des casiers
 * </pre>
 *
 * <p>At {0} any text may stand, which is looked up as well; at {0#} a number, which takes the language's signs. A text that
 * is not found whole is looked up by its sentences, and by what its semicolons, points and commas set apart.
 */
public final class Words {

    private static final Pattern TRANSLATED = Pattern.compile("\\s+([a-z]{2,3}): (.+)");
    private static final Pattern SLOT = Pattern.compile("\\{([0-9])(#?)\\}");
    /** Any text within one sentence. */
    private static final String ANY = "((?:(?![.!?] [\\p{Lu}'„]).)+?)";

    private static final String NUMBER = "([-−+±]?\\d+(?:[.,]\\d+)*)";
    private static final Pattern HIGH_SIGN = Pattern.compile(" (?=[:;!?%»])|(?<=«) ");
    private static final Pattern COLON = Pattern.compile("(?<![\u00A0\\s]): ");
    private static final Pattern SENTENCE = Pattern.compile("(?<=[.!?]) (?=[\\p{Lu}'„])");
    private static final List<Pattern> BETWEEN = List.of(
            SENTENCE,
            Pattern.compile("; "),
            Pattern.compile(" · "),
            Pattern.compile("(?<=\\S): (?=\\S)"),
            Pattern.compile(", "));
    /** A piece of figures with units, amounts of money or signs and no word in it; a bare one may be a section's number. */
    private static final Pattern FIGURES = Pattern.compile("(?=.*[\\p{L}%°|+×/=])(?:[\\d.,()|+−±×/=%°²³ -]"
            + "|[A-Z]{3}(?= [\\d,]+\\.\\d\\d(?!\\d))|(?<=\\.\\d\\d )[A-Z]{3}|(?<!\\p{L})(?:mm|cm|m|km|µm|kg|g|l|ml|min|h|s|ms"
            + "|k?W|k?Wh|m?A|Ah|k?V|Hz|[mkM]?Ω|Nm|k?N|MPa|k?Pa|m?bar|K|C)(?!\\p{L}))+");

    private static final Pattern OF_ENGLISH = Pattern.compile("[-−+±]?(?:\\d{1,3}(?:,\\d{3})+|\\d+)(?:\\.\\d+)?");
    private static final Pattern DECIMAL = Pattern.compile("(?<![\\w.,/-])\\d[\\d,]*\\.\\d+(?![\\w.-]*[.\\d-]|,\\d)");
    private static final Map<String, Map<String, Map<String, String>>> FILES = new ConcurrentHashMap<>();

    private final String language;
    private final Map<String, String> texts = new HashMap<>();
    private final List<Sentence> sentences = new ArrayList<>();

    /** A text with places for others. */
    private record Sentence(Pattern english, List<String> places, String other, int literal) {

        static Sentence of(String english, String other) {
            StringBuilder regex = new StringBuilder();
            List<String> places = new ArrayList<>();
            Matcher slot = SLOT.matcher(english);
            int from = 0;
            int literal = 0;
            while (slot.find()) {
                regex.append(Pattern.quote(english.substring(from, slot.start())));
                regex.append(slot.group(2).isEmpty() ? ANY : NUMBER);
                places.add(slot.group());
                literal += slot.start() - from;
                from = slot.end();
            }
            regex.append(Pattern.quote(english.substring(from)));
            literal += english.length() - from;
            return new Sentence(Pattern.compile(regex.toString(), Pattern.DOTALL), places, other, literal);
        }

        Optional<String> say(String text, UnaryOperator<String> words, UnaryOperator<String> numbers) {
            Matcher matcher = english.matcher(text);
            if (!matcher.matches()) {
                return Optional.empty();
            }
            return Optional.of(SLOT.matcher(other).replaceAll(place -> {
                String given = matcher.group(places.indexOf(place.group()) + 1);
                return Matcher.quoteReplacement(place.group(2).isEmpty() ? words.apply(given) : numbers.apply(given));
            }));
        }
    }

    private Words(String language) {
        this.language = language;
    }

    /**
     * The words in a language; those of the first class go before those of the second, and so on.
     *
     * @param language English, or any that has no words, leaves every text as it is
     * @param beside classes of the packages that make the sheet; with none every text stays as it is
     */
    public static Words of(String language, Class<?>... beside) {
        Words words = new Words(language);
        if (!language.equals("en") && beside.length > 0) {
            for (Class<?> each : beside) {
                String folder = each.getPackageName();
                for (; folder.contains("."); folder = folder.substring(0, folder.lastIndexOf('.'))) {
                    words.take(folder);
                }
            }
            words.take(Words.class.getPackageName());
            words.sentences.sort(Comparator.comparingInt(Sentence::literal).reversed());
        }
        return words;
    }

    private void take(String folder) {
        FILES.computeIfAbsent(folder, Words::read)
                .getOrDefault(language, Map.of())
                .forEach((english, other) -> {
                    if (texts.putIfAbsent(english, other) == null
                            && SLOT.matcher(english).find()) {
                        sentences.add(Sentence.of(english, other));
                    }
                });
    }

    /** By language, then by the English text; nothing where the package has no such file. */
    private static Map<String, Map<String, String>> read(String folder) {
        Map<String, Map<String, String>> all = new HashMap<>();
        String file = "/" + folder.replace('.', '/') + "/words.txt";
        try (InputStream words = Words.class.getResourceAsStream(file)) {
            String english = "";
            for (String line : words == null
                    ? List.<String>of()
                    : lines(new String(words.readAllBytes(), StandardCharsets.UTF_8))) {
                Matcher translated = TRANSLATED.matcher(line);
                if (translated.matches()) {
                    all.computeIfAbsent(translated.group(1), any -> new HashMap<>())
                            .put(english, typeset(translated.group(2), translated.group(1)));
                } else {
                    english = line;
                }
            }
        } catch (IOException unreadable) {
            throw new UncheckedIOException(file, unreadable);
        }
        return all;
    }

    private static List<String> lines(String text) {
        return text.lines().filter(line -> !line.isBlank()).toList();
    }

    /** French keeps a blank before its high signs, at which no line may end. */
    private static String typeset(String text, String language) {
        return language.equals("fr") ? HIGH_SIGN.matcher(text).replaceAll("\u00A0") : text;
    }

    public String language() {
        return language;
    }

    /** Whether every text stays as it is. */
    boolean isNone() {
        return texts.isEmpty();
    }

    /** The text in the language; as it is where nobody has written what it is there. */
    public String say(String english) {
        String whole = texts.get(english);
        if (whole != null) {
            return whole;
        }
        return sentences.stream()
                .flatMap(sentence -> sentence.say(english, this::say, this::number).stream())
                .findFirst()
                .orElseGet(() -> byPieces(english));
    }

    private String byPieces(String english) {
        if (english.endsWith(".") && !SENTENCE.matcher(english).find() && english.length() > 1) {
            return say(english.substring(0, english.length() - 1)) + ".";
        }
        for (Pattern between : BETWEEN) {
            Matcher gap = between.matcher(english);
            StringBuilder said = new StringBuilder();
            int from = 0;
            while (gap.find()) {
                said.append(say(english.substring(from, gap.start()))).append(gap.group());
                from = gap.end();
            }
            if (from > 0) {
                String all = said.append(say(english.substring(from))).toString();
                return all.equals(english)
                        ? english
                        : typeset(COLON.matcher(all).replaceAll(Note.colon(language)), language);
            }
        }
        return !isNone() && FIGURES.matcher(english).matches()
                ? DECIMAL.matcher(english).replaceAll(figure -> number(figure.group()))
                : english;
    }

    /** A number as the language writes it: '1,234.50' becomes '1.234,50'; one that it wrote itself, as '4,8', stays. */
    public String number(String english) {
        if (isNone() || !OF_ENGLISH.matcher(english).matches()) {
            return english;
        }
        DecimalFormatSymbols signs = DecimalFormatSymbols.getInstance(Locale.forLanguageTag(language));
        return english.replace(',', '\n')
                .replace('.', signs.getDecimalSeparator())
                .replace('\n', signs.getGroupingSeparator());
    }
}
