package boltlore.trades.testing.written;

import boltlore.csv.CsvText;
import boltlore.faults.Fault;
import boltlore.faults.Outcome;
import boltlore.trades.testing.Reading;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** The record that is written beside the test sheet as CSV, filled in with a spreadsheet program or by hand. */
public final class RecordCsv {

    private static final List<String> NEEDED =
            List.of("order", "catalogue", "box", "value", "unit", "instrument", "by", "on");

    /** What makes the revision a text, so that no spreadsheet program takes it for a number. */
    public static final String REVISION = "rev ";

    private record Belongs(String order, String revision) {}

    private final String file;
    private final CsvText text;
    private final List<String> headings;
    private final List<Fault> faults = new ArrayList<>();

    private RecordCsv(String file, CsvText text) {
        this.file = file;
        this.text = text;
        this.headings = text.lines().get(0).cells().stream()
                .map(heading -> heading.toLowerCase(Locale.ROOT))
                .toList();
    }

    static Outcome<List<TestRecord>> read(String file, byte[] bytes) {
        return CsvText.of(file, bytes)
                .then(text -> text.lines().isEmpty()
                        ? Outcome.faulty(Fault.of(file, "an empty file", expected(), ""))
                        : new RecordCsv(file, text).records());
    }

    private static String expected() {
        return "a table with the columns " + String.join(", ", NEEDED);
    }

    private Outcome<List<TestRecord>> records() {
        if (!headings.containsAll(NEEDED)) {
            String found = "the headings " + String.join(", ", headings);
            return Outcome.faulty(new Fault(file, 1, "", found, expected(), ""));
        }
        Map<Belongs, List<Reading>> readings = new LinkedHashMap<>();
        text.lines().stream()
                .skip(1)
                .forEach(line -> readings.computeIfAbsent(belongs(line), key -> new ArrayList<>())
                        .add(reading(line)));
        if (readings.isEmpty()) {
            return Outcome.faulty(Fault.of(file, "headings without a row", "a row for each box", "It may be cut off."));
        }
        return faults.isEmpty() ? Outcome.sound(records(readings)) : Outcome.faulty(faults);
    }

    private List<TestRecord> records(Map<Belongs, List<Reading>> readings) {
        List<TestRecord> records = new ArrayList<>();
        readings.forEach((belongs, all) -> records.add(new TestRecord(file, belongs.order(), belongs.revision(), all)));
        return records;
    }

    private Belongs belongs(CsvText.Line line) {
        for (String heading : List.of("order", "catalogue", "box")) {
            if (cell(line, heading).isEmpty()) {
                faults.add(new Fault(file, line.number(), heading, "nothing", "what was printed there", ""));
            }
        }
        String revision = cell(line, "catalogue");
        return new Belongs(
                cell(line, "order"), revision.startsWith(REVISION) ? revision.substring(REVISION.length()) : revision);
    }

    private Reading reading(CsvText.Line line) {
        String value = cell(line, "value");
        return new Reading(
                cell(line, "box"),
                text.decimalComma() ? value.replace(',', '.') : value,
                cell(line, "unit"),
                cell(line, "instrument"),
                cell(line, "by"),
                cell(line, "on"),
                file,
                line.number(),
                "value");
    }

    /** The cell under that heading; empty where the line is shorter. */
    private String cell(CsvText.Line line, String heading) {
        int at = headings.indexOf(heading);
        return at < line.cells().size() ? line.cells().get(at) : "";
    }
}
