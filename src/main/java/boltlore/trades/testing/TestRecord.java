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

    /** What a file held, CSV, or JSON where it begins as such. */
    public static Outcome<List<TestRecord>> read(String name, byte[] content) {
        boolean json = content.length > 0 && (content[0] == '{' || content[0] == '[');
        return json ? RecordJson.read(name, content) : RecordCsv.read(name, content);
    }

    /** Reads a file, CSV or JSON; one that holds several orders gives several records. */
    public static Outcome<List<TestRecord>> read(Path file) {
        return RecordFile.read(file);
    }
}
