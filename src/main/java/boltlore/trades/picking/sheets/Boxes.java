package boltlore.trades.picking.sheets;

import boltlore.catalogue.Tracked;
import boltlore.report.Column;
import boltlore.trades.picking.PickRow;
import java.math.BigDecimal;
import java.util.List;

/** The boxes that stores fill in by hand, row by row. */
final class Boxes {

    private static final String NOTHING_TO_WRITE = "–";

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

    /** What stands in the number box before anybody writes into it. */
    static String number(PickRow row) {
        Tracked tracked = row.part().tracked();
        if (tracked == null) {
            return NOTHING_TO_WRITE;
        }
        return tracked == Tracked.LOT ? "lot" : needsSerialsPage(row) ? "see Serials" : "no.";
    }
}
