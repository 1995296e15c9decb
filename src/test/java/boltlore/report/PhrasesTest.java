package boltlore.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import boltlore.trades.bill.sheets.ContentsWorkbook;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("The words of the contents list")
class PhrasesTest {

    private static Phrases contents(String language) {
        return Phrases.of(ContentsWorkbook.class, "contents", language);
    }

    @ParameterizedTest
    @ValueSource(strings = {"de", "fr"})
    @DisplayName("are all there in every language of the workshop")
    void complete(String language) {
        assertThat(contents(language).names()).isEqualTo(contents("en").names());
    }

    @Test
    @DisplayName("are English where a language has none")
    void unknown_language() {
        assertThat(contents("nl").say("title")).isEqualTo("Contents of the kit");
    }

    @Test
    @DisplayName("are looked for under plain language codes only")
    void no_path() {
        assertThat(contents("../bill").say("title")).isEqualTo("Contents of the kit");
    }

    @Test
    @DisplayName("that nobody has written are an error, not an empty heading")
    void missing_words() {
        assertThatThrownBy(() -> contents("de").say("no-such-words")).hasMessageContaining("no-such-words");
    }

    @Test
    @DisplayName("leave a unit that has none as it is")
    void unit() {
        assertThat(contents("de").unit("each")).isEqualTo("Stück");
        assertThat(contents("de").unit("roll")).isEqualTo("roll");
    }
}
