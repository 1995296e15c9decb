package boltlore.sheets.bill;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("The words of the contents list")
class PhrasesTest {

    @ParameterizedTest
    @ValueSource(strings = {"de", "fr"})
    @DisplayName("are all there in every language of the workshop")
    void complete(String language) {
        assertThat(Phrases.in(language).names()).isEqualTo(Phrases.in("en").names());
    }

    @Test
    @DisplayName("are English where a language has none")
    void unknown_language() {
        assertThat(Phrases.in("nl").say("title")).isEqualTo("Contents of the kit");
    }

    @Test
    @DisplayName("are looked for under plain language codes only")
    void no_path() {
        assertThat(Phrases.in("../bill").say("title")).isEqualTo("Contents of the kit");
    }

    @Test
    @DisplayName("that nobody has written are an error, not an empty heading")
    void missing_words() {
        assertThatThrownBy(() -> Phrases.in("de").say("no-such-words")).hasMessageContaining("no-such-words");
    }

    @Test
    @DisplayName("leave a unit that has none as it is")
    void unit() {
        assertThat(Phrases.in("de").unit("each")).isEqualTo("Stück");
        assertThat(Phrases.in("de").unit("roll")).isEqualTo("roll");
    }
}
