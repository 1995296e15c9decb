package boltlore.cli;

import static boltlore.cli.Ran.boltlore;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The JSON record of an order, filled in by somebody whose vehicle is in order. */
final class FilledRecord {

    private static final ObjectMapper MAPPER = new ObjectMapper();
    private static final BigDecimal HALF = new BigDecimal("0.5");

    private final ObjectNode record;
    private final Map<String, ObjectNode> boxes = new LinkedHashMap<>();

    private FilledRecord(ObjectNode record) {
        this.record = record;
        record.get("readings").forEach(box -> boxes.put(box.get("box").asText(), (ObjectNode) box));
    }

    /** Writes the sheets of the order into the folder and fills the record in. */
    static FilledRecord of(String order, Path folder) {
        try {
            JsonNode plan = MAPPER.readTree(
                            boltlore("test", order, "--json", "--out", folder).out())
                    .get("orders")
                    .get(0);
            Path file = folder.resolve(plan.get("order").asText()).resolve("json/end-of-line-test-record.json");
            FilledRecord filled = new FilledRecord((ObjectNode) MAPPER.readTree(Files.readString(file)));
            Map<String, List<JsonNode>> tests = new LinkedHashMap<>();
            plan.get("reports")
                    .get(0)
                    .get("tables")
                    .get("boxes")
                    .forEach(box -> tests.computeIfAbsent(box.get("test-id").asText(), test -> new ArrayList<>())
                            .add(box));
            tests.forEach(filled::fill);
            return filled;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void fill(String key, List<JsonNode> own) {
        Map<String, String> values = new HashMap<>();
        JsonNode test = own.get(0);
        if (own.size() == 6) {
            values.putAll(Map.of(
                    key + ".vb",
                    "350",
                    key + ".v1",
                    "200",
                    key + ".v2",
                    "145",
                    key + ".v1-ro",
                    "90",
                    key + ".meter",
                    "11"));
            values.put(key + ".ro", test.get("resistor").asText());
        } else if (own.size() == 2) {
            values.putAll(Map.of(key + ".vb", "350", key + ".link", "341"));
        } else {
            values.put(key, good(test));
        }
        own.forEach(
                box -> write(box.get("box").asText(), values.get(box.get("box").asText())));
    }

    /** A value within the limit, or the state asked for. */
    private static String good(JsonNode test) {
        boolean least = !test.get("least").isNull();
        boolean most = !test.get("most").isNull();
        if (!least && !most) {
            return test.get("limit").asText();
        }
        BigDecimal bound = new BigDecimal(test.get(least ? "least" : "most").asText());
        if (least && most) {
            BigDecimal sum = bound.add(new BigDecimal(test.get("most").asText()));
            return sum.multiply(HALF).setScale(2, RoundingMode.HALF_UP).toPlainString();
        }
        BigDecimal away = bound.abs().multiply(new BigDecimal("0.1"));
        return (least ? bound.add(away) : bound.subtract(away)).toPlainString();
    }

    FilledRecord write(String box, String value) {
        return write(box, "value", value)
                .write(box, "instrument", "M-7")
                .write(box, "by", "R. Oakes")
                .write(box, "on", "2026-03-30");
    }

    FilledRecord write(String box, String key, String value) {
        boxes.get(box).put(key, value);
        return this;
    }

    /** Another reading behind all others. */
    FilledRecord add(String box, String value, String unit, String on) {
        record.withArray("readings")
                .addObject()
                .put("box", box)
                .put("value", value)
                .put("unit", unit)
                .put("instrument", "M-8")
                .put("by", "T. Ash")
                .put("on", on);
        return this;
    }

    FilledRecord head(String key, String value) {
        record.put(key, value);
        return this;
    }

    String head(String key) {
        return record.get(key).asText();
    }

    /** The first box of the record. */
    String first() {
        return boxes.keySet().iterator().next();
    }

    int count() {
        return boxes.size();
    }

    Path in(Path file) {
        try {
            return Files.writeString(file, record.toPrettyString());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The same as the CSV file that a spreadsheet program of a country with a decimal comma saves. */
    Path withSemicolons(Path file) {
        StringBuilder csv = new StringBuilder("\uFEFForder;limits;box;value;unit;instrument;by;on\r\n");
        record.get("readings")
                .forEach(box -> csv.append(record.get("order").asText())
                        .append(';')
                        .append(record.get("limits").asText())
                        .append(';')
                        .append(box.get("box").asText())
                        .append(';')
                        .append(box.get("value").asText().replace('.', ','))
                        .append(';')
                        .append(box.get("unit").asText())
                        .append(";M-7;R. Oakes;30.03.2026\r\n"));
        try {
            return Files.writeString(file, csv);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
