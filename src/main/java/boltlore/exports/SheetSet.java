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

    /** The run that says what an order is: its bill stands before every trade's sheets. */
    public static final String LEADING = "kit";

    public SheetSet {
        of = List.copyOf(of);
        files = List.copyOf(files);
    }

    /** Whether other runs' sheets of the same orders go by what it says. */
    boolean leads() {
        return name.equals(LEADING);
    }

    public SheetSet(String name, List<SheetFile> files, boolean whole) {
        this(name, List.of(), files, whole);
    }
}
