package boltlore.sheets.csv;

import boltlore.sheets.Cell;
import boltlore.sheets.Column;
import boltlore.sheets.Page;
import boltlore.sheets.Row;
import boltlore.sheets.Row.RowKind;
import boltlore.sheets.SheetFile;
import boltlore.sheets.Table;
import boltlore.sheets.Workbook;
import boltlore.sheets.WorkbookWriter;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * One file a table, as RFC 4180 has it: commas, CRLF, a heading line; in UTF-8 without a byte order mark. A table with
 * sub-totals has two more columns in front, which say what a row is and, in words, of which group.
 *
 * <p>The files are named for the workbook and the table; where two pages have a table of one name, the later ones are
 * numbered.
 */
public final class CsvWriter implements WorkbookWriter {

    private static final String LINE_END = "\r\n";

    @Override
    public List<SheetFile> write(Workbook workbook) {
        Map<String, Integer> seen = new HashMap<>();
        List<SheetFile> files = new ArrayList<>();
        for (Page page : workbook.pages()) {
            page.tables().forEach(table -> {
                int time = seen.merge(table.name(), 1, Integer::sum);
                String name = workbook.file() + "-" + table.name() + (time == 1 ? "" : "-" + time) + ".csv";
                files.add(SheetFile.utf8(name, text(table)));
            });
        }
        return files;
    }

    static String text(Table table) {
        boolean plain = table.isPlain();
        StringBuilder text = new StringBuilder(plain ? "" : "Row,Group,");
        for (Column column : table.columns()) {
            text.append(CsvField.of(column.headingWithUnit())).append(',');
        }
        endLine(text);
        Map<String, String> groups = new HashMap<>();
        for (Row row : table.rows()) {
            if (row.kind() == RowKind.GROUP) {
                groups.put(row.group(), row.words());
            }
            if (!plain) {
                String group = row.isPlain() ? groups.getOrDefault(row.group(), row.group()) : row.words();
                text.append(kind(row)).append(',').append(CsvField.of(group)).append(',');
            }
            for (Cell cell : row.cells()) {
                text.append(CsvField.of(cell)).append(',');
            }
            endLine(text);
        }
        return text.toString();
    }

    /** In the place of the last comma. */
    private static void endLine(StringBuilder text) {
        text.setLength(text.length() - 1);
        text.append(LINE_END);
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
