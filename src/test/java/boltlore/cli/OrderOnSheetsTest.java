package boltlore.cli;

import static boltlore.cli.Ran.boltlore;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("What sheets say of their order")
class OrderOnSheetsTest {

    private static final String NOTE = "rebuilt on a later body; measure before making the cradle";
    private static final Pattern ORDER = Pattern.compile("BL-\\d{4}");
    private static final String STOP = "\"code\": \"stop\"";

    @TempDir
    private static Path out;

    @BeforeAll
    static void kit() {
        boltlore("kit", "catalog/orders/bl-1012.json", "--all", "--job-cards", "--out", out);
    }

    private static String sheet(String name) throws IOException {
        Path folder = out.resolve("BL-1012");
        int slash = name.lastIndexOf('/') + 1;
        return Files.readString(
                folder.resolve(name.substring(0, slash)).resolve("json").resolve(name.substring(slash) + ".json"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"bill", "cutting-list", "job-cards", "powder-coat-batch", "weight-statement", "end-of-line-test"
            })
    void its_note_stands_wherever_somebody_of_the_house_works_by_it(String name) throws IOException {
        assertThat(sheet(name)).contains(NOTE);
    }

    /** The note is written for the house: nothing says that a customer may read it. */
    @ParameterizedTest
    @ValueSource(strings = {"customer/fitters-cards", "customer/quotation", "customer/packing-list"})
    void and_on_no_sheet_that_leaves_the_house(String name) throws IOException {
        assertThat(sheet(name)).doesNotContain(NOTE);
    }

    @ParameterizedTest
    @ValueSource(strings = {"end-of-line-test", "labels-and-manual", "weight-statement", "customer/fitters-cards"})
    void its_vehicle_is_named_by_the_chassis_number_or_has_room_for_it(String name) throws IOException {
        assertThat(sheet(name)).contains("\"chassis\"");
    }

    @Test
    void job_cards_warn_of_what_they_send_people_to_and_of_nothing_else() throws IOException {
        assertThat(sheet("job-cards"))
                .contains("Welded part", "Cutting by beam or plasma", "Saws cut hands", "High voltage can kill")
                .doesNotContain("Lithium batteries");
    }

    @Test
    void a_quotation_that_asks_what_shipping_waits_for_is_sent_and_the_crates_are_not() throws IOException {
        assertThat(sheet("customer/quotation")).doesNotContain(STOP);
        assertThat(sheet("customer/packing-list")).contains(STOP);
    }

    /** Each finding's sentence names its orders, for people; its JSON lists just those, for programs. */
    @ParameterizedTest
    @ValueSource(strings = {"cut", "coat", "schedule", "buy"})
    void a_finding_about_some_of_several_orders_names_them(String command) throws IOException {
        Ran ran = boltlore(
                command,
                "catalog/orders/bl-1001.json",
                "catalog/orders/bl-1002.json",
                "catalog/orders/bl-1006.json",
                "--json",
                "--out",
                out.resolve(command));
        JsonNode together = new ObjectMapper().readTree(ran.out()).get("orders").get(0);

        assertThat(together.get("orders")).extracting(JsonNode::asText).containsExactly("BL-1001", "BL-1002");
        assertThat(together.get("findings"))
                .isNotEmpty()
                .allSatisfy(finding -> assertThat(texts(finding.path("orders")))
                        .isEqualTo(ORDER.matcher(finding.get("sentence").asText())
                                .results()
                                .map(MatchResult::group)
                                .collect(Collectors.toCollection(TreeSet::new))));
        assertThat(together.get("findings"))
                .extracting(finding -> texts(finding.path("orders")))
                .anySatisfy(orders -> assertThat(orders).contains("BL-1002"));
    }

    private static Set<String> texts(JsonNode list) {
        return StreamSupport.stream(list.spliterator(), false)
                .map(JsonNode::asText)
                .collect(Collectors.toCollection(TreeSet::new));
    }
}
