package boltlore.exports;

import boltlore.faults.Fault;
import boltlore.faults.Outcome;
import boltlore.json.Faults;
import boltlore.json.JsonFile;
import boltlore.json.JsonOut;
import boltlore.json.ObjectReader;
import boltlore.json.TextShape;
import java.nio.charset.StandardCharsets;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * What the program wrote into a folder, as it wrote it: <code>{"format": 1, "sets": [{"set": "coat", "of": ["BL-1"],
 * "files": [{"file": "csv/batch.csv", "length": 4711, "sha256": "…"}]}]}</code>. A file that has another content now is somebody's work.
 *
 * @param files by name, with '/' between the steps
 */
record Manifest(SortedMap<String, Entry> files) {

    /**
     * @param set the kind of run that wrote it
     * @param of what it was of, such as the orders by their numbers
     */
    record Entry(String set, List<String> of, Print print) {
        Entry {
            of = List.copyOf(of);
        }

        private Kind kind() {
            return new Kind(set, of);
        }
    }

    /** The kinds of run are told one after another, and of each what its files are of. */
    private record Kind(String set, List<String> of) implements Comparable<Kind> {
        @Override
        public int compareTo(Kind other) {
            return Comparator.comparing(Kind::set)
                    .thenComparing(kind -> String.join("\n", kind.of()))
                    .compare(this, other);
        }

        private JsonOut json(List<JsonOut> files) {
            return JsonOut.object().put("set", set).putIfAny("of", of).put("files", JsonOut.list(files));
        }
    }

    static final int FORMAT = 1;

    private static final TextShape SHA_256 = new TextShape(
            text -> text.matches("[0-9a-f]{64}"), "a SHA-256 in hexadecimal digits", "^[0-9a-f]{64}$", 64);
    private static final TextShape SET =
            new TextShape(text -> !text.isEmpty(), "the name of a kind of run", "^.+$", 100);
    private static final TextShape FILE = new TextShape(Manifest::isWithin, "a file within the folder", "^.+$", 1000);

    static Manifest none() {
        return new Manifest(new TreeMap<>());
    }

    /** Nothing where there is none; faulty where it cannot be read, so that nobody's work is taken for the program's. */
    static Outcome<Manifest> of(Inside folder) {
        if (!Inside.there(folder.manifest())) {
            return Outcome.sound(none());
        }
        Outcome<Manifest> read = JsonFile.bytes(folder.manifest())
                .then(bytes -> JsonFile.parse(folder.manifest().toString(), bytes))
                .then(json -> {
                    Faults faults = new Faults();
                    ObjectReader reader = ObjectReader.of(json, faults);
                    reader.whole("format", FORMAT, FORMAT);
                    TreeMap<String, Entry> files = new TreeMap<>();
                    reader.findObjects("sets", set -> set(set, files));
                    reader.done();
                    return faults.orElse(new Manifest(files));
                });
        return read instanceof Outcome.Sound<Manifest>
                ? read
                : Outcome.faulty(Fault.of(
                        folder.manifest().toString(),
                        "a list of what was written here that cannot be read",
                        "the list as this program wrote it",
                        "Name another folder, or delete the list: then all that stands here counts as yours."));
    }

    private static String set(ObjectReader reader, Map<String, Entry> files) {
        String set = reader.text("set", SET);
        List<String> of = reader.findTexts("of", SET, (text, place) -> text);
        reader.findObjects("files", file -> files.put(file.text("file", FILE), new Entry(set, of, print(file))));
        return set;
    }

    static Print print(ObjectReader reader) {
        return new Print(reader.whole("length", 0, Integer.MAX_VALUE), reader.text("sha256", SHA_256));
    }

    /** A file named with its print, of those that a journal tells of. */
    static Named named(ObjectReader reader) {
        return new Named(reader.text("file", FILE), print(reader));
    }

    static JsonOut written(String name, Print print) {
        return JsonOut.object().put("file", name).put("length", print.length()).put("sha256", print.sha256());
    }

    byte[] content() {
        TreeMap<Kind, List<JsonOut>> sets = new TreeMap<>();
        files.forEach((name, entry) ->
                sets.computeIfAbsent(entry.kind(), kind -> new ArrayList<>()).add(written(name, entry.print())));
        return JsonOut.object()
                .put("format", FORMAT)
                .put("sets", JsonOut.list(sets.entrySet(), set -> set.getKey().json(set.getValue())))
                .written()
                .getBytes(StandardCharsets.UTF_8);
    }

    /** A list that came from elsewhere must not lead out of the folder. */
    private static boolean isWithin(String name) {
        try {
            Path path = Path.of(name);
            return !name.isEmpty()
                    && !path.isAbsolute()
                    && path.normalize().equals(path)
                    && !path.startsWith("..")
                    && !path.startsWith(Inside.HIDDEN);
        } catch (InvalidPathException e) {
            return false;
        }
    }
}
