package boltlore.bring;

import boltlore.json.JsonOut;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Small working files to begin with and to be changed: a family of three options, a part, a position, an option. */
public final class Beginnings {

    private static final String STAGE = "fitting";
    private static final String SUB_SYSTEM = "parts";
    private static final String SUPPLIER = "First supplier";

    /** Where the first of the options begins. */
    private static final Pattern INDENT = Pattern.compile("\\[(\\s*)\\{");

    /** A text, or what begins or ends an object or a list (RFC 8259). */
    private static final Pattern SIGN = Pattern.compile("\"(?:[^\"\\\\]|\\\\.)*\"|[\\[\\]{}]");

    private Beginnings() {}

    /** A workshop with defaults that need not be written again. */
    public static SortedMap<String, String> workshop(String name, String currency) {
        SortedMap<String, String> files = new Start(name, currency)
                .stages(List.of(STAGE))
                .subSystems(List.of(SUB_SYSTEM))
                .suppliers(List.of(SUPPLIER))
                .files();
        files.put(
                "workshop/defaults.json",
                JsonOut.object()
                        .put("$schema", "../schema/defaults.schema.json")
                        .put(
                                "parts",
                                JsonOut.object()
                                        .put("revision", "A")
                                        .put("unit", "each")
                                        .put("source", "buy")
                                        .put("supplier", SUPPLIER)
                                        .put("leadDays", 14))
                        .put(
                                "positions",
                                JsonOut.object()
                                        .put("fill", "one")
                                        .put("stage", STAGE)
                                        .put("subSystem", SUB_SYSTEM))
                        .put("lines", JsonOut.object().put("quantity", "1"))
                        .written());
        return files;
    }

    /** A family of three options, with a part for each of their values, that is proved without a finding. */
    public static SortedMap<String, String> family(String name, Place place) {
        String number = name.toUpperCase(Locale.ROOT);
        List<JsonOut> parts = List.of(
                part(number + "-FRAME-E", "Frame, early body", place, 1),
                part(number + "-FRAME-L", "Frame, late body", place, 2),
                part(number + "-PEDAL-L", "Pedal, left", place, 3),
                part(number + "-PEDAL-R", "Pedal, right", place, 4),
                part(number + "-LAMP", "Work lamp", place, 5),
                part(number + "-BOLT", "Bolt", place, 6));
        List<JsonOut> positions = List.of(
                place.complete(position(
                        "frame",
                        line(number + "-FRAME-E", "body", "early"),
                        line(number + "-FRAME-L", "body", "late"))),
                place.complete(position(
                        "pedal",
                        line(number + "-PEDAL-L", "drive-side", "left"),
                        line(number + "-PEDAL-R", "drive-side", "right"))),
                place.complete(line(number + "-LAMP", "lamp", "yes")),
                place.complete(JsonOut.object().put("part", number + "-BOLT").put("quantity", "8")));
        SortedMap<String, String> files = new TreeMap<>();
        files.put("parts/" + name + ".json", partsFile(parts));
        files.put("families/" + name + "/family.json", familyFile(name));
        files.put("families/" + name + "/kit/all.json", kitFile(positions));
        return files;
    }

    private static JsonOut.Members position(String name, JsonOut... lines) {
        return JsonOut.object().put("position", name).put("lines", JsonOut.list(List.of(lines)));
    }

    private static String familyFile(String name) {
        return JsonOut.object()
                .put("$schema", "../../schema/family.schema.json")
                .put("family", name)
                .put("says", words(name))
                .put(
                        "options",
                        JsonOut.list(List.of(
                                option("body", "early", "late"),
                                option("drive-side", "left", "right"),
                                option("lamp", "yes", "no"))))
                .written();
    }

    /**
     * Parts with the positions that they stand in, in two files of their own.
     *
     * @param parts at least one
     * @param family that they belong to
     * @param place what the workshop has
     * @return texts by path, named by the first part
     */
    public static SortedMap<String, String> parts(List<BegunPart> parts, String family, Place place) {
        String name = parts.get(0).number().toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-");
        List<JsonOut> all = new ArrayList<>();
        List<JsonOut> positions = new ArrayList<>();
        for (BegunPart part : parts) {
            all.add(part(part, place, all.size() + 1));
            positions.add(place.complete(position(part)));
        }
        SortedMap<String, String> files = new TreeMap<>();
        files.put("parts/" + name + ".json", partsFile(all));
        files.put("families/" + family + "/kit/" + name + ".json", kitFile(positions));
        return files;
    }

    private static JsonOut.Members position(BegunPart part) {
        JsonOut.Members json = JsonOut.object().put("part", part.number()).put("quantity", part.quantity());
        JsonOut.Members when = JsonOut.object();
        part.when()
                .forEach((option, values) ->
                        when.put(option, values.size() == 1 ? JsonOut.text(values.get(0)) : JsonOut.texts(values)));
        return part.when().isEmpty() ? json : json.put("when", when);
    }

