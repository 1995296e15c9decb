package boltlore.exports;

import boltlore.faults.Fault;
import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.nio.file.NotDirectoryException;
import java.nio.file.Path;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Says why sheets could not be written. */
final class Unwritten {

    private Unwritten() {}

    static Fault wouldLose(Path folder, List<String> foreign) {
        String more = foreign.size() == 1 ? "" : " and " + (foreign.size() - 1) + " more";
        return Fault.of(
                folder.toString(),
                "'" + foreign.get(0) + "'" + more + ", which is no sheet for this folder",
                "a folder with nothing but sheets, because it is replaced as a whole",
                "Move it elsewhere, or name another folder with --out; nothing was changed");
    }

    static Fault told(Path folder, IOException failure) {
        String expected = "a folder that can be written to";
        if (failure instanceof AccessDeniedException) {
            return Fault.of(
                    folder.toString(),
                    "no permission to write here",
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
                    folder.toString(), "a file where a folder should be", expected, "Name another folder with --out");
        }
        return Fault.of(
                folder.toString(),
                "'" + reason(failure) + "' while writing",
                expected,
                "What was there before is still there");
    }

    private static String reason(IOException failure) {
        String reason = failure instanceof FileSystemException system ? system.getReason() : failure.getMessage();
        return orName(reason, failure);
    }

    private static String orName(@Nullable String reason, IOException failure) {
        return reason == null ? failure.getClass().getSimpleName() : reason;
    }
}
