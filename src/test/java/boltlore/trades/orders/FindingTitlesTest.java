package boltlore.trades.orders;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.findings.Kind;
import boltlore.resolution.FindingKind;
import java.util.List;
import java.util.Locale;
import java.util.ResourceBundle;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("What a finding is called")
class FindingTitlesTest {

    private static List<Kind> kinds() {
        return Stream.concat(Stream.<Kind>of(FindingKind.values()), Trades.kinds())
                .toList();
    }

    private static ResourceBundle titles(String language) {
        return ResourceBundle.getBundle(
                "boltlore.findings.titles",
                Locale.forLanguageTag(language),
                ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_PROPERTIES));
    }

    private static String key(Kind kind) {
        return kind.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    @ParameterizedTest
    @ValueSource(strings = {"de", "fr"})
    void has_a_name_of_its_own_in_each_language(String language) {
        ResourceBundle titles = titles(language);
        assertThat(titles.getLocale().getLanguage()).isEqualTo(language);
        assertThat(kinds())
                .allSatisfy(kind ->
                        assertThat(titles.containsKey(key(kind))).as(key(kind)).isTrue());
        assertThat(titles.keySet())
                .as("and none is left over")
                .isSubsetOf(kinds().stream().map(FindingTitlesTest::key).toList());
    }

    @ParameterizedTest
    @ValueSource(strings = {"en", "de", "fr"})
    void begins_with_a_capital(String language) {
        assertThat(kinds())
                .extracting(kind -> kind.title(language))
                .allMatch(title ->
                        !title.substring(0, 1).equals(title.substring(0, 1).toLowerCase(Locale.ROOT)));
    }

    @Test
    void is_the_code_in_English_by_which_an_order_waives_it_however_it_is_capitalised() {
        assertThat(kinds().stream()
                        .filter(kind -> !kind.title("en").equalsIgnoreCase(kind.code()))
                        .map(kind -> kind.title("en")))
                .containsExactlyInAnyOrder(
                        "Energy of Y capacitors",
                        "Y capacitors not given",
                        "No UN mark, by air",
                        // Kinds of a proof that are several findings of a kit; they stop, and nobody waives them.
                        "Cable fed by something else",
                        "Load leaves something out",
                        "Load counts too much",
                        "Load of another kind",
                        "Share of the load too small",
                        "Power below the device behind it",
                        "Branch power unlike",
                        "Blade fuse above wire",
                        "Blade fuse below load",
                        "Blade fuse without circuit",
                        "Circuit without fuse",
                        "Terminal without torque",
                        "Lug unlike stud",
                        "Power cable that nothing judges",
                        "Power cable judged twice");
    }
}
