package boltlore.exports;

import boltlore.faults.Fault;
import boltlore.faults.Outcome;
import boltlore.report.SheetFile;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Writes a folder of sheets so that at any moment it holds all of the old ones or all of the new. */
public final class Exports {

    private Exports() {}

    /**
     * Replaces the folder's content by these files, if all that it holds are sheets.
     *
     * @return the files' paths in the order given; faulty where something could not be written or would be lost, and then
     *     the folder is as it was before
     */
    public static Outcome<List<Path>> write(Path folder, List<SheetFile> files) {
        Path target = folder.toAbsolutePath().normalize();
        Path parent = target.getParent();
        if (parent == null || Files.isRegularFile(target)) {
            return Outcome.faulty(Fault.of(
                    folder.toString(), "a file or the root of the disk", "a folder for sheets", "Name another folder"));
        }
        try {
            List<String> foreign = Foreign.in(target);
            if (!foreign.isEmpty()) {
                return Outcome.faulty(Unwritten.wouldLose(folder, foreign));
            }
            Files.createDirectories(parent);
            Leftovers.sweep(target);
            Path aside = Aside.folderFor(target);
            try {
                fill(aside, files);
                Swap.intoPlace(aside, target);
            } finally {
                Leftovers.delete(aside);
            }
        } catch (IOException e) {
            return Outcome.faulty(Unwritten.told(folder, e));
        }
        List<Path> written = new ArrayList<>();
        files.forEach(file -> written.add(folder.resolve(file.name())));
        return Outcome.sound(written);
    }

    private static void fill(Path aside, List<SheetFile> files) throws IOException {
        Set<Path> made = new HashSet<>();
        for (SheetFile file : files) {
            Path path = aside.resolve(file.name());
            if (made.add(path.getParent())) {
                Files.createDirectories(path.getParent());
            }
            try (OutputStream out = Files.newOutputStream(path)) {
                file.writeTo(out);
            }
        }
    }
}
