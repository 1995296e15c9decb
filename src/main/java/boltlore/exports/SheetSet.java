package boltlore.exports;

import boltlore.report.SheetFile;
import java.util.List;

/**
 * Files that one kind of run makes together: what an earlier run of that kind made and this one does not is removed.
 *
 * @param name of the kind of run, such as {@code kit}
 * @param whole whether these are all; else earlier files stay, because they could not be made this time
 */
public record SheetSet(String name, List<SheetFile> files, boolean whole) {

    public SheetSet {
        files = List.copyOf(files);
    }
}
