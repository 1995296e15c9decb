package boltlore.catalogue.json;

import boltlore.catalogue.Fill;
import boltlore.json.Allowed;
import boltlore.json.Json;
import boltlore.json.ObjectReader;
import boltlore.json.Range;
import boltlore.json.SourceLocation;
import boltlore.json.TextShape;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.BiConsumer;
import org.jspecify.annotations.Nullable;

/**
 * workshop/defaults.json, and what follows without it: puts into the trees of parts and kits what their writer left out,
 * so that every reader behind sees full values. What is written always stands.
 */
final class Defaults {

    /** Keys that may be left out of a part where the workshop has a default. */
    static final List<String> OF_PARTS = List.of("revision", "unit", "source", "supplier", "leadDays", "scrapPercent");

    private static final List<String> OF_ANY = List.of("revision", "unit", "source");

    /** Nothing of what the base vehicle brings. */
    private static final List<String> OF_SUPPLIED = List.of("scrapPercent");

    static final List<String> OF_POSITIONS = List.of("fill", "stage", "subSystem", "bag");
    static final List<String> OF_LINES = List.of("quantity");

    /** Whom and how long it takes to buy: nothing of parts that are made, or have offers of their own. */
    private static final List<String> OF_BOUGHT = List.of("supplier", "leadDays");

    /** Keys of a line that may stand in its position, where that has this line alone. */
    static final List<String> OF_ONLY_LINE = List.of("part", "quantity", "when", "carries", "needs", "expects", "note");

    private static final int LONGEST_NAME = 60;

    private final Map<String, Map<String, Json>> kinds = new HashMap<>();
    private final Map<String, Json> names = new HashMap<>();

    /** @param trees all files of the catalogue by path */
    Defaults(Map<String, Json> trees) {
        members(trees.get(CatalogueFolder.DEFAULTS)).forEach((kind, values) -> kinds.put(kind, members(values)));
        trees.forEach((path, tree) -> {
            if (path.startsWith("parts/")) {
                items(tree, "parts")
                        .forEach(part -> text(part, "part")
                                .ifPresent(number -> Optional.ofNullable(
                                                members(part).get("name"))
                                        .ifPresent(name -> names.putIfAbsent(number, name))));
            }
        });
    }

    /** Asks for all that the file may hold. */
    static Map<String, String> read(ObjectReader reader, Reading reading) {
        reader.findObject("parts", part -> {
            part.findText("revision", TextShape.LINE);
            part.findOneOf("unit", PartsFile.UNITS);
            part.findOneOf("source", PartsFile.SOURCES);
            reading.findMentioned(part, "supplier", Kind.SUPPLIER);
            part.findWhole("leadDays", 0, 3650);
            part.findDecimal("scrapPercent", Range.between(0, 99));
            return part;
        });
        reader.findObject("positions", position -> {
            position.findOneOf("fill", Allowed.of(Fill.values()));
            reading.findMentioned(position, "stage", Kind.STAGE);
            reading.findMentioned(position, "subSystem", Kind.SUB_SYSTEM);
            reading.findMentioned(position, "bag", Kind.BAG);
            return position;
        });
        reader.findObject("lines", line -> {
            line.findDecimal("quantity", Range.QUANTITY);
            return line;
        });
        return Map.of();
    }

    /** The tree of that file with what was left out. */
    Json complete(String path, Json tree) {
        if (path.startsWith("parts/")) {
            return each(tree, "parts", this::part);
        }
        if (path.startsWith("families/") && path.contains("/kit/")) {
            return each(tree, "positions", this::position);
        }
        return path.endsWith("/family.json") ? each(tree, "options", Defaults::option) : tree;
    }

    private void part(Map<String, Json> part, SourceLocation at) {
        given("parts", OF_ANY).forEach(part::putIfAbsent);
        String source = text(part.get("source")).orElse("");
        if (!source.equals("donor")) {
            given("parts", OF_SUPPLIED).forEach(part::putIfAbsent);
        }
        if (source.equals("buy") && !part.containsKey("offers")) {
            given("parts", OF_BOUGHT).forEach(part::putIfAbsent);
        }
    }

    private Map<String, Json> given(String kind, List<String> keys) {
        Map<String, Json> given = new LinkedHashMap<>(kinds.getOrDefault(kind, Map.of()));
        given.keySet().retainAll(keys);
        return given;
    }

