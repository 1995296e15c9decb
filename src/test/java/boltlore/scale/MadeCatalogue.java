package boltlore.scale;

import boltlore.json.JsonOut;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * A catalogue of any size as files, made up from a seed: options of two to five values; limits that tie an option to one of the
 * next few; positions of about five lines, each decided by one option or two neighbours, so that every valid order gets
 * exactly one; each fourth position a bracket for the next.
 */
final class MadeCatalogue {

    static final String FAMILY = "made";

    private static final int LINES_AT_A_POSITION = 5;
    private static final int EACH_BRACKET = 4;

    /** What the demo's workshop says of parts that these files do not have. */
    private static final List<String> OF_THE_DEMO_ALONE =
            List.of("pricing.json", "shipping.json", "capacity.json", "stores.json");

    private final Random random;
    private final int[] values;
    private final List<JsonOut> limits = new ArrayList<>();
    private final List<JsonOut> positions = new ArrayList<>();
    private final List<JsonOut> parts = new ArrayList<>();

    private MadeCatalogue(int options, long seed) {
        random = new Random(seed);
        values = IntStream.range(0, options).map(i -> 2 + random.nextInt(4)).toArray();
    }

    /** Writes a catalogue of so many lines at the least, and of as many limits as options, into an empty folder. */
    static void write(Path folder, int lines, int options, long seed) throws IOException {
        MadeCatalogue made = new MadeCatalogue(options, seed);
        for (int i = 0; i < options; i++) {
            made.limit(i);
        }
        for (int i = 0; made.parts.size() < lines || i % EACH_BRACKET == 0; i++) {
            made.position(i);
        }
        copyWorkshop(folder);
        write(folder, "parts/made.json", file("../schema/parts.schema.json").put("parts", JsonOut.list(made.parts)));
        write(folder, "families/made/family.json", made.family());
        write(
                folder,
                "families/made/kit/made.json",
                file("../../../schema/kit.schema.json").put("positions", JsonOut.list(made.positions)));
    }

    private static void copyWorkshop(Path folder) throws IOException {
        Path demo = Path.of("catalog");
        try (Stream<Path> files = Files.list(demo.resolve("workshop"))) {
            for (Path from : files.toList()) {
                if (!OF_THE_DEMO_ALONE.contains(from.getFileName().toString())) {
                    copy(demo, from, folder);
                }
            }
        }
        copy(demo, demo.resolve("finishes.json"), folder);
        copy(demo, demo.resolve("materials.json"), folder);
    }

    private static void copy(Path demo, Path from, Path folder) throws IOException {
        Path to = folder.resolve(demo.relativize(from).toString());
        Files.createDirectories(to.getParent());
        Files.copy(from, to);
    }

    private static void write(Path folder, String name, JsonOut content) throws IOException {
        Path file = folder.resolve(name);
        Files.createDirectories(file.getParent());
        Files.writeString(file, content.written());
    }

    private static JsonOut.Members file(String schema) {
        return JsonOut.object().put("$schema", schema);
    }

    private JsonOut family() {
        return file("../../schema/family.schema.json")
                .put("family", FAMILY)
                .put("says", "Made up")
                .put(
                        "options",
                        JsonOut.list(IntStream.range(0, values.length)
                                .mapToObj(this::option)
                                .toList()))
                .put("limits", JsonOut.list(limits));
    }

    private JsonOut option(int number) {
        return JsonOut.object()
                .put("option", "option-" + number)
                .put("asks", "Which " + number + "?")
                .put(
                        "values",
                        JsonOut.list(IntStream.range(0, values[number])
                                .mapToObj(value -> (JsonOut) JsonOut.object()
                                        .put("value", "v" + value)
                                        .put("says", "Value " + value))
                                .toList()));
    }

    private void limit(int number) {
        int one = random.nextInt(values.length - 1);
        int other = Math.min(values.length - 1, one + 1 + random.nextInt(4));
        limits.add(JsonOut.object()
                .put("limit", "limit-" + number)
                .put("never", all(is(one, random.nextInt(values[one])), is(other, random.nextInt(values[other]))))
                .put("because", "These two do not go together."));
    }

    private static JsonOut.Members is(int option, int value) {
        return JsonOut.object().put("option-" + option, "v" + value);
    }

    private static JsonOut all(JsonOut... conditions) {
        return JsonOut.object().put("all", JsonOut.list(List.of(conditions)));
    }

    private void position(int number) {
        int one = random.nextInt(values.length);
        int other = (one + 1 + random.nextInt(3)) % values.length;
        List<JsonOut> lines = new ArrayList<>();
        for (JsonOut when : cases(one, other)) {
            JsonOut.Members line = JsonOut.object()
                    .put("line", "line-" + number + "-" + lines.size())
                    .put("part", part(number, lines.size()))
                    .put("quantity", "1")
                    .put("when", when);
            if (number % EACH_BRACKET == EACH_BRACKET - 1) {
                line.put("carries", JsonOut.texts(List.of("position-" + (number + 1))));
            }
            lines.add(line);
        }
        positions.add(JsonOut.object()
                .put("position", "position-" + number)
                .put("says", "Place " + number)
                .put("subSystem", "drive")
                .put("stage", "front")
                .put("fill", "one")
                .put("required", JsonOut.object())
                .put("lines", JsonOut.list(lines)));
    }

    /** Cases of which exactly one is true, about five. */
    private List<JsonOut> cases(int one, int other) {
        List<JsonOut> all = new ArrayList<>();
        for (int value = 0; value < values[one]; value++) {
            if (value == 0 && values[one] < LINES_AT_A_POSITION) {
                all.add(all(is(one, 0), is(other, 0)));
                all.add(all(is(one, 0), JsonOut.object().put("not", is(other, 0))));
            } else {
                all.add(is(one, value));
            }
        }
        return all;
    }

    private String part(int position, int line) {
        String number = "P-" + position + "-" + line;
        parts.add(JsonOut.object()
                .put("part", number)
                .put("revision", "A")
                .put("name", "Part " + position + " " + line)
                .put("unit", "each")
                .put("source", "buy")
                .put("supplier", "Tarnholt Drives")
                .put("orderCode", "TD-" + position + "-" + line)
                .put("leadDays", 10 + random.nextInt(20))
                .put("cost", random.nextInt(90) + 1 + ".50")
                .put("massKg", "0." + (random.nextInt(9) + 1))
                .put("bin", "M-%02d-%02d-A-%02d".formatted(position % 90 + 1, line + 1, position / 90 % 90 + 1)));
        return number;
    }

    /** An order file with these choices. */
    static void order(Path file, Map<String, String> choices) throws IOException {
        JsonOut.Members chosen = JsonOut.object();
        choices.forEach(chosen::put);
        Files.writeString(
                file,
                JsonOut.object()
                        .put("order", "MADE-1")
                        .put("family", FAMILY)
                        .put("customer", "Alder Row Nursery")
                        .put("language", "en")
                        .put("placed", "2026-03-02")
                        .put("choices", chosen)
                        .written());
    }
}
