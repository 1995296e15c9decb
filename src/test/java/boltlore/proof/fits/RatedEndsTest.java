package boltlore.proof.fits;

import static boltlore.proof.fits.Planted.VAN;
import static boltlore.proof.fits.Planted.demo;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Currents of AC inlets: 32 A of type 1 (SAE J1772), up to 63 A of type 2 (IEC 62196-2), each as its own data sheet has it. */
@DisplayName("The port of a device against what is calculated with it:")
class RatedEndsTest {

    private static List<String> part(String file, String number, String from, String to) {
        return demo().rewriting("parts/" + file + ".json", text -> {
                    String[] cut = text.split("(?=\\{\"part\": \"" + number + "\", \"revision\")", 2);
                    int end = cut[1].indexOf('\n');
                    String line = cut[1].substring(0, end);
                    assertThat(line).contains(from);
                    return cut[0] + line.replace(from, to) + cut[1].substring(end);
                })
                .found(VAN);
    }

    @ParameterizedTest
    @CsvSource({
        "16, port unlike its device: inlet-type-2/mains (32 A)",
        "63, port unlike its device: inlet-type-2/mains (32 A)"
    })
    void an_inlet_is_rated_as_its_option_says(String amps, String found) {
        assertThat(part("common-charging", "CI-T2", "\"amps\": \"32\"", "\"amps\": \"" + amps + "\""))
                .contains(found);
    }

    @Test
    void on_direct_current_it_is_rated_as_electrics_json_says() {
        assertThat(part("common-charging", "CI-T2", "\"amps\": \"200\"", "\"amps\": \"400\""))
                .contains("port unlike its device: inlet-type-2/dc (200 A)");
    }

    @Test
    void a_charger_on_three_phases_has_them_at_its_port() {
        assertThat(part("common-charging", "CH-11", "\"phases\": 3", "\"phases\": 1"))
                .contains("port unlike its device: charger-eleven/mains (3 phases)");
    }

    @Test
    void an_outlet_is_rated_as_its_option_says() {
        assertThat(part("common-export", "EX-BS", "\"amps\": \"13\"", "\"amps\": \"16\""))
                .containsExactly("port unlike its device: export-socket-bs-1363/in (13 A)");
    }

    @Test
    void but_it_may_be_insulated_for_more_than_it_is_used_at() {
        assertThat(part("common-export", "EX-BS", "\"volts\": \"250\"", "\"volts\": \"400\""))
                .isEmpty();
    }
}
