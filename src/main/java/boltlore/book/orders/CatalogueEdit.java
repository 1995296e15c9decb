package boltlore.book.orders;

import boltlore.faults.Outcome;
import boltlore.json.Json;
import boltlore.json.JsonFile;
import boltlore.json.JsonOut;
import java.util.HashMap;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * What differs between two states of a catalogue, by the entries of its files: parts, and the values of options. It reads
 * the files' JSON alone, so that it also compares with a catalogue that this program would not read any more.
 *
 * @param parts what became of a part, or of a line that brings it, by number
 * @param choices what became of a value
 */
record CatalogueEdit(SortedMap<String, String> parts, Map<CatalogueEdit.Chosen, String> choices) {

    static final CatalogueEdit NONE = new CatalogueEdit(new TreeMap<>(), Map.of());

    /** A value of an option of a family. */
    record Chosen(String family, String option, String value) {}

    /** An entry of a file: its text, and its members for whoever says what has changed. */
    private record Entry(String text, Json.Obj object) {}

    /** @param before files as they were, and after, each by its path; those that are the same in both may be left out */
    static CatalogueEdit of(SortedMap<String, byte[]> before, SortedMap<String, byte[]> after) {
        SortedMap<String, String> parts = new TreeMap<>();
        differ(entries(before, "part"), entries(after, "part"), parts);
        lines(entries(before, "line"), entries(after, "line"), parts);
        Map<Chosen, String> choices = new HashMap<>();
        values(before, after, choices);
        return new CatalogueEdit(parts, choices);
    }

    private static void differ(
            SortedMap<String, Entry> before, SortedMap<String, Entry> after, SortedMap<String, String> told) {
        before.forEach((name, was) -> {
            Entry is = after.get(name);
            if (is == null) {
                told.put(name, "gone from the catalogue");
            } else if (!is.text().equals(was.text())) {
                told.put(name, changed(was.object(), is.object()));
            }
        });
    }

    private static String changed(Json.Obj was, Json.Obj is) {
        String before = text(was, "revision");
        String after = text(is, "revision");
        if (!text(is, "replacedBy").isEmpty() && text(was, "replacedBy").isEmpty()) {
            return "superseded by " + text(is, "replacedBy");
        }
        TreeSet<String> keys = new TreeSet<>(was.members().keySet());
        keys.addAll(is.members().keySet());
        String which = keys.stream()
                .filter(key -> !written(was.members().get(key))
                        .equals(written(is.members().get(key))))
                .collect(Collectors.joining(", "));
        return before.equals(after)
                ? "changed in the same revision: " + which
                : "revision " + before + ", then " + after;
    }

    /** A line that was changed, or came or went, touches the parts that it names. */
    private static void lines(
            SortedMap<String, Entry> before, SortedMap<String, Entry> after, SortedMap<String, String> told) {
        TreeSet<String> all = new TreeSet<>(before.keySet());
        all.addAll(after.keySet());
        for (String name : all) {
            Entry was = before.get(name);
            Entry is = after.get(name);
            boolean same = was != null && is != null && was.text().equals(is.text());
            if (!same) {
                String says = "line '" + name.replaceFirst(".*/", "") + "' "
                        + (was == null ? "was added" : is == null ? "is gone" : "was changed");
                if (was != null) {
                    told.putIfAbsent(text(was.object(), "part"), says);
                }
                if (is != null) {
                    told.putIfAbsent(text(is.object(), "part"), says);
                }
            }
        }
    }

    private static void values(
            SortedMap<String, byte[]> before, SortedMap<String, byte[]> after, Map<Chosen, String> told) {
        before.forEach((path, file) -> {
            if (path.endsWith("/family.json")) {
                String family = path.split("/", -1)[1];
                SortedMap<String, Entry> was = valuesOf(file);
                SortedMap<String, Entry> is = after.containsKey(path) ? valuesOf(after.get(path)) : new TreeMap<>();
                SortedMap<String, String> differ = new TreeMap<>();
                differ(was, is, differ);
                differ.forEach((key, says) -> {
                    String[] named = key.split("=", 2);
                    told.put(
                            new Chosen(family, named[0], named[1]),
                            says.startsWith("gone") ? "can no longer be chosen" : "its words or dates were changed");
                });
            }
        });
    }

    private static SortedMap<String, Entry> valuesOf(byte[] file) {
        SortedMap<String, Entry> values = new TreeMap<>();
        for (Map.Entry<String, Entry> option : entries("", file, "option").entrySet()) {
            SortedMap<String, Entry> inside = new TreeMap<>();
            collect(option.getValue().object(), "", "value", inside);
            inside.forEach(
                    (value, entry) -> values.put(option.getKey().substring(1) + "=" + value.substring(1), entry));
        }
        return values;
    }

    /** All objects that have a name under that key and are no mere mention; those of a family with its name in front. */
    private static SortedMap<String, Entry> entries(SortedMap<String, byte[]> files, String key) {
        SortedMap<String, Entry> entries = new TreeMap<>();
        files.forEach((path, file) -> {
            boolean ofParts = path.startsWith("parts/");
            boolean ofKit = path.startsWith("families/") && path.contains("/kit/");
            if (key.equals("part") ? ofParts : ofKit) {
                entries.putAll(entries(ofParts ? "" : path.split("/", -1)[1], file, key));
            }
        });
        if (key.equals("part")) {
            SortedMap<String, Entry> byNumber = new TreeMap<>();
            entries.forEach((name, entry) -> byNumber.put(name.substring(1), entry));
            return byNumber;
        }
        return entries;
    }

    private static SortedMap<String, Entry> entries(String family, byte[] file, String key) {
        SortedMap<String, Entry> entries = new TreeMap<>();
        if (JsonFile.parse("", file) instanceof Outcome.Sound<Json> sound) {
            collect(sound.value(), family, key, entries);
        }
        return entries;
    }

    /** Only the outermost of its kind: a part's own entry, not the parts that it contains. */
    private static void collect(Json json, String family, String key, SortedMap<String, Entry> entries) {
        if (json instanceof Json.Obj object) {
            String name = text(object, key);
            if (name.isEmpty()) {
                object.members().values().forEach(member -> collect(member, family, key, entries));
            } else {
                entries.put(family + "/" + name, new Entry(written(object), object));
            }
        } else if (json instanceof Json.Arr list) {
            list.items().forEach(item -> collect(item, family, key, entries));
        }
    }

    private static String text(Json.Obj object, String key) {
        Json member = object.members().get(key);
        if (member instanceof Json.Obj inside) {
            return text(inside, "part");
        }
        return member instanceof Json.Text text ? text.text() : "";
    }

    private static String written(@Nullable Json json) {
        return json == null ? "" : JsonOut.of(json).writtenInLine();
    }
}
