package boltlore.sheets.picking;

import boltlore.catalogue.Part;
import boltlore.catalogue.Tracked;
import boltlore.picking.PickRow;
import boltlore.sheets.Column;
import java.math.BigDecimal;
import java.util.List;

/** The boxes that stores fill in by hand, row by row. */
final class Boxes {

    private Boxes() {}

    static List<Column> columns() {
        return List.of(
                Column.tick("picked", "Picked"),
                Column.blank("secondCount", "2nd count"),
                Column.blank("short", "Short"));
    }

    /** Whether a row's numbers need more room than the box in the row: several pieces, each with its own number. */
    static boolean needsSerialsPage(PickRow row) {
        return row.part().tracked() == Tracked.SERIAL && row.quantity().compareTo(BigDecimal.ONE) > 0;
    }

    /** What to write into the row's number box: nothing, its serial number, its lot. */
    static String tracked(Part part) {
        return part.tracked() == null ? "" : part.tracked() == Tracked.SERIAL ? "serial" : "lot";
    }
}
