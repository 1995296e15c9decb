package boltlore.report.csv;

import boltlore.report.Cell;
import boltlore.report.Column;
import boltlore.report.Fact;
import boltlore.report.Kind;
import boltlore.report.Printed;
import boltlore.report.Report;
import boltlore.report.ReportWriter;
import boltlore.report.Row;
import boltlore.report.Row.RowKind;
import boltlore.report.SheetFile;
import boltlore.report.Table;
import boltlore.report.TableSpec;
import boltlore.report.Utf8;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/**
 * Tables as data, one file for all tables of a name, as RFC 4180 has it: commas, CRLF, a heading line; in UTF-8 without a
 * byte order mark. In front stand whose table it is and what sets it apart from others of its name; then the columns
 * under their English names, whatever the report's language. Only plain rows are written, with the digits
 * that are known and no line break in a cell; totals stand among the facts, in a file of their own.
 */
public final class CsvWriter implements ReportWriter {

    private static final String LINE_END = "\r\n";
    private static final String SUBJECT = "subject";
    private static final String GROUP = "group";
    private static final String FACTS = "facts";

    @Override
    public List<SheetFile> write(Report report) {
        Map<String, List<Table>> tables = new LinkedHashMap<>();
        report.tables()
                .forEach(table -> tables.computeIfAbsent(table.name(), name -> new ArrayList<>())
                        .add(table));
        List<Fact> facts = report.facts();
        if (!facts.isEmpty()) {
            tables.put(FACTS, List.of(facts(facts)));
        }
        List<SheetFile> files = new ArrayList<>();
        tables.forEach((name, same) ->
                files.add(new SheetFile(report.file() + "-" + name + ".csv", bytes(report.subject(), same))));
        return files;
    }

    /** Single values and totals, one a row: their units differ, so they stand in a column. */
    private static Table facts(List<Fact> facts) {
        return TableSpec.<Fact>named(FACTS)
                .text("fact", "Fact", Fact::key)
                .text("says", "Says", Fact::says)
                .column(Column.text("value", "Value"), Fact::cell)
                .text("unit", "Unit", Fact::unit)
                .of(facts)
                .build();
    }

    static byte[] bytes(String subject, List<Table> tables) {
        List<Map<String, String>> rows = new ArrayList<>();
        Set<String> headings = new LinkedHashSet<>(List.of(SUBJECT));
        tables.forEach(table -> headings.addAll(table.about().keySet()));
        if (tables.stream().anyMatch(CsvWriter::hasGroups)) {
            headings.add(GROUP);
        }
        for (Table table : tables) {
            table.columns().forEach(column -> headings.add(heading(column)));
            table.rows().forEach(row -> row.codes().keySet().forEach(code -> headings.add(words(code))));
            rows(subject, table, rows);
        }
        Utf8 csv = new Utf8(8 * 1024);
        line(csv, headings.stream().map(CsvField::encode).toList());
        rows.forEach(row -> line(
                csv,
                headings.stream().map(heading -> row.getOrDefault(heading, "")).toList()));
        return csv.toBytes();
    }

    private static boolean hasGroups(Table table) {
        return table.rows().stream()
                .anyMatch(row -> row.isPlain() && !row.group().isEmpty());
    }

    private static void rows(String subject, Table table, List<Map<String, String>> rows) {
        Map<String, String> groups = new HashMap<>();
        for (Row row : table.rows()) {
            if (row.kind() == RowKind.GROUP) {
                groups.put(row.group(), row.words());
            } else if (row.isPlain()) {
                Map<String, String> fields = new HashMap<>(Map.of(SUBJECT, CsvField.encode(subject)));
                table.about().forEach((key, value) -> fields.put(key, CsvField.encode(value)));
                fields.put(GROUP, field(groups.getOrDefault(row.group(), row.group())));
                for (int i = 0; i < table.columns().size(); i++) {
                    Column column = table.columns().get(i);
                    fields.put(heading(column), field(column.kind(), row.cells().get(i)));
                }
                row.codes().forEach((key, code) -> fields.put(words(key), field(code)));
                rows.add(fields);
            }
        }
    }

    /** 'fuse amps (A)' for the key 'fuse-amps', 'unit cost (EUR)' for 'unitCost'. */
    static String heading(Column column) {
        String words = words(column.key());
        return column.unit().isEmpty() ? words : words + " (" + column.unit() + ")";
    }

    private static String words(String key) {
        return key.replaceAll("([a-z0-9])([A-Z])", "$1 $2")
                .replaceAll("[-_]", " ")
                .toLowerCase(Locale.ROOT);
    }

    private static String field(Kind kind, Cell cell) {
        return cell instanceof Cell.Words words ? field(words.text()) : Printed.data(kind, cell);
    }

    private static String field(String text) {
        return CsvField.encode(text.strip().replaceAll("\\s*[\\r\\n]+\\s*", " / "));
    }

    private static void line(Utf8 csv, List<String> fields) {
        fields.forEach(field -> csv.append(field).append(','));
        csv.dropLast();
        csv.append(LINE_END);
    }
}
