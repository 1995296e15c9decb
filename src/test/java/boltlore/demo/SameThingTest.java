package boltlore.demo;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Families say for themselves what a drive unit or a cable can do: what both hold must be said alike. */
@DisplayName("What both demo families hold is one thing with one set of figures")
class SameThingTest {

    private static final ObjectMapper MAPPER = new ObjectMapper();

    private static JsonNode read(String family, String file) throws IOException {
        return MAPPER.readTree(
                Path.of("catalog/families", family, file + ".json").toFile());
    }

    /** Entries by their name, without what says for which orders they are. */
    private static Map<String, JsonNode> named(JsonNode list, String name) {
        Map<String, JsonNode> named = new TreeMap<>();
        list.forEach(each -> named.put(each.path(name).asText(), ((ObjectNode) each.deepCopy()).without("when")));
        return named;
    }

    private static List<String> unlike(Map<String, JsonNode> van, Map<String, JsonNode> pickUp) {
        return van.keySet().stream()
                .filter(pickUp::containsKey)
                .filter(name -> !van.get(name).equals(pickUp.get(name)))
                .toList();
    }

    @ParameterizedTest
    @CsvSource({
        "driving, driveUnits, part, 1",
        "driving, coolants, coolant, 2",
        "driving, shocks, shock, 3",
        "electrics, packs, pack, 1",
        "electrics, capacitors, capacitor, 4",
        "electrics, prechargeResistors, part, 1",
        "electrics, fuses, fuse, 9",
        "electrics, cables, cable, 8",
        "electrics, publicLeads, part, 2"
    })
    void a_thing_named_in_both_is_said_alike(String file, String list, String name, int common) throws IOException {
        Map<String, JsonNode> van = named(read("pannier-van", file).path(list), name);
        Map<String, JsonNode> pickUp = named(read("stook-pickup", file).path(list), name);

        assertThat(van.keySet().stream().filter(pickUp::containsKey)).hasSizeGreaterThanOrEqualTo(common);
        assertThat(unlike(van, pickUp)).isEmpty();
    }

    @Test
    void a_cable_that_carries_more_in_one_of_them_would_be_told() throws IOException {
        Map<String, JsonNode> van = named(read("pannier-van", "electrics").path("cables"), "cable");
        Map<String, JsonNode> pickUp = new TreeMap<>(van);
        pickUp.put("HV-W50", ((ObjectNode) van.get("HV-W50").deepCopy()).put("amps", "400"));

        assertThat(unlike(van, pickUp)).containsExactly("HV-W50");
    }

    /** Pressure drops are the passage's own, whatever circuit it lies in; cold plates are more where there are more of them. */
    @Test
    void what_coolant_flows_through_has_one_pressure_drop() throws IOException {
        Map<String, Set<JsonNode>> drops = new TreeMap<>();
        for (String family : List.of("pannier-van", "stook-pickup")) {
            for (JsonNode circuit : read(family, "driving").path("circuits")) {
                circuit.path("passages")
                        .forEach(passage -> drops.computeIfAbsent(
                                        passage.path("says").asText(), name -> new HashSet<>())
                                .add(passage.path("drop")));
            }
        }

        assertThat(drops).containsKey("Drive unit, 60 kW");
        assertThat(drops.get("Cold plates")).as("a near miss").hasSize(2);
        drops.remove("Cold plates");
        assertThat(drops.values()).hasSizeGreaterThan(5).allMatch(same -> same.size() == 1);
    }
}
