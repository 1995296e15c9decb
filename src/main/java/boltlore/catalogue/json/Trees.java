package boltlore.catalogue.json;

import boltlore.faults.Outcome;
import boltlore.json.Faults;
import boltlore.json.Json;
import boltlore.json.JsonFile;
import boltlore.json.ObjectReader;
import boltlore.json.SchemaName;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.ForkJoinTask;

/** The files of a catalogue as trees, with the hash of all that they hold. */
final class Trees {

    private static final int REVISION_DIGITS = 12;

    /** A file as it lies there, and what could be made of it. */
    private record Parsed(String path, Outcome<byte[]> bytes, Outcome<Json> tree) {

        static Parsed of(String path, Path file) {
            Outcome<byte[]> bytes = JsonFile.bytes(file);
            return new Parsed(path, bytes, bytes.then(read -> JsonFile.parse(file.toString(), read)));
        }
    }

    private final SortedMap<String, Json> trees = new TreeMap<>();
    private final Faults faults;

    /** Files that are no JSON, but there from their first bracket to their last. */
    private final List<String> slips = new ArrayList<>();

    /** Whether something is missing, and nobody knows what would stand in it. */
    private boolean lost;

    private final ForkJoinTask<String> revision;

    private Trees(Faults faults, List<Parsed> all) {
        this.faults = faults;
        this.lost = !faults.none();
        this.revision = ForkJoinPool.commonPool().submit(() -> revision(all));
        all.forEach(this::put);
        Defaults defaults = new Defaults(trees);
        trees.replaceAll(defaults::complete);
    }

    private void put(Parsed parsed) {
        if (parsed.tree() instanceof Outcome.Sound<Json> sound && sound.value() instanceof Json.Obj) {
            trees.put(parsed.path(), sound.value());
        } else if (parsed.tree() instanceof Outcome.Sound<Json> other) {
            Json json = other.value();
            faults.add(json.location().fault(json.shown(), "an object in { }", ""));
            lost = true;
        } else {
            String text = parsed.bytes() instanceof Outcome.Sound<byte[]> sound
                    ? new String(sound.value(), StandardCharsets.UTF_8).strip()
                    : "";
            slips.add(text);
            lost |= !(text.startsWith("{") && text.endsWith("}"));
            faults.addAll(parsed.tree().faults());
        }
    }

    /** Reads them all, several at once; what is wrong with one is added to the faults. */
    static Trees read(SortedMap<String, Path> files, Faults faults) {
        List<Parsed> all = files.entrySet().parallelStream()
                .map(file -> Parsed.of(file.getKey(), file.getValue()))
                .toList();
        return new Trees(faults, all);
    }

    private static String revision(List<Parsed> all) {
        MessageDigest digest = sha256();
        for (Parsed parsed : all) {
            if (parsed.bytes() instanceof Outcome.Sound<byte[]> sound) {
                // Length before content, so that no two catalogues run together into the same bytes.
                int length = sound.value().length;
                digest.update((parsed.path() + '\n' + length + '\n').getBytes(StandardCharsets.UTF_8));
                digest.update(sound.value());
            }
        }
        return HexFormat.of().formatHex(digest.digest()).substring(0, REVISION_DIGITS);
    }

    Faults faults() {
        return faults;
    }

    /** The texts of the files that could not be read, where each holds all that it held before a slip; else empty. */
    Optional<List<String>> slips() {
        return lost ? Optional.empty() : Optional.of(slips);
    }

    /** First digits of the SHA-256 over paths and bytes of all files. */
    String revision() {
        return revision.join();
    }

    /** A reader of that file; of nothing where it is missing or broken. The reading ends with {@link ObjectReader#done}. */
    ObjectReader open(String path, String schema, Faults into) {
        Json tree = trees.get(path);
        if (tree == null) {
            return ObjectReader.ofNothing(into);
        }
        ObjectReader reader = ObjectReader.of(tree, into);
        SchemaName.check(reader, schema);
        return reader;
    }

    /** The trees of the files whose path begins so. */
    List<Json> treesUnder(String prefix) {
        return under(prefix).stream().map(trees::get).toList();
    }

    /** Paths of the files whose path begins so. */
    List<String> under(String prefix) {
        return trees.keySet().stream().filter(path -> path.startsWith(prefix)).toList();
    }

    private static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException impossible) {
            throw new AssertionError("Every Java platform has SHA-256", impossible);
        }
    }
}
