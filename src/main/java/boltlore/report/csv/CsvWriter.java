package boltlore.report.csv;

import boltlore.report.Page;
import boltlore.report.Row;
import boltlore.report.Row.RowKind;
import boltlore.report.SheetFile;
import boltlore.report.Table;
import boltlore.report.Utf8;
import boltlore.report.Workbook;
import boltlore.report.WorkbookWriter;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * One file a table, as RFC 4180 has it: commas, CRLF, a heading line; in UTF-8 without a byte order mark. A table with
 * sub-totals has two more columns in front, which say what a row is and, in words, of which group.
 *
 * <p>The files are named for the workbook, the table and what sets it apart from others of its name; where that is the
 * same as well, the later ones are numbered.
 */
public final class CsvWriter implements WorkbookWriter {

    private static final String LINE_END = "\r\n";

    @Override
    public List<SheetFile> write(Workbook workbook) {
        Map<String, Integer> seen = new HashMap<>();
        List<SheetFile> files = new ArrayList<>();
        for (Page page : workbook.pages()) {
            page.tables().forEach(table -> {
                String name = workbook.file() + "-" + named(table);
                int time = seen.merge(name, 1, Integer::sum);
                files.add(new SheetFile(name + (time == 1 ? "" : "-" + time) + ".csv", bytes(table)));
            });
        }
        return files;
    }

    /** 'bars-cu-bar-20x3', 'batch-4'. */
    private static String named(Table table) {
        return Stream.concat(Stream.of(table.name()), table.about().values().stream())
                .map(part -> part.replaceAll("[^A-Za-z0-9]+", "-").replaceAll("^-|-$", ""))
                .collect(Collectors.joining("-"));
    }

    static byte[] bytes(Table table) {
        boolean plain = table.isPlain();
        Utf8 csv = new Utf8(8 * 1024);
        csv.append(plain ? "" : "Row,Group,");
        table.columns().forEach(column -> add(csv, CsvField.of(column.headingWithUnit())));
        endLine(csv);
        Map<String, String> groups = new HashMap<>();
        for (Row row : table.rows()) {
            if (row.kind() == RowKind.GROUP) {
                groups.put(row.group(), row.words());
            }
            if (!plain) {
                add(csv, kind(row));
                add(csv, CsvField.of(row.isPlain() ? groups.getOrDefault(row.group(), row.group()) : row.words()));
            }
            row.cells().forEach(cell -> add(csv, CsvField.of(cell)));
            endLine(csv);
        }
        return csv.toBytes();
    }

    private static void add(Utf8 csv, String field) {
        csv.append(field).append(',');
    }

    /** In the place of the last comma. */
    private static void endLine(Utf8 csv) {
        csv.dropLast();
        csv.append(LINE_END);
    }

    private static String kind(Row row) {
        return switch (row.kind()) {
            case PLAIN -> "row";
            case GROUP -> "group";
            case SUBTOTAL -> "sub-total";
            case TOTAL -> "total";
        };
    }
}
