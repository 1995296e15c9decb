package boltlore.bring;

import boltlore.json.JsonOut;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;

/** Writes parts and lines as files of a catalogue. */
final class DraftFiles {

    private static final int LONGEST_LINE = 100;

    private final Brought brought;
    private final List<DraftPart> parts;
    private final Options options;
    private final Map<String, String> missing;
    private final Known into;
    private final Set<String> positions = new HashSet<>();
    private final Set<String> lines = new HashSet<>();

    DraftFiles(Brought brought, List<DraftPart> parts, Options options, Map<String, String> missing) {
        this.brought = brought;
        this.parts = parts;
        this.options = options;
        this.missing = missing;
        this.into = brought.into();
    }

    SortedMap<String, String> files() {
        String family = brought.mapping().family();
        SortedMap<String, String> files = new TreeMap<>();
        files.put("parts/" + family + ".json", partsFile());
        files.put("families/" + family + "/family.json", familyFile(family));
        files.put("families/" + family + "/kit/all.json", kitFile());
        if (into.isNew()) {
            files.putAll(new Start(family, missing.getOrDefault("currency", "EUR"))
                    .stages(List.of(stage()))
                    .subSystems(List.copyOf(subSystems()))
                    .aisles(aisles())
                    .suppliers(List.copyOf(suppliers()))
                    .files());
        }
        return files;
    }

    private Set<String> suppliers() {
        Set<String> suppliers = new LinkedHashSet<>();
        parts.stream().map(DraftFiles::supplier).filter(name -> !name.isEmpty()).forEach(suppliers::add);
        return suppliers;
    }

    private List<String> aisles() {
        List<String> aisles = parts.stream()
                .map(DraftPart::bin)
                .filter(bin -> !bin.isEmpty())
                .map(bin -> bin.substring(0, bin.indexOf('-')))
                .distinct()
                .sorted()
                .toList();
        return aisles.isEmpty() ? List.of("A") : aisles;
    }

    private Set<String> subSystems() {
        Set<String> all = new LinkedHashSet<>();
        parts.forEach(part -> all.add(subSystem(part)));
        return all;
    }

    private String subSystem(DraftPart part) {
        String own = part.subSystem();
        return into.isNew() || into.subSystems().contains(own) ? own : missing.getOrDefault("subSystem", own);
    }

    private String stage() {
        return into.isNew()
                ? "fitting"
                : into.stages().size() == 1 ? into.stages().get(0) : missing.getOrDefault("stage", "");
    }

    private static String supplier(DraftPart part) {
        return line(part.entry().text(Role.SUPPLIER));
    }

    /** As one line of the length that the catalogue bears. */
    private static String line(String text) {
        return text.length() <= LONGEST_LINE
                ? text
                : text.substring(0, LONGEST_LINE).strip();
    }

    private String partsFile() {
        return JsonOut.object()
                .put("$schema", "../schema/parts.schema.json")
                .put("parts", JsonOut.list(parts, this::part))
                .written();
    }

    private JsonOut part(DraftPart part) {
        Entry entry = part.entry();
        JsonOut.Members json = JsonOut.object().put("part", part.number());
        String revision = entry.text(Role.REVISION);
        put(json, "revision", line(revision));
        json.put("name", entry.fullName());
        if (!(part.unit().equals("each") && into.defaults().contains("unit"))) {
            json.put("unit", part.unit());
        }
        put(json, "source", part.contains().isEmpty() ? "" : "make");
        String supplier = supplier(part);
        if (!supplier.isEmpty() && (into.isNew() || into.suppliers().contains(supplier))) {
            json.put("supplier", supplier);
        }
        json.putIfAny("orderCode", line(entry.text(Role.ORDER_CODE)));
        put(json, "leadDays", part.leadDays());
        costs(json, part);
        json.putIfAny("bin", part.bin());
        mass(json, part);
        if (!part.alternates().isEmpty()) {
            json.put("alternates", JsonOut.list(part.alternates(), DraftFiles::alternate));
        }
        return json;
    }

    private void mass(JsonOut.Members json, DraftPart part) {
        if (part.contains().isEmpty()) {
            String unit = part.massUnit().isEmpty() ? missing.getOrDefault("massUnit", "kg") : part.massUnit();
            put(
                    json,
                    "massKg",
                    part.mass()
                            .map(mass -> DraftPart.inKg(mass, unit).toPlainString())
                            .orElse(""));
        } else {
            List<JsonOut> inside = new ArrayList<>();
            part.contains()
                    .forEach((child, quantity) -> inside.add(
                            JsonOut.object().put("part", child.number()).put("quantity", quantity)));
            json.put("contains", JsonOut.list(inside));
        }
    }

