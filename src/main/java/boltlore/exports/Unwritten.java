package boltlore.exports;

import boltlore.faults.Fault;
import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.nio.file.NotDirectoryException;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;

/** Says why sheets could not be written. */
final class Unwritten {

    private Unwritten() {}

    /** @param written whether this program wrote it, and it was changed since */
    static Fault wouldLose(Path file, boolean written) {
        return Fault.of(
                file.toString(),
                written
                        ? "a file that was changed after it was written"
                        : "something that this program has not written",
                "nothing of that name, or a file as this program wrote it",
                "Move it elsewhere, or name another place; nothing was changed");
    }

    /** @param set the kind of run that wrote it */
    static Fault others(Path file, String set) {
        return Fault.of(
                file.toString(),
                "a file that '" + set + "' has written",
                "nothing of that name, or a file that this kind of run wrote",
                "Move it elsewhere, or name another place; nothing was changed");
    }

    static Fault noPlace(Path folder) {
        return Fault.of(
                folder.toString(), "a file or the root of the disk", "a folder for sheets", "Name another folder");
    }

    static Fault told(Path folder, IOException failure) {
        String expected = "a folder that can be written to";
        if (failure instanceof AccessDeniedException) {
            return Fault.of(
                    folder.toString(),
                    "no permission" + named(" for ", folder, failure, " to write here"),
                    expected,
                    "Name another folder with --out, or ask for the permission; nothing was changed");
        }
        if (failure instanceof NoSuchFileException) {
            return Fault.of(
                    folder.toString(),
                    "a place where no folder can be made",
                    expected,
                    "Name another folder with --out; nothing was changed");
        }
        if (failure instanceof NotDirectoryException || failure instanceof FileAlreadyExistsException) {
            return Fault.of(
                    folder.toString(),
                    "a file where a folder should be" + named(": ", folder, failure, ""),
                    expected,
                    "Name another folder with --out");
        }
        return Fault.of(
                folder.toString(),
                "'" + reason(failure) + "' while writing",
                expected,
                "What was there before is still there");
    }

    /** The very file or folder that was in the way, where it is known and another. */
    private static String named(String before, Path folder, IOException failure, String otherwise) {
        String file = failure instanceof FileSystemException system ? system.getFile() : null;
        return file == null || Path.of(file).equals(folder.toAbsolutePath()) ? otherwise : before + file;
    }

    private static String reason(IOException failure) {
        String reason = failure instanceof FileSystemException system ? system.getReason() : failure.getMessage();
        return orName(reason, failure);
    }

    private static String orName(@Nullable String reason, IOException failure) {
        return reason == null ? failure.getClass().getSimpleName() : reason;
    }
}
