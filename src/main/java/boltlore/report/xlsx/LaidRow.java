package boltlore.report.xlsx;

import java.util.List;

/** @param height in points */
record LaidRow(double height, List<LaidCell> cells) {

    /** A strip of white. */
    static LaidRow gap(double height) {
        return new LaidRow(height, List.of());
    }
}
