package boltlore.exports;

import boltlore.report.SheetFile;
import java.util.List;

/**
 * Files that one kind of run makes together: what an earlier run of that kind made and this one does not is removed.
 *
 * @param name of the kind of run, such as {@code kit}; what another kind wrote is never replaced
 * @param of what the files are of, such as the orders by their numbers; empty where that is always the same
 * @param whole whether these are all; else earlier files stay, because they could not be made this time
 */
public record SheetSet(String name, List<String> of, List<SheetFile> files, boolean whole) {

    public SheetSet {
        of = List.copyOf(of);
        files = List.copyOf(files);
    }

    public SheetSet(String name, List<SheetFile> files, boolean whole) {
        this(name, List.of(), files, whole);
    }
}
