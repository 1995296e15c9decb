package boltlore.trades.testing;

import boltlore.csv.CsvTable;
import boltlore.faults.Fault;
import boltlore.faults.Outcome;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The record that is written beside the test sheet as CSV, filled in with a spreadsheet program or by hand. */
final class RecordCsv {

    private static final List<String> NEEDED =
            List.of("order", "limits", "box", "value", "unit", "instrument", "by", "on");
    private static final String EXPECTED = "a table with the columns " + String.join(", ", NEEDED);

    private record Belongs(String order, String limits) {}

    private final String file;
    private final CsvTable table;
    private final List<Fault> faults = new ArrayList<>();

    private RecordCsv(String file, CsvTable table) {
        this.file = file;
        this.table = table;
    }

    static Outcome<List<TestRecord>> read(String file, byte[] bytes) {
        return CsvTable.read(file, bytes, EXPECTED)
                .then(table -> table.has(NEEDED)
                        ? new RecordCsv(file, table).records()
                        : Outcome.faulty(table.otherHeadings(EXPECTED)));
    }

    private Outcome<List<TestRecord>> records() {
        faults.addAll(table.overflows());
        if (!faults.isEmpty()) {
            return Outcome.faulty(faults);
        }
        Map<Belongs, List<Reading>> readings = new LinkedHashMap<>();
        table.rows()
                .forEach(row -> readings.computeIfAbsent(belongs(row), key -> new ArrayList<>())
                        .add(reading(row)));
        if (readings.isEmpty()) {
            return Outcome.faulty(Fault.of(file, "headings without a row", "a row for each box", "It may be cut off."));
        }
        List<TestRecord> records = new ArrayList<>();
        readings.forEach((belongs, all) -> records.add(new TestRecord(file, belongs.order(), belongs.limits(), all)));
        return faults.isEmpty() ? Outcome.sound(records) : Outcome.faulty(faults);
    }

    private Belongs belongs(CsvTable.Row row) {
        for (String heading : List.of("order", "limits", "box")) {
            if (table.cell(row, heading).isEmpty()) {
                faults.add(table.fault(row, heading, "nothing", "what was printed there"));
            }
        }
        return new Belongs(table.cell(row, "order"), table.cell(row, "limits"));
    }

    private Reading reading(CsvTable.Row row) {
        String value = table.cell(row, "value");
        return new Reading(
                table.cell(row, "box"),
                table.decimalComma() ? value.replace(',', '.') : value,
                table.cell(row, "unit"),
                table.cell(row, "instrument"),
                table.cell(row, "by"),
                table.cell(row, "on"),
                file,
                row.line(),
                "value");
    }
}