    private static JsonOut alternate(DraftPart part) {
        return JsonOut.object().put("part", part.number()).put("because", "Its list names it as an alternate.");
    }

    private void costs(JsonOut.Members json, DraftPart part) {
        boolean dropped = brought.mapping().given().at("missing/currency").isPresent();
        put(
                json,
                "cost",
                dropped ? "" : part.cost().map(BigDecimal::toPlainString).orElse(""));
    }

    /** What the list says, or what the mapping says in its place, or nothing where the workshop has a default. */
    private void put(JsonOut.Members json, String key, String said) {
        String value = said.isEmpty() ? missing.getOrDefault(key, "") : said;
        if (key.equals("leadDays")) {
            if (!value.isEmpty()) {
                json.put(key, Long.parseLong(value));
            }
        } else {
            json.putIfAny(key, value);
        }
    }

    private String familyFile(String family) {
        List<JsonOut> all = new ArrayList<>();
        options.all().forEach((option, values) -> all.add(option(option, values)));
        if (all.isEmpty()) {
            all.add(option("kit", Map.of("complete", "Complete kit")));
        }
        String says = family.replace('-', ' ');
        return JsonOut.object()
                .put("$schema", "../../schema/family.schema.json")
                .put("family", family)
                .put("says", says.substring(0, 1).toUpperCase(Locale.ROOT) + says.substring(1))
                .put("options", JsonOut.list(all))
                .written();
    }

    private JsonOut option(String option, Map<String, String> values) {
        return JsonOut.object()
                .put("option", option)
                .put("asks", "Which " + options.words(option).toLowerCase(Locale.ROOT) + "?")
                .put(
                        "values",
                        JsonOut.list(
                                values.entrySet(),
                                value -> JsonOut.object()
                                        .put("value", value.getKey())
                                        .put("says", value.getValue())));
    }

    private String kitFile() {
        return JsonOut.object()
                .put("$schema", "../../../schema/kit.schema.json")
                .put(
                        "positions",
                        JsonOut.list(
                                parts.stream()
                                        .filter(part -> !part.lines().isEmpty())
                                        .toList(),
                                this::position))
                .written();
    }

    private JsonOut position(DraftPart part) {
        String slug = Slugs.name(part.entry().fullName());
        String name = free(
                slug.isEmpty() ? part.number().toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9-]", "-") : slug,
                positions);
        long rows = part.lines().stream().map(DraftPart.Line::row).distinct().count();
        JsonOut.Members json = JsonOut.object()
                .put("position", name)
                .put("says", part.entry().fullName())
                .put("subSystem", subSystem(part))
                .put("stage", stage())
                .put("fill", rows == 1 ? "one" : "some")
                .put("required", required(part.lines()));
        List<JsonOut> written = new ArrayList<>();
        for (DraftPart.Line line : part.lines()) {
            written.add(lineOf(name, part, line));
        }
        return json.put("lines", JsonOut.list(written));
    }

    private JsonOut lineOf(String position, DraftPart part, DraftPart.Line line) {
        JsonOut.Members json = JsonOut.object()
                .put("line", free(position, lines))
                .put("part", part.number())
                .put("quantity", line.quantity());
        if (!line.when().isEmpty()) {
            json.put("when", when(line.when()));
        }
        return json.putIfAny("note", line.note());
    }

    /** A name that none has yet. */
    private static String free(String name, Set<String> taken) {
        String free = name;
        for (int i = 2; !taken.add(free); i++) {
            String more = "-" + i;
            free = name.substring(0, Math.min(name.length(), 60 - more.length())) + more;
        }
        return free;
    }

    private static JsonOut required(List<DraftPart.Line> lines) {
        if (lines.stream().anyMatch(line -> line.when().isEmpty())) {
            return JsonOut.object();
        }
        List<JsonOut> any =
                lines.stream().map(line -> when(line.when())).distinct().toList();
        return any.size() == 1 ? any.get(0) : JsonOut.object().put("any", JsonOut.list(any));
    }

    private static JsonOut when(Map<String, List<String>> when) {
        JsonOut.Members json = JsonOut.object();
        when.forEach((option, values) ->
                json.put(option, values.size() == 1 ? JsonOut.text(values.get(0)) : JsonOut.texts(values)));
        return json;
    }
}
