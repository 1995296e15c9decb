package boltlore.exports;

import boltlore.faults.Fault;
import boltlore.faults.Outcome;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.SortedMap;
import java.util.TreeMap;

/** Writes files where none are: all of them or none, and never over one that is there. */
public final class NewFiles {

    private static final int MOST_TOLD = 5;

    private NewFiles() {}

    /** Writes texts, as UTF-8. */
    public static Outcome<List<Path>> writeTexts(Path folder, SortedMap<String, String> texts) {
        SortedMap<String, byte[]> contents = new TreeMap<>();
        texts.forEach((path, text) -> contents.put(path, text.getBytes(StandardCharsets.UTF_8)));
        return write(folder, contents);
    }

    /**
     * Writes them.
     *
     * @param contents by their path within the folder, with '/' between the steps
     * @return the files, or what stands in the way
     */
    public static Outcome<List<Path>> write(Path folder, SortedMap<String, byte[]> contents) {
        List<Fault> taken = contents.keySet().stream()
                .map(folder::resolve)
                .filter(Inside::there)
                .map(file -> Fault.of(
                        file.toString(),
                        "a file that is there already",
                        "nothing of that name",
                        "Move it elsewhere, or choose another name; nothing was changed."))
                .toList();
        if (taken.size() > MOST_TOLD) {
            return Outcome.faulty(Fault.of(
                    folder.toString(),
                    taken.size() + " files that are there already, such as "
                            + taken.get(0).file(),
                    "nothing of those names",
                    "Name another folder; nothing was changed."));
        }
        return taken.isEmpty() ? writeAll(folder, contents) : Outcome.faulty(taken);
    }

    private static Outcome<List<Path>> writeAll(Path folder, SortedMap<String, byte[]> contents) {
        NewFolders made = new NewFolders();
        List<Path> written = new ArrayList<>();
        boolean whole = false;
        try {
            for (Map.Entry<String, byte[]> content : contents.entrySet()) {
                Path file = folder.resolve(content.getKey()).toAbsolutePath();
                Path in = Objects.requireNonNull(file.getParent());
                made.make(in);
                Path aside = in.resolve(Exports.randomName());
                try {
                    Exports.write(aside, content.getValue());
                    Inside.moveToFree(aside, file);
                    written.add(file);
                } finally {
                    Files.deleteIfExists(aside);
                }
            }
            whole = true;
            return Outcome.sound(List.copyOf(written));
        } catch (IOException | SecurityException failure) {
            return Outcome.faulty(
                    Unwritten.told(folder, failure instanceof IOException io ? io : new IOException(failure)));
        } finally {
            if (!whole) {
                written.forEach(NewFiles::takeBack);
            }
            made.keepIf(whole);
        }
    }

    private static void takeBack(Path file) {
        try {
            Files.deleteIfExists(file);
        } catch (IOException stays) {
            // The fault that is told names the folder; nothing more can be done here.
        }
    }
}
