package boltlore.bring;

import boltlore.faults.Nearest;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** The words that columns and rows of lists are known by: {@code words.txt} beside this class. */
final class Words {

    /** What rows say of themselves and of those below them. */
    enum Saying {
        TOTAL,
        OUTSIDE,
        TOOLS,
        OPTIONAL,
        /** Of a column among values: fitted whichever of them is chosen. */
        ALL,
        WEEKS,
        ALTERNATE,
        PRIMARY,
        /** Heads own numbers as well as those of a supplier. */
        REFERENCE,
        /** Sold by length, mass or volume. */
        MEASURED,
        MARK,
        BLANK
    }

    /**
     * What a heading means.
     *
     * @param whole whether all of it does
     * @param rest the words of it that say something else
     */
    record Meaning(Role role, boolean whole, int words, String rest) {}

    private static final int SHORTEST_WITH_A_SLIP = 6;
    private static final int LONG = 10;
    private static final Words ALL = read();

    private final Map<Role, List<List<String>>> roles = new LinkedHashMap<>();
    private final Map<Saying, Set<String>> sayings = new LinkedHashMap<>();
    private final Set<String> known = new HashSet<>();

    private Words() {}

    private static Words read() {
        Words words = new Words();
        try (InputStream in = Objects.requireNonNull(Words.class.getResourceAsStream("words.txt"));
                BufferedReader reader = new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))) {
            reader.lines()
                    .filter(line -> line.contains(":") && !line.startsWith("#"))
                    .forEach(words::line);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
        return words;
    }

    private void line(String line) {
        String what = line.substring(0, line.indexOf(':'));
        List<String> all = Arrays.stream(line.substring(line.indexOf(':') + 1).split(",", -1))
                .map(String::strip)
                .toList();
        if (what.startsWith("@")) {
            Saying saying = Saying.valueOf(what.substring(1).toUpperCase(Locale.ROOT));
            boolean signs = saying == Saying.MARK || saying == Saying.BLANK;
            sayings.put(
                    saying, all.stream().map(word -> signs ? word : plain(word)).collect(Collectors.toSet()));
        } else {
            Role role = Role.of(what).orElseThrow();
            roles.put(role, all.stream().map(Words::tokens).toList());
            roles.get(role).stream()
                    .flatMap(List::stream)
                    .filter(token -> token.length() >= SHORTEST_WITH_A_SLIP)
                    .forEach(known::add);
        }
    }

    /** Small letters and digits with single blanks between, without accents. */
    static String plain(String text) {
        String letters = Normalizer.normalize(text.replace("ß", "ss").replace("#", " no "), Normalizer.Form.NFKD)
                .replaceAll("\\p{M}+", "")
                .toLowerCase(Locale.ROOT);
        return letters.replaceAll("[^\\p{L}\\p{N}]+", " ").strip();
    }

    private static List<String> tokens(String text) {
        String plain = plain(text);
        return plain.isEmpty() ? List.of() : List.of(plain.split(" "));
    }

    /** What a heading means, if it holds a known word; one letter wrong in a long word does not matter. */
    static Optional<Meaning> heading(String heading) {
        List<String> tokens = tokens(heading.replaceAll("\\([^)]*\\)|\\[[^]]*\\]", " ")).stream()
                .map(ALL::mended)
                .toList();
        Meaning best = null;
        for (Role role : Role.values()) {
            for (List<String> phrase : ALL.roles.getOrDefault(role, List.of())) {
                Meaning found = meaning(role, phrase, tokens);
                if (found != null && (best == null || better(found, best))) {
                    best = found;
                }
            }
        }
        return Optional.ofNullable(best);
    }

    private static boolean better(Meaning one, Meaning other) {
        return one.whole() == other.whole() ? one.words() > other.words() : one.whole();
    }

    private static @Nullable Meaning meaning(Role role, List<String> phrase, List<String> tokens) {
        if (phrase.isEmpty() || tokens.isEmpty()) {
            return null;
        }
        int at = Collections.indexOfSubList(tokens, phrase);
        if (at >= 0) {
            List<String> rest = new ArrayList<>(tokens);
            rest.subList(at, at + phrase.size()).clear();
            return new Meaning(role, rest.isEmpty(), phrase.size(), String.join(" ", rest));
        }
        String only = phrase.size() == 1 ? phrase.get(0) : "";
        boolean ideographs = !only.isEmpty() && Character.isIdeographic(only.codePointAt(0));
        String joined = String.join("", tokens);
        return ideographs && joined.contains(only)
                ? new Meaning(role, false, only.length() / 2, joined.replace(only, ""))
                : null;
    }

    private String mended(String token) {
        boolean slip = token.length() >= SHORTEST_WITH_A_SLIP && !known.contains(token);
        return slip
                ? Nearest.within(token, known, token.length() >= LONG ? 2 : 1).orElse(token)
                : token;
    }

    /** Whether a short text says so: it is one of the words, or begins with them. */
    static boolean says(Saying saying, String text) {
        String plain = plain(text);
        return ALL.sayings(saying).stream()
                .anyMatch(word -> !word.isEmpty() && (plain.equals(word) || plain.startsWith(word + " ")));
    }

    private Set<String> sayings(Saying saying) {
        return sayings.getOrDefault(saying, Set.of());
    }

    /** Whether a text says nothing else. */
    static boolean isJust(Saying saying, String text) {
        return ALL.sayings(saying).contains(plain(text));
    }

    /** Whether the words stand anywhere in the text. */
    static boolean mentions(Saying saying, String text) {
        String plain = ' ' + plain(text) + ' ';
        return ALL.sayings(saying).stream().anyMatch(word -> !word.isEmpty() && plain.contains(' ' + word + ' '));
    }

    /** Whether the text is one of the words, as it stands: signs are words here. */
    static boolean is(Saying saying, String text) {
        return ALL.sayings(saying).contains(text.toLowerCase(Locale.ROOT).strip());
    }
}
