package boltlore.exports;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NotDirectoryException;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Deque;

/** Folders that a run has made on the way to its own; they go again where it writes nothing. */
final class NewFolders {

    private final Deque<Path> deepestFirst = new ArrayDeque<>();

    void make(Path folder) throws IOException {
        Deque<Path> missing = new ArrayDeque<>();
        Path there = folder;
        for (; there != null && !Files.exists(there); there = there.getParent()) {
            missing.push(there);
        }
        if (there != null && !Files.isDirectory(there)) {
            throw new NotDirectoryException(there.toString());
        }
        for (Path each : missing) {
            Inside.make(each);
            deepestFirst.push(each);
        }
    }

    void keepIf(boolean written) {
        if (written) {
            deepestFirst.clear();
        }
        while (!deepestFirst.isEmpty()) {
            try {
                Inside.deletedIfEmpty(deepestFirst.pop());
            } catch (IOException stays) {
                return;
            }
        }
    }
}
