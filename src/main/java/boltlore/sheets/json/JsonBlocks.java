package boltlore.sheets.json;

import boltlore.sheets.BarChart;
import boltlore.sheets.BarCharts;
import boltlore.sheets.Block;
import boltlore.sheets.Cell;
import boltlore.sheets.Column;
import boltlore.sheets.Heading;
import boltlore.sheets.Kind;
import boltlore.sheets.Note;
import boltlore.sheets.Particular;
import boltlore.sheets.Particulars;
import boltlore.sheets.Row;
import boltlore.sheets.Signatures;
import boltlore.sheets.Table;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;

/** Each block as an object whose first key says what it is. */
final class JsonBlocks implements Block.Cases<Map<String, Object>> {

    @Override
    public Map<String, Object> heading(Heading heading) {
        return Map.of(lower(heading.look()), heading.text());
    }

    @Override
    public Map<String, Object> note(Note note) {
        Map<String, Object> object = new LinkedHashMap<>();
        object.put(lower(note.look()), note.text());
        object.put("lead", note.lead());
        return object;
    }

    @Override
    public Map<String, Object> particulars(Particulars particulars) {
        Map<String, Object> object = new LinkedHashMap<>();
        object.put("particulars", particulars.name());
        object.put(
                "entries",
                particulars.entries().stream().map(JsonBlocks::particular).toList());
        return object;
    }

    @Override
    public Map<String, Object> table(Table table) {
        Map<String, Object> object = new LinkedHashMap<>();
        object.put("table", table.name());
        object.put("columns", table.columns().stream().map(JsonBlocks::column).toList());
        object.put("rows", table.rows().stream().map(row -> row(table, row)).toList());
        return object;
    }

    @Override
    public Map<String, Object> charts(BarCharts charts) {
        return Map.of("charts", charts.charts().stream().map(JsonBlocks::chart).toList());
    }

    @Override
    public Map<String, Object> signatures(Signatures signatures) {
        return Map.of("signatures", signatures.lines());
    }

    private static Map<String, Object> particular(Particular entry) {
        Map<String, Object> object = kind(entry.key(), entry.label(), entry.kind());
        object.put("value", JsonCell.of(entry.cell()));
        return object;
    }

    private static Map<String, Object> column(Column column) {
        Map<String, Object> object = kind(column.key(), column.heading(), column.kind());
        object.put("unit", column.unit());
        return object;
    }

    private static Map<String, Object> kind(String key, String label, Kind kind) {
        Map<String, Object> object = new LinkedHashMap<>();
        object.put("key", key);
        object.put("says", label);
        object.put("kind", lower(kind.form()));
        if (!kind.currency().isEmpty()) {
            object.put("currency", kind.currency());
        }
        return object;
    }

    private static Map<String, Object> row(Table table, Row row) {
        Map<String, Object> cells = new LinkedHashMap<>();
        for (int i = 0; i < row.cells().size(); i++) {
            Cell cell = row.cells().get(i);
            if (row.isPlain() || cell != Cell.EMPTY) {
                cells.put(table.columns().get(i).key(), JsonCell.of(cell));
            }
        }
        Map<String, Object> object = new LinkedHashMap<>();
        object.put("row", lower(row.kind()));
        object.put("group", row.group());
        object.put("words", row.words());
        object.put("cells", cells);
        return object;
    }

    private static Map<String, Object> chart(BarChart chart) {
        Map<String, Object> object = new LinkedHashMap<>();
        object.put("chart", chart.title());
        object.put("axis", chart.axis());
        object.put("table", chart.table());
        object.put("labels", chart.labels());
        object.put("values", chart.values());
        return object;
    }

    private static String lower(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT);
    }
}