    private void position(Map<String, Json> position, SourceLocation at) {
        onlyLine(position, at);
        given("positions", OF_POSITIONS).forEach((key, value) -> {
            if (!(key.equals("bag") && position.containsKey("crate"))) {
                position.putIfAbsent(key, value);
            }
        });
        String name = text(position.get("position")).orElse("");
        if (!position.containsKey("says")) {
            says(position, name).ifPresent(says -> position.put("says", says));
        }
        Json lines = position.get("lines");
        if (lines instanceof Json.Arr all) {
            boolean only = all.items().size() == 1;
            List<Json> completed = all.items().stream()
                    .map(item -> changed(item, (line, where) -> line(line, where, name, only)))
                    .toList();
            position.put("lines", new Json.Arr(all.location(), completed));
        }
    }

    /** A position that is written as its only line: it is fitted, and required, when that line is. */
    private static void onlyLine(Map<String, Json> position, SourceLocation at) {
        if (position.containsKey("lines") || !position.containsKey("part")) {
            return;
        }
        Map<String, Json> line = new LinkedHashMap<>();
        for (String key : OF_ONLY_LINE) {
            Json value = position.remove(key);
            if (value != null) {
                line.put(key, value);
            }
        }
        text(line.get("part"))
                .map(Defaults::slug)
                .filter(slug -> !slug.isEmpty())
                .ifPresent(slug -> position.putIfAbsent("position", new Json.Text(at, slug)));
        position.putIfAbsent("required", line.getOrDefault("when", new Json.Obj(at, Map.of())));
        position.put("lines", new Json.Arr(at, List.of(new Json.Obj(at, line))));
    }

    /** What the part is called where it is the only one, else the words of the position's name. */
    private Optional<Json> says(Map<String, Json> position, String name) {
        List<Json> lines = position.get("lines") instanceof Json.Arr all ? all.items() : List.of();
        List<Json> called = lines.stream()
                .flatMap(line -> text(line, "part").stream())
                .distinct()
                .flatMap(part -> Optional.ofNullable(names.get(part)).stream())
                .toList();
        Optional<Json> own = called.size() == 1 ? Optional.of(called.get(0)) : Optional.empty();
        return own.or(() -> name.isEmpty() || lines.isEmpty()
                ? Optional.empty()
                : Optional.of(new Json.Text(lines.get(0).location(), words(name))));
    }

    private void line(Map<String, Json> line, SourceLocation at, String position, boolean only) {
        given("lines", OF_LINES).forEach(line::putIfAbsent);
        String part = text(line.get("part")).map(Defaults::slug).orElse("");
        String name = only ? position : position + "-" + part;
        if (!position.isEmpty() && (only || !part.isEmpty()) && name.length() <= LONGEST_NAME) {
            line.putIfAbsent("line", new Json.Text(at, name));
        }
    }

    private static void option(Map<String, Json> option, SourceLocation at) {
        text(option.get("option"))
                .filter(name -> !name.isEmpty())
                .ifPresent(name ->
                        option.putIfAbsent("asks", new Json.Text(at, "Which " + name.replace('-', ' ') + "?")));
        if (option.get("values") instanceof Json.Arr values) {
            List<Json> completed = values.items().stream()
                    .map(item -> changed(
                            item,
                            (value, where) -> text(value.get("value"))
                                    .filter(name -> !name.isEmpty())
                                    .ifPresent(name -> value.putIfAbsent("says", new Json.Text(where, words(name))))))
                    .toList();
            option.put("values", new Json.Arr(values.location(), completed));
        }
    }

    private static String words(String name) {
        return name.substring(0, 1).toUpperCase(Locale.ROOT) + name.substring(1).replace('-', ' ');
    }

    /** The name of a position that is written as its only part. */
    static String slug(String part) {
        return part.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-").replaceAll("-$", "");
    }

    private static Json each(Json tree, String key, BiConsumer<Map<String, Json>, SourceLocation> change) {
        return changed(tree, (members, at) -> {
            if (members.get(key) instanceof Json.Arr list) {
                List<Json> completed = new ArrayList<>();
                list.items().forEach(item -> completed.add(changed(item, change)));
                members.put(key, new Json.Arr(list.location(), completed));
            }
        });
    }

    private static Json changed(Json json, BiConsumer<Map<String, Json>, SourceLocation> change) {
        if (!(json instanceof Json.Obj object)) {
            return json;
        }
        Map<String, Json> members = new LinkedHashMap<>(object.members());
        change.accept(members, object.location());
        return new Json.Obj(object.location(), members);
    }

    private static Map<String, Json> members(@Nullable Json json) {
        return json instanceof Json.Obj object ? object.members() : new TreeMap<>();
    }

    private static List<Json> items(Json tree, String key) {
        return members(tree).get(key) instanceof Json.Arr list ? list.items() : List.of();
    }

    private static Optional<String> text(@Nullable Json json) {
        return json instanceof Json.Text text ? Optional.of(text.text()) : Optional.empty();
    }

    private static Optional<String> text(Json object, String key) {
        return text(members(object).get(key));
    }
}
