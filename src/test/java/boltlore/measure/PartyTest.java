package boltlore.measure;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("Somebody who sends, receives or pays")
class PartyTest {

    private static Party with(String taxNumber) {
        return new Party("A", List.of("Row 1"), "DE", "", "", "", taxNumber, "");
    }

    /** Directive 2006/112/EC, Article 215: letters of the country first, EL for Greece; XI for Northern Ireland; from memory. */
    @ParameterizedTest
    @ValueSource(strings = {"IE0000000XX", "DE000000000", "EL000000000", "GB000000000", "XI000000000"})
    void has_a_number_for_value_added_tax_where_its_letters_say_so(String number) {
        assertThat(with(number).hasVatNumber()).isTrue();
    }

    /** A German tax office's own number, an Australian one, Greece by the letters of its ISO code, letters alone, none. */
    @ParameterizedTest
    @ValueSource(strings = {"12/345/67890", "AU 00 000 000 000", "GR000000000", "US 00-0000000", "DE", ""})
    void has_none_for_value_added_tax_where_they_do_not(String number) {
        assertThat(with(number).hasVatNumber()).isFalse();
    }
}
