package boltlore.handbook;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;

/** Each file of the catalogue with each of its fields, from the schemas that are drawn from the readers themselves. */
final class Reference {

    private static final String SHARED = "common";
    private static final String ENDING = ".schema.json";

    /** What the end of a field's name says it is measured in; the longest end counts. */
    private static final Map<String, String> UNITS = Map.ofEntries(
            Map.entry("Mm", "mm"),
            Map.entry("Mm2", "mm²"),
            Map.entry("M2", "m²"),
            Map.entry("KgM3", "kg/m³"),
            Map.entry("M3", "m³"),
            Map.entry("Kg", "kg"),
            Map.entry("Km", "km"),
            Map.entry("ohmPerKm", "Ω/km"),
            Map.entry("Kmh", "km/h"),
            Map.entry("Um", "µm"),
            Map.entry("Percent", "%"),
            Map.entry("Days", "days"),
            Map.entry("Hours", "h"),
            Map.entry("wattHours", "Wh"),
            Map.entry("AmpHours", "Ah"),
            Map.entry("hoursPerDay", "h a day"),
            Map.entry("Min", "min"),
            Map.entry("Minutes", "min"),
            Map.entry("Months", "months"),
            Map.entry("Years", "years"),
            Map.entry("Nm", "N·m"),
            Map.entry("N", "N"),
            Map.entry("Kn", "kN"),
            Map.entry("Volts", "V"),
            Map.entry("Amps", "A"),
            Map.entry("Kiloamps", "kA"),
            Map.entry("Milliamps", "mA"),
            Map.entry("Milliohm", "mΩ"),
            Map.entry("Nanofarad", "nF"),
            Map.entry("Joule", "J"),
            Map.entry("A2s", "A²·s"),
            Map.entry("Watts", "W"),
            Map.entry("WattsPerKelvin", "W/K"),
            Map.entry("Kw", "kW"),
            Map.entry("Kwh", "kWh"),
            Map.entry("C", "°C"),
            Map.entry("Degrees", "°"),
            Map.entry("Litres", "l"),
            Map.entry("Kpa", "kPa"),
            Map.entry("Mpa", "MPa"),
            Map.entry("Mpas", "mPa·s"),
            Map.entry("Rpm", "1/min"),
            Map.entry("PerMs", "s/m"),
            Map.entry("Seconds", "s"),
            Map.entry("Milliseconds", "ms"),
            Map.entry("PerHour", "money an hour"),
            Map.entry("PerM2", "money a m²"),
            Map.entry("PerPiece", "money a piece"),
            Map.entry("PerMetre", "money a metre"));

    private final Map<String, JsonNode> schemas = new TreeMap<>();
    private final StringBuilder text = new StringBuilder();

    private Reference(Path folder) throws IOException {
        ObjectMapper mapper = new ObjectMapper();
        try (Stream<Path> files = Files.list(folder)) {
            for (Path file : files.sorted().toList()) {
                schemas.put(file.getFileName().toString().replace(ENDING, ""), mapper.readTree(Files.readString(file)));
            }
        }
    }

    static String markdown(Path schemas) throws IOException {
        return new Reference(schemas).written();
    }

    private String written() {
        text.append("""
                # The catalogue, field by field

                Each file of a catalogue names its schema, and an editor that knows JSON Schema helps while one types. This
                sheet is made from the same schemas. `[]` stands for each entry of a list, `{}` for each key that the workshop
                names itself. A field whose unit is in its name has it in the column of units; a quantity is per unit of its
                part. Money is in the workshop's currency unless the field says otherwise. What must be there is marked 'yes'.

                """);
        schemas.forEach((name, schema) -> {
            if (!name.equals(SHARED)) {
                text.append("- [%s](#%s): %s%n"
                        .formatted(
                                name,
                                anchor(title(schema)),
                                schema.path("description").asText()));
            }
        });
        schemas.forEach((name, schema) -> {
            if (!name.equals(SHARED)) {
                heading(title(schema), name, schema);
                fields("", schema);
            }
        });
        kinds();
        return text.toString();
    }

    private static String title(JsonNode schema) {
        return schema.path("title").asText();
    }

