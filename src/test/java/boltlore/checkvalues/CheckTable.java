package boltlore.checkvalues;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** A table of check values below <code>checkvalues/</code> of the test resources: CSV with a header row. */
public final class CheckTable {

    private CheckTable() {}

    /** The rows with these numbers, in the table's order; a number that is not there is an error. */
    public static Stream<CheckRow> rows(String file, String... ids) {
        List<CheckRow> wanted =
                all(file).filter(row -> List.of(ids).contains(row.text("id"))).toList();
        if (wanted.size() != ids.length) {
            throw new IllegalArgumentException(file + " has not all of " + List.of(ids));
        }
        return wanted.stream();
    }

    /** All rows, in the table's order. */
    public static Stream<CheckRow> all(String file) {
        List<String> lines = read(file).lines().toList();
        List<String> header = cells(lines.get(0));
        return lines.stream().skip(1).map(line -> row(header, cells(line)));
    }

    private static CheckRow row(List<String> header, List<String> cells) {
        Map<String, String> byColumn = new LinkedHashMap<>();
        for (int i = 0; i < header.size(); i++) {
            byColumn.put(header.get(i), cells.get(i));
        }
        return new CheckRow(byColumn);
    }

    /** A comma inside quotes belongs to the cell; the quotes do not. */
    private static List<String> cells(String line) {
        List<String> cells = new ArrayList<>();
        StringBuilder cell = new StringBuilder();
        boolean quoted = false;
        for (int i = 0; i < line.length(); i++) {
            char c = line.charAt(i);
            if (c == '"') {
                quoted = !quoted;
            } else if (c == ',' && !quoted) {
                cells.add(cell.toString());
                cell.setLength(0);
            } else {
                cell.append(c);
            }
        }
        cells.add(cell.toString());
        return cells;
    }

    private static String read(String file) {
        try (InputStream in = CheckTable.class.getResourceAsStream("/checkvalues/" + file)) {
            if (in == null) {
                throw new IllegalArgumentException("No table " + file);
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
