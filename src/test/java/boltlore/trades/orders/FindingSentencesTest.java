package boltlore.trades.orders;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.findings.Kind;
import boltlore.findings.Sentences;
import boltlore.proof.fits.FitFinding;
import boltlore.resolution.FindingKind;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

@DisplayName("Every kind of finding")
class FindingSentencesTest {

    private static final Pattern ARGUMENT = Pattern.compile("\\{([a-zA-Z]+)");

    static Stream<Kind> kinds() {
        return Stream.concat(Stream.of(FindingKind.values()), Trades.kinds());
    }

    @ParameterizedTest
    @MethodSource("kinds")
    @DisplayName("has its sentence in English, German and French, with the same arguments")
    void in_three_languages(Kind kind) {
        Set<String> english = arguments(kind, Locale.ENGLISH);
        for (Locale other : List.of(Locale.GERMAN, Locale.FRENCH)) {
            assertThat(arguments(kind, other))
                    .as("%s in %s", kind.code(), other)
                    .isEqualTo(english);
        }
    }

    @Test
    @DisplayName("has a name of its own, by which an order can waive it")
    void one_name_each() {
        Set<String> seen = new HashSet<>();
        assertThat(kinds().filter(kind -> !(kind instanceof FitFinding)).map(Kind::code))
                .allSatisfy(code -> assertThat(seen.add(code))
                        .as("'%s' is the name of one kind only", code)
                        .isTrue());
        // What does not fit has one name for all the ways in which it does not, as proofs have it.
        assertThat(Stream.of(FitFinding.values()).map(Kind::code)).doesNotContainAnyElementsOf(seen);
    }

    private static Set<String> arguments(Kind kind, Locale locale) {
        Set<String> names = new TreeSet<>();
        Matcher matcher = ARGUMENT.matcher(Sentences.pattern(kind, locale));
        while (matcher.find()) {
            names.add(matcher.group(1));
        }
        return names;
    }
}
