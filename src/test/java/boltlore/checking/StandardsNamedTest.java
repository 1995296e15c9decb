package boltlore.checking;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** IEC 61851-1, SAE J1772 and UL 943, all from memory. */
class StandardsNamedTest {

    private static final String ELECTRICS = "families/stook-pickup/electrics.json";
    private static final String VAN = "families/pannier-van/electrics.json";

    @TempDir
    private Path folder;

    private void told(String line, String from, String to, @Nullable String about) throws IOException {
        assertThat(PlantedDemo.remarks(folder, ELECTRICS, line, from, to))
                .filteredOn(remark -> remark.endsWith(Check.STANDARD.written()))
                .isEqualTo(about == null ? List.of() : List.of(about + ": " + Check.STANDARD.written()));
    }

    @ParameterizedTest
    @CsvSource({
        "type-2, cable-code, handle, inlet stook-pickup/type-2",
        "type-1, handle, cable-code, inlet stook-pickup/type-1",
        "type-1, handle, handle,"
    })
    void an_inlet_reads_its_cable_as_its_type_does(String type, String from, String to, @Nullable String about)
            throws IOException {
        told("{\"inlet\": \"" + type + "\"}", from, to, about);
    }

    /** SAE J3400, from memory: the same two contacts for alternating and direct current. */
    @ParameterizedTest
    @CsvSource({
        "'\"sharedPins\": true, \"isolatedBy\": \"charger-isolation\"', '\"sharedPins\": false', inlet pannier-van/j3400",
        "'\"amps\": \"200\"}, \"sharedPins\"', '\"amps\": \"180\"}, \"sharedPins\"',"
    })
    void an_inlet_shares_its_contacts_as_its_type_does(String from, String to, @Nullable String about)
            throws IOException {
        assertThat(PlantedDemo.remarks(folder, VAN, "{\"inlet\": \"j3400\"}", from, to))
                .filteredOn(remark -> remark.endsWith(Check.STANDARD.written()))
                .isEqualTo(about == null ? List.of() : List.of(about + ": " + Check.STANDARD.written()));
    }

    @ParameterizedTest
    @CsvSource({"UL 943, 6, 30, outlet stook-pickup/class A GFCI (UL 943)", "UL 943, 6, 5,", "IEC 61009-1, 30, 10,"})
    void a_protection_trips_where_its_standard_says(String standard, String from, String to, @Nullable String about)
            throws IOException {
        told(standard, "\"tripMilliamps\": " + from + ",", "\"tripMilliamps\": " + to + ",", about);
    }
}
