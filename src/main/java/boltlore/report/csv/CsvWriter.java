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
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * Tables as data, one file for all tables of a name, as RFC 4180 has it: commas, CRLF, a heading line; in UTF-8 without a
 * byte order mark. In front stand whose table it is and what sets it apart from others of its name; then the columns
 * under their English names, whatever the report's language. Only plain rows are written, with the digits
 * that are known and no line break or no-break space in a cell: a comma at the end of a line parts what follows by
 * itself. Totals stand among the facts, in a file of their own; codes stand behind the columns.
 */
public final class CsvWriter implements ReportWriter {

    private static final String LINE_END = "\r\n";
    private static final String SUBJECT = "subject";
    private static final String GROUP = "group";
    private static final String FACTS = "facts";
    private static final Pattern HUMP = Pattern.compile("([a-z0-9])([A-Z])");
    private static final Pattern BREAK = Pattern.compile("\\s*[\\r\\n]+\\s*");
    private static final Pattern COMMA_BREAK = Pattern.compile(",\\s*[\\r\\n]+\\s*");

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
        Map<String, Integer> places = places(tables);
        Utf8 csv = new Utf8(8 * 1024);
        line(csv, places.keySet().stream().map(CsvField::encode).toArray(String[]::new));
        tables.forEach(table -> rows(csv, CsvField.encode(subject), table, places));
        return csv.toBytes();
    }

    /** Where in a line each heading's field stands. */
    private static Map<String, Integer> places(List<Table> tables) {
        Map<String, Integer> places = new LinkedHashMap<>(Map.of(SUBJECT, 0));
        tables.forEach(table -> table.about().keySet().forEach(key -> place(places, key)));
        if (tables.stream().anyMatch(CsvWriter::hasGroups)) {
            place(places, GROUP);
        }
        tables.forEach(table -> table.columns().forEach(column -> place(places, heading(column))));
        tables.forEach(table -> codes(table).forEach(code -> place(places, words(code))));
        return places;
    }

    /** The keys of all codes of its rows, which are few. */
    private static Set<String> codes(Table table) {
        Set<String> keys = new LinkedHashSet<>();
        table.rows().forEach(row -> keys.addAll(row.codes().keySet()));
        return keys;
    }

    private static void place(Map<String, Integer> places, String heading) {
        places.putIfAbsent(heading, places.size());
    }

    private static boolean hasGroups(Table table) {
        return table.rows().stream()
                .anyMatch(row -> row.isPlain() && !row.group().isEmpty());
    }

    /** Every line of a table begins like the last one; what the table has no column for stays empty. */
    private static void rows(Utf8 csv, String subject, Table table, Map<String, Integer> places) {
        String[] fields = new String[places.size()];
        Arrays.fill(fields, "");
        fields[0] = subject;
        table.about().forEach((key, value) -> fields[at(places, key)] = CsvField.encode(value));
        List<Column> columns = table.columns();
        int[] at =
                columns.stream().mapToInt(column -> at(places, heading(column))).toArray();
        int group = places.getOrDefault(GROUP, -1);
        Map<String, String> groups = new HashMap<>();
        Map<String, Integer> codes = new HashMap<>();
        codes(table).forEach(key -> codes.put(key, at(places, words(key))));
        for (Row row : table.rows()) {
            if (row.kind() == RowKind.GROUP) {
                groups.put(row.group(), row.words());
            } else if (row.isPlain()) {
                if (group >= 0) {
                    fields[group] = field(groups.getOrDefault(row.group(), row.group()));
                }
                for (int i = 0; i < at.length; i++) {
                    fields[at[i]] = field(columns.get(i).kind(), row.cells().get(i));
                }
                row.codes().forEach((key, code) -> fields[at(codes, key)] = field(code));
                line(csv, fields);
                row.codes().keySet().forEach(key -> fields[at(codes, key)] = "");
            }
        }
    }

    private static int at(Map<String, Integer> places, String heading) {
        return Objects.requireNonNull(places.get(heading));
    }

    /** 'fuse amps (A)' for the key 'fuse-amps', 'unit cost (EUR)' for 'unitCost'. */
    static String heading(Column column) {
        String words = words(column.key());
        return column.unit().isEmpty() ? words : words + " (" + column.unit() + ")";
    }

    private static String words(String key) {
        return HUMP.matcher(key)
                .replaceAll("$1 $2")
                .replace('-', ' ')
                .replace('_', ' ')
                .toLowerCase(Locale.ROOT);
    }

    private static String field(Kind kind, Cell cell) {
        return cell instanceof Cell.Words words ? field(words.text()) : Printed.data(kind, cell);
    }

    private static String field(String text) {
        boolean several = text.indexOf('\n') >= 0 || text.indexOf('\r') >= 0;
        String oneLine = several
                ? BREAK.matcher(COMMA_BREAK.matcher(text.strip()).replaceAll(", "))
                        .replaceAll(" / ")
                : text.strip();
        return CsvField.encode(oneLine.replace('\u00A0', ' '));
    }

    private static void line(Utf8 csv, String[] fields) {
        for (String field : fields) {
            csv.append(field).append(',');
        }
        csv.dropLast();
        csv.append(LINE_END);
    }
}
