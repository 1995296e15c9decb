package boltlore.json;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** What editors say of keys: {@code key: sentence}, or {@code around/key: sentence} where a key means two things. */
public final class Descriptions {

    private final Map<String, String> sentences = new LinkedHashMap<>();
    private final Set<String> unused;
    private final Set<String> missing = new LinkedHashSet<>();

    private Descriptions(Path file) throws IOException {
        for (String line : Files.readAllLines(file)) {
            int colon = line.indexOf(": ");
            if (colon > 0 && !line.startsWith("#")) {
                sentences.put(line.substring(0, colon), line.substring(colon + 2));
            }
        }
        this.unused = new LinkedHashSet<>(sentences.keySet());
    }

    public static Descriptions read(Path file) {
        try {
            return new Descriptions(file);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    /** The sentence under the longest end of the path; none is remembered. */
    Optional<String> of(String path) {
        for (String end = path; ; end = end.substring(end.indexOf('/') + 1)) {
            String sentence = sentences.get(end);
            if (sentence != null) {
                unused.remove(end);
                return Optional.of(sentence);
            }
            if (end.indexOf('/') < 0) {
                missing.add(path);
                return Optional.empty();
            }
        }
    }

    /** A sentence under exactly that name. */
    public String exactly(String name) {
        unused.remove(name);
        return sentences.getOrDefault(name, "");
    }

    public Set<String> unused() {
        return unused;
    }

    public Set<String> missing() {
        return missing;
    }
}
