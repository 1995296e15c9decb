package boltlore.bring;

import boltlore.faults.Fault;
import boltlore.grid.Sheet;
import java.util.ArrayList;
import java.util.List;

/** What of a workbook that comes back is wrong, and what of it is not taken, each with its cell. */
record BackNotes(String file, List<Fault> faults, List<String> untaken) {

    static BackNotes of(String file) {
        return new BackNotes(file, new ArrayList<>(), new ArrayList<>());
    }

    void fault(String at, String found, String expected, String advice) {
        faults.add(new Fault(file, 0, at, found, expected, advice));
    }

    /** 'Lines!D7 'Lamp' is not taken: …'. */
    void untaken(String at, String text, String because) {
        untaken.add(at + (text.isEmpty() ? "" : " '" + text + "'") + " is not taken: " + because);
    }

    static String at(Sheet sheet, int row, int column) {
        return sheet.name() + '!' + Sheet.address(row, Math.max(0, column));
    }
}
