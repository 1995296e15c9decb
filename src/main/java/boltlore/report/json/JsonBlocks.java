package boltlore.report.json;

import boltlore.json.JsonText;
import boltlore.report.BarChart;
import boltlore.report.BarCharts;
import boltlore.report.Block;
import boltlore.report.Cell;
import boltlore.report.Column;
import boltlore.report.Heading;
import boltlore.report.Kind;
import boltlore.report.Note;
import boltlore.report.Particular;
import boltlore.report.Particulars;
import boltlore.report.Picture;
import boltlore.report.Row;
import boltlore.report.Signatures;
import boltlore.report.Table;
import boltlore.report.drawing.Svg;
import java.util.List;
import java.util.Locale;

/** Writes each block as an object whose first key says what it is. */
final class JsonBlocks implements Block.Cases<JsonText> {

    private final JsonText json;
    private final JsonCell cells;

    JsonBlocks(JsonText json) {
        this.json = json;
        this.cells = new JsonCell(json);
    }

    @Override
    public JsonText heading(Heading heading) {
        return json.object().put(lower(heading.look()), heading.text()).end();
    }

    @Override
    public JsonText note(Note note) {
        return json.object()
                .put(lower(note.look()), note.text())
                .put("lead", note.lead())
                .end();
    }

    @Override
    public JsonText particulars(Particulars particulars) {
        json.brokenObject().put("particulars", particulars.name());
        json.key("entries").brokenList();
        particulars.entries().forEach(this::particular);
        return json.end().end();
    }

    @Override
    public JsonText table(Table table) {
        json.brokenObject().put("table", table.name());
        json.key("columns").brokenList();
        table.columns().forEach(this::column);
        json.end().key("rows").brokenList();
        List<JsonText.Key> keys = table.columns().stream()
                .map(column -> new JsonText.Key(column.key()))
                .toList();
        table.rows().forEach(row -> row(keys, row));
        return json.end().end();
    }

    @Override
    public JsonText charts(BarCharts charts) {
        json.brokenObject().key("charts").brokenList();
        charts.charts().forEach(this::chart);
        return json.end().end();
    }

    @Override
    public JsonText picture(Picture picture) {
        return json.brokenObject()
                .put("picture", picture.drawing().says())
                .put("svg", Svg.of(picture.drawing()))
                .end();
    }

    @Override
    public JsonText signatures(Signatures signatures) {
        json.brokenObject().key("signatures").list();
        signatures.lines().forEach(json::text);
        return json.end().end();
    }

    private void particular(Particular entry) {
        kind(entry.key(), entry.label(), entry.kind()).key("value");
        entry.cell().as(cells).end();
    }

    private void column(Column column) {
        kind(column.key(), column.heading(), column.kind())
                .put("unit", column.unit())
                .end();
    }

    private JsonText kind(String key, String label, Kind kind) {
        json.object().put("key", key).put("says", label).put("kind", lower(kind.form()));
        return kind.currency().isEmpty() ? json : json.put("currency", kind.currency());
    }

    private void row(List<JsonText.Key> keys, Row row) {
        json.object().put("row", lower(row.kind())).put("group", row.group()).put("words", row.words());
        json.key("cells").object();
        for (int i = 0; i < keys.size(); i++) {
            Cell cell = row.cells().get(i);
            if (row.isPlain() || cell != Cell.EMPTY) {
                json.key(keys.get(i));
                cell.as(cells);
            }
        }
        json.end().end();
    }

    private void chart(BarChart chart) {
        json.object()
                .put("chart", chart.title())
                .put("axis", chart.axis())
                .put("table", chart.table())
                .put("labels", chart.labels())
                .put("values", chart.values())
                .end();
    }

    private static String lower(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT);
    }
}
