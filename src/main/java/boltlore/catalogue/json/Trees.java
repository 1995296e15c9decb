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
import java.util.HexFormat;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

/** The files of a catalogue as trees, with the hash of all that they hold. */
final class Trees {

    private static final int REVISION_DIGITS = 12;

    private final SortedMap<String, Json> trees = new TreeMap<>();
    private final Faults faults;
    private final MessageDigest digest = sha256();

    private Trees(Faults faults) {
        this.faults = faults;
    }

    /** Reads them all; what is wrong with one is added to the faults. */
    static Trees read(SortedMap<String, Path> files, Faults faults) {
        Trees trees = new Trees(faults);
        files.forEach(trees::read);
        return trees;
    }

    private void read(String path, Path file) {
        Outcome<Json> tree = JsonFile.bytes(file).then(bytes -> {
            // Length before content, so that no two catalogues run together into the same bytes.
            digest.update((path + '\n' + bytes.length + '\n').getBytes(StandardCharsets.UTF_8));
            digest.update(bytes);
            return JsonFile.parse(file.toString(), bytes);
        });
        if (tree instanceof Outcome.Sound<Json> sound && sound.value() instanceof Json.Obj) {
            trees.put(path, sound.value());
        } else if (tree instanceof Outcome.Sound<Json> other) {
            Json json = other.value();
            faults.add(json.spot().fault(json.shown(), "an object in { }", ""));
        } else {
            faults.addAll(tree.faults());
        }
    }

    Faults faults() {
        return faults;
    }

    /** First digits of the SHA-256 over paths and bytes of all files. */
    String revision() {
        return HexFormat.of().formatHex(digest.digest()).substring(0, REVISION_DIGITS);
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
