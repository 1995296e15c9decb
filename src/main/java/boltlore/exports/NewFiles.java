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

/** Writes files where none are: all of them or none, and never over one that is there. */
public final class NewFiles {

    private static final int MOST_TOLD = 5;

    private NewFiles() {}

    /**
     * Writes them.
     *
     * @param texts by their path within the folder, with '/' between the steps
     * @return the files, or what stands in the way
     */
    public static Outcome<List<Path>> write(Path folder, SortedMap<String, String> texts) {
        List<Fault> taken = texts.keySet().stream()
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
                    taken.size() + " files that are there already, such as " + taken.get(0).file(),
                    "nothing of those names",
                    "Name another folder; nothing was changed."));
        }
        return taken.isEmpty() ? writeAll(folder, texts) : Outcome.faulty(taken);
    }

    private static Outcome<List<Path>> writeAll(Path folder, SortedMap<String, String> texts) {
        NewFolders made = new NewFolders();
        List<Path> written = new ArrayList<>();
        boolean whole = false;
        try {
            for (Map.Entry<String, String> text : texts.entrySet()) {
                Path file = folder.resolve(text.getKey()).toAbsolutePath();
                Path in = Objects.requireNonNull(file.getParent());
                made.make(in);
                Path aside = in.resolve(Exports.randomName());
                try {
                    Exports.write(aside, text.getValue().getBytes(StandardCharsets.UTF_8));
                    Inside.moveToFree(aside, file);
                    written.add(file);
                } finally {
                    Files.deleteIfExists(aside);
                }
            }
            whole = true;
            return Outcome.sound(List.copyOf(written));
        } catch (IOException | SecurityException failure) {
            return Outcome.faulty(Unwritten.told(folder, failure instanceof IOException io ? io : new IOException(failure)));
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