    /** A position with its only part. */
    public static SortedMap<String, String> position(String name, String part, String family, Place place) {
        SortedMap<String, String> files = new TreeMap<>();
        JsonOut position = place.complete(
                JsonOut.object().put("position", name).put("part", part).put("quantity", "1"));
        files.put("families/" + family + "/kit/" + name + ".json", kitFile(List.of(position)));
        return files;
    }

    /**
     * A family's text with a further option of two answers behind the others; all else stays as it is, byte for byte.
     *
     * @param family text of a family's file
     * @param name of the option
     * @return the text, or empty where it has no list of options
     */
    public static Optional<String> withOption(String family, String name) {
        int end = endOfOptions(family);
        if (end < 0) {
            return Optional.empty();
        }
        String before = family.substring(0, end).stripTrailing();
        Matcher indents = INDENT.matcher(family.substring(family.indexOf("\"options\"")));
        String indent = before.endsWith("[") || !indents.find() ? "\n    " : indents.group(1);
        String written = option(name, "yes", "no").written().strip().replaceAll("\\s*\n\\s*", " ");
        return Optional.of(before
                + (before.endsWith("[") ? "" : ",")
                + (indent.isEmpty() ? " " : indent)
                + written
                + family.substring(before.length()));
    }

    /** Where the list of options ends that stands in the outermost object; below 0 where there is none. */
    private static int endOfOptions(String json) {
        Matcher sign = SIGN.matcher(json);
        int depth = 0;
        boolean inside = false;
        String text = "";
        while (sign.find()) {
            char first = sign.group().charAt(0);
            if (first == '"') {
                text = sign.group();
            } else if (first == '{' || first == '[') {
                depth++;
                inside |= depth == 2 && first == '[' && text.equals("\"options\"");
            } else {
                depth--;
                if (inside && depth == 1) {
                    return sign.start();
                }
            }
        }
        return -1;
    }

    private static JsonOut option(String name, String... values) {
        return JsonOut.object()
                .put("option", name)
                .put(
                        "values",
                        JsonOut.list(List.of(values), value -> JsonOut.object().put("value", value)));
    }

    private static JsonOut.Members line(String part, String option, String value) {
        return JsonOut.object().put("part", part).put("when", JsonOut.object().put(option, value));
    }

    /** Named, and for the rest a placeholder. */
    private static JsonOut part(String number, String says, Place place, int at) {
        BegunPart begun = BegunPart.named(number);
        return part(
                new BegunPart(number, says, begun.orderCode(), begun.cost(), begun.massKg(), "", "1", begun.when()),
                place,
                at);
    }

    private static JsonOut part(BegunPart part, Place place, int at) {
        JsonOut.Members json = JsonOut.object().put("part", part.number()).put("name", part.name());
        if (!place.hasDefaults()) {
            json.put("revision", "A")
                    .put("unit", "each")
                    .put("source", "buy")
                    .putIfAny("supplier", place.supplier())
                    .put("leadDays", 14);
        }
        return json.put("orderCode", part.orderCode())
                .put("cost", part.cost())
                .put("massKg", part.massKg())
                .put("bin", part.bin().isEmpty() ? place.bin(at) : part.bin());
    }

    private static String partsFile(List<JsonOut> parts) {
        return JsonOut.object()
                .put("$schema", "../schema/parts.schema.json")
                .put("parts", JsonOut.list(parts))
                .written();
    }

    private static String kitFile(List<JsonOut> positions) {
        return JsonOut.object()
                .put("$schema", "../../../schema/kit.schema.json")
                .put("positions", JsonOut.list(positions))
                .written();
    }

    private static String words(String name) {
        return name.substring(0, 1).toUpperCase(Locale.ROOT) + name.substring(1).replace('-', ' ');
    }

    /**
     * What a workshop has for the first part to stand in.
     *
     * @param hasDefaults whether it has defaults of its own
     * @param supplier one of its suppliers, or empty
     * @param bins how many bins are taken at most
     */
    public record Place(boolean hasDefaults, String stage, String subSystem, String supplier, String aisle, int bins) {

        private static final int POSITIONS = 99;

        /** One beyond those that are taken. */
        private String bin(int further) {
            int at = bins + further - 1;
            return aisle
                    + String.format(Locale.ROOT, "-01-%02d-A-%02d", at / POSITIONS % POSITIONS + 1, at % POSITIONS + 1);
        }

        private JsonOut complete(JsonOut.Members position) {
            return hasDefaults
                    ? position
                    : position.put("fill", "one").put("stage", stage).put("subSystem", subSystem);
        }
    }
}
