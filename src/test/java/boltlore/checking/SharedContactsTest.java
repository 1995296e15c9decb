package boltlore.checking;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Packs of the demo reach 403.2 V, and stand on the mains side of the inlet with shared contacts. */
@DisplayName("Behind an inlet with shared contacts")
class SharedContactsTest {

    @TempDir
    private Path folder;

    @ParameterizedTest
    @CsvSource({"277, part CI-ACK", "403.1, part CI-ACK", "404,"})
    @DisplayName("contactors bear the pack's voltage")
    void contactors(String volts, @Nullable String about) throws IOException {
        told("common-charging.json", "\"part\": \"CI-ACK\"", "\"volts\": \"480\"", volts, about);
    }

    @ParameterizedTest
    @CsvSource({"300, part PV-HM-J1PL", "450,"})
    @DisplayName("so does the mains cable before them")
    void cable(String volts, @Nullable String about) throws IOException {
        told("pannier-high-voltage.json", "\"part\": \"PV-HM-J1PL\"", "\"volts\": \"750\"", volts, about);
    }

    private void told(String file, String part, String from, String volts, @Nullable String about) throws IOException {
        String to = "\"volts\": \"" + volts + "\"";
        assertThat(PlantedDemo.remarks(folder, "parts/" + file, part, from, to).stream()
                        .filter(remark -> remark.endsWith(": " + Check.SHARED_PINS.written()))
                        .distinct()
                        .toList())
                .isEqualTo(about == null ? List.of() : List.of(about + ": " + Check.SHARED_PINS.written()));
    }
}
