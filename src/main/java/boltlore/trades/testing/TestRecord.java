package boltlore.trades.testing;

import boltlore.faults.Outcome;
import java.nio.file.Path;
import java.util.List;

/**
 * What stands in one file of readings that belong to one order.
 *
 * @param file as the user named it
 * @param order name of the order
 * @param limits code of the limits that were printed with it
 */
public record TestRecord(String file, String order, String limits, List<Reading> readings) {

    public TestRecord {
        readings = List.copyOf(readings);
    }

    /** Reads a file, CSV or JSON; one that holds several orders gives several records. */
    public static Outcome<List<TestRecord>> read(Path file) {
        return RecordFile.read(file);
    }
}