    private static String anchor(String title) {
        return title.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9 -]", "").replace(' ', '-');
    }

    private void heading(String title, String name, JsonNode schema) {
        text.append("%n## %s%n%n%s Schema `%s%s`.%n%n"
                .formatted(title, schema.path("description").asText(), name, ENDING));
        text.append("| field | kind | unit | needed | meaning |\n|---|---|---|---|---|\n");
    }

    private void fields(String path, JsonNode node) {
        Set<String> needed = new TreeSet<>();
        node.path("required").forEach(each -> needed.add(each.asText()));
        node.path("properties").properties().forEach(each -> {
            if (each.getValue().isObject() && !each.getKey().equals("$schema")) {
                field(path + each.getKey(), each.getKey(), needed.contains(each.getKey()), each.getValue());
            }
        });
        JsonNode own = node.path("additionalProperties");
        if (own.isObject()) {
            field(path + "{}", "", false, own);
        }
    }

    private void field(String path, String key, boolean needed, JsonNode node) {
        text.append("| `%s` | %s | %s | %s | %s |%n"
                .formatted(
                        path,
                        kind(node),
                        unit(key),
                        needed ? "yes" : "",
                        cell(node.path("description").asText())));
        inside(path, node);
        node.path("anyOf").forEach(each -> inside(path, each));
    }

    private void inside(String path, JsonNode node) {
        JsonNode items = node.path("items");
        if (items.isObject()
                && (items.has("properties")
                        || items.path("additionalProperties").isObject())) {
            fields(path + "[].", items);
        }
        fields(path + ".", node);
    }

    /** What may stand there, with its bounds. */
    private static String kind(JsonNode node) {
        List<String> said = new ArrayList<>();
        if (node.has("$ref")) {
            String shared = node.path("$ref").asText().replaceFirst(".*/", "");
            said.add("[%s](#%s)".formatted(shared, anchor("kind " + shared)));
        } else if (node.has("enum")) {
            List<String> values = new ArrayList<>();
            node.path("enum").forEach(each -> values.add("`" + each.asText() + "`"));
            said.add(String.join(", ", values));
        } else if (node.has("anyOf")) {
            List<String> either = new ArrayList<>();
            node.path("anyOf").forEach(each -> either.add(kind(each)));
            said.add(String.join(" or ", either));
        } else if (node.has("items")) {
            said.add("list of " + kind(node.path("items")));
        } else {
            said.add(node.path("type").isTextual() ? node.path("type").asText() : "number");
        }
        said.addAll(bounds(node));
        return cell(String.join(", ", said));
    }

    private static List<String> bounds(JsonNode node) {
        List<String> said = new ArrayList<>();
        Map.of(
                        "minimum",
                        "at least ",
                        "exclusiveMinimum",
                        "above ",
                        "maximum",
                        "at most ",
                        "exclusiveMaximum",
                        "below ")
                .entrySet()
                .stream()
                .sorted(Map.Entry.comparingByValue())
                .filter(each -> node.has(each.getKey()))
                .forEach(each ->
                        said.add(each.getValue() + node.path(each.getKey()).asText()));
        return said;
    }

    static String unit(String key) {
        String longest = "";
        for (String end : UNITS.keySet()) {
            boolean ends = key.endsWith(end) || key.equals(Character.toLowerCase(end.charAt(0)) + end.substring(1));
            if (ends && end.length() > longest.length()) {
                longest = end;
            }
        }
        return UNITS.getOrDefault(longest, "");
    }

    private void kinds() {
        text.append(
                "\n## Kinds of values\n\nNumbers are written as JSON numbers or, exact to the last digit, as texts.\n");
        schemas.get(SHARED).path("$defs").properties().forEach(each -> {
            JsonNode node = each.getValue();
            text.append("%n### Kind %s%n%n".formatted(each.getKey()));
            String meaning = node.path("description").asText();
            text.append(meaning.isEmpty() ? "" : cell(sentence(meaning)) + " ");
            text.append("Written as ")
                    .append(node.has("$ref") ? kind(node) : plain(node))
                    .append(".\n");
        });
    }

    private static String plain(JsonNode node) {
        JsonNode type = node.path("type");
        List<String> types = new ArrayList<>();
        (type.isArray() ? type : List.of(type)).forEach(each -> types.add(each.asText()));
        String said = type.isMissingNode() ? kind(node) : String.join(" or ", types);
        return node.has("pattern") ? said + " like `" + node.path("pattern").asText() + "`" : said;
    }

    private static String sentence(String meaning) {
        String first = meaning.substring(0, 1).toUpperCase(Locale.ROOT) + meaning.substring(1);
        return first.endsWith(".") ? first : first + ".";
    }

    private static String cell(String said) {
        return said.replace("|", "\\|").replace("\n", " ");
    }
}
