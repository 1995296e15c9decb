package boltlore.exports;

import boltlore.faults.Outcome;
import boltlore.json.Faults;
import boltlore.json.JsonFile;
import boltlore.json.JsonOut;
import boltlore.json.ObjectReader;
import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * The moves that turn the old sheets of a folder into the new: all old ones that make room go first, then all new ones
 * come, so that nobody finds some of both; the manifest comes last, and with it they count. Until then they can be undone.
 *
 * @param out sheets that make room, as they were written
 * @param in sheets that come
 * @param manifest the new one
 */
record Moves(List<Named> out, List<Named> in, Print manifest) {

    private static final String MANIFEST = "written.json";

    Moves {
        out = List.copyOf(out);
        in = List.copyOf(in);
    }

    void carryOut(Inside folder) throws IOException {
        for (Named sheet : out) {
            folder.old().makeRoomFor(sheet.name());
            Inside.moveOver(folder.file(sheet.name()), folder.old().file(sheet.name()));
        }
        for (Named sheet : in) {
            folder.makeRoomFor(sheet.name());
            Inside.moveToFree(folder.fresh().file(sheet.name()), folder.file(sheet.name()));
        }
        Inside.moveOver(newManifest(folder), folder.manifest());
    }

    /** Where the new manifest waits, beside the new sheets. */
    static Path newManifest(Inside folder) {
        return folder.hidden().resolve("new-" + MANIFEST);
    }

    /** Ends what a run had begun that is no more: where the moves were done they stay, else they are undone. */
    void settle(Inside folder) throws IOException {
        if (!manifest.isOf(folder.manifest())) {
            undo(folder);
        }
        clear(folder);
    }

    /** Any number of times: each step that is already undone, or was never done, is passed over. */
    void undo(Inside folder) throws IOException {
        for (Named sheet : in) {
            Path file = folder.file(sheet.name());
            if (sheet.print().isOf(file)) {
                Files.delete(file);
                folder.tidyAfter(sheet.name());
            }
        }
        for (Named sheet : out) {
            if (Inside.there(folder.old().file(sheet.name()))) {
                bringBack(folder, sheet.name());
            }
        }
    }

    /** Where its place is taken meanwhile it comes back under another name. */
    private static void bringBack(Inside folder, String name) throws IOException {
        folder.makeRoomFor(name);
        Path old = folder.old().file(name);
        for (int time = 0; ; time++) {
            Path place = folder.file(Named.beside(name, "old", time));
            try {
                Inside.moveToFree(old, place);
                return;
            } catch (FileAlreadyExistsException taken) {
                // A run that was killed here may have left it under both names; else the next name may be free.
                if (Inside.isOneFile(old, place)) {
                    Files.delete(old);
                    return;
                }
            }
        }
    }

    /** Deletes the old sheets; one that somebody changed in the last moment comes back beside the new one. */
    void clear(Inside folder) throws IOException {
        for (Named sheet : out) {
            Path old = folder.old().file(sheet.name());
            if (Inside.there(old) && !sheet.print().isOf(old)) {
                bringBack(folder, sheet.name());
            }
            folder.tidyAfter(sheet.name());
        }
        clearAside(folder);
    }

    static void clearAside(Inside folder) throws IOException {
        Inside.delete(folder.old().folder());
        Inside.delete(folder.fresh().folder());
        Files.deleteIfExists(newManifest(folder));
    }

    JsonOut.Members json() {
        return JsonOut.object()
                .put("out", JsonOut.list(out, sheet -> Manifest.written(sheet.name(), sheet.print())))
                .put("in", JsonOut.list(in, sheet -> Manifest.written(sheet.name(), sheet.print())))
                .put("manifest", Manifest.written(MANIFEST, manifest));
    }

    /** Empty where no run had begun to move anything: a journal that is not whole was never acted on. */
    static Optional<Moves> read(byte[] journal) {
        Outcome<Moves> read = JsonFile.parse("", journal).then(json -> {
            Faults faults = new Faults();
            ObjectReader reader = ObjectReader.of(json, faults);
            Moves moves = new Moves(
                    reader.findObjects("out", Manifest::named),
                    reader.findObjects("in", Manifest::named),
                    reader.object("manifest", Manifest::named).print());
            return faults.orElse(moves);
        });
        return read instanceof Outcome.Sound<Moves> sound ? Optional.of(sound.value()) : Optional.empty();
    }
}
