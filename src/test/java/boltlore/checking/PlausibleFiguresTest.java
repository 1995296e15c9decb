package boltlore.checking;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("Figures and sentences of the demo that cannot be")
class PlausibleFiguresTest {

    @TempDir
    private Path folder;

    /** The checks' remarks on the demo with one text of a file changed. */
    private List<String> remarks(String file, String from, String to) throws IOException {
        return PlantedDemo.remarks(folder, file, from, to);
    }

    @Test
    void a_station_a_digit_short_is_far_from_what_holds_it() throws IOException {
        assertThat(remarks(
                        "families/pannier-van/weights.json",
                        "\"position\": \"rear-box\", \"stationMm\": 2790",
                        "\"position\": \"rear-box\", \"stationMm\": 279"))
                .contains("position pannier-van/rear-box: station that cannot be");
    }

    @Test
    void a_station_a_digit_short_is_told_of_what_hangs_on_nothing_too() throws IOException {
        assertThat(remarks(
                        "families/pannier-van/weights.json",
                        "\"position\": \"rear-seal\", \"stationMm\": 2790",
                        "\"position\": \"rear-seal\", \"stationMm\": 279"))
                .containsOnly("position pannier-van/rear-seal: station that cannot be");
    }

    @Test
    void a_station_a_hand_farther_back_is_none() throws IOException {
        assertThat(remarks(
                        "families/pannier-van/weights.json",
                        "\"position\": \"rear-box\", \"stationMm\": 2790",
                        "\"position\": \"rear-box\", \"stationMm\": 2700"))
                .isEmpty();
    }

    /** ISO 11228-1: 25 kg as reference mass, from memory. */
    @ParameterizedTest
    @CsvSource({"23, 40, 0", "25, 50, 0", "26, 40, 1", "23, 47, 1", "230, 400, 2"})
    void people_lift_what_people_can(String one, String two, int remarks) throws IOException {
        assertThat(remarks(
                        "workshop/shipping.json",
                        "\"onePersonKg\": \"23\", \"twoPersonsKg\": \"40\"",
                        "\"onePersonKg\": \"" + one + "\", \"twoPersonsKg\": \"" + two + "\""))
                .filteredOn(remark -> remark.startsWith("lifting of shipping.json"))
                .hasSize(remarks);
    }

    /** Regulation (EU) No 952/2013, Article 4, from memory: the Union's territory, and Monaco's. */
    @ParameterizedTest
    @CsvSource({"SE, false", "GB, true", "MC, false", "XQ, true"})
    void a_customs_union_is_one(String last, boolean told) throws IOException {
        assertThat(remarks("workshop/shipping.json", "\"ES\", \"SE\"]", "\"ES\", \"" + last + "\"]")
                        .contains("customs union of shipping.json: customs union that is none"))
                .isEqualTo(told);
    }

    @ParameterizedTest
    @CsvSource({"186.00, false", "186.01, true"})
    void a_part_costs_at_least_what_its_old_unit_brings_back(String credit, boolean told) throws IOException {
        assertThat(remarks(
                                "parts/pannier-drive.json",
                                "\"cost\": \"186.00\"",
                                "\"cost\": \"186.00\", \"coreCredit\": \"" + credit + "\"")
                        .contains("part PV-PS-ES: core credit above the cost"))
                .isEqualTo(told);
    }

    @ParameterizedTest
    @CsvSource({
        "The flange takes six bolts., 6",
        "A propshaft takes four bolts at each end., 8",
        "The drive unit hangs in its mounts on four through bolts., 4",
        "The 60 kW drive unit hangs in its mounts on six through bolts., 6",
        "It takes 12 screws., 12",
        "The box is bolted through its brackets.,",
        "A washer stands under the head.,",
        "Two bolts in front and three screws behind.,"
    })
    void a_sentence_says_how_many(String sentence, @Nullable String count) {
        assertThat(CountsSaid.said(sentence).map(Object::toString)).isEqualTo(Optional.ofNullable(count));
    }

    @Test
    void a_sentence_and_its_quantity_agree() throws IOException {
        assertThat(remarks(
                        "families/stook-pickup/kit/drive.json",
                        "{\"part\": \"FX-M10X25\", \"each\": \"6\"",
                        "{\"part\": \"FX-M10X25\", \"each\": \"5\""))
                .hasSize(6)
                .allMatch(remark -> remark.endsWith(": sentence against its quantity")
                        || remark.endsWith(": holes without a fixing"));
    }

    @Test
    void bolts_that_are_signed_for_have_holes_that_are_counted() throws IOException {
        assertThat(remarks("parts/stook-drive.json", ", \"holes\": [{\"diameterMm\": 11, \"count\": 6}]", ""))
                .hasSize(3)
                .allMatch(remark -> remark.startsWith("line stook-pickup/output-flange")
                        && remark.endsWith(": holes that nobody counts"));
    }

    @Test
    void a_value_that_no_line_names_changes_nothing() throws IOException {
        String outlet = "{\"value\": \"cabin-outlet\",";
        String towBar = "{\"value\": \"tow-bar\", \"says\": {\"en\": \"Tow bar\", \"de\": \"Anhängerkupplung\","
                + " \"fr\": \"Attelage\"}}, ";
        assertThat(remarks("families/stook-pickup/family.json", outlet, towBar + outlet))
                .containsExactly("value stook-pickup/extras=tow-bar: value that changes nothing");
    }
}
