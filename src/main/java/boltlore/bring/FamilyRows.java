package boltlore.bring;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Family;
import boltlore.catalogue.Line;
import boltlore.catalogue.Position;
import boltlore.faults.Outcome;
import boltlore.grid.GridCell;
import boltlore.grid.Sheet;
import boltlore.json.Json;
import boltlore.json.JsonFile;
import boltlore.json.JsonOut;
import boltlore.report.Cell;
import boltlore.report.Column;
import boltlore.report.Kind;
import boltlore.report.Page;
import boltlore.report.PageBuilder;
import boltlore.report.TableSpec;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What the workbook of a family says, as texts: what stands in the catalogue, or stood there when the workbook was written.
 *
 * @param tables by the sheet's title the rows by name, of each its cells by the catalogue's key; keys that begin with '='
 *     only tell, and are not taken back
 */
record FamilyRows(String family, Map<String, Map<String, SortedMap<String, String>>> tables) {

    static final String LINES = "Lines";
    static final String TITLE = "As written";

    private static final String TELLS = "=";
    private static final int MARK_BYTES = 8;
    private static final Pattern MARKED = Pattern.compile("Family ([a-z0-9-]+), state ([0-9a-f]{16})\\b");
    private static final List<String> HEADINGS = List.of("Sheet", "Row", "Content");

    /** Which state of which family a workbook was written from. */
    record Mark(String family, String state) {

        String written() {
            return "Family " + family + ", state " + state;
        }
    }

    /** One row of the sheet that keeps them. */
    private record Kept(String sheet, String row, String content) {}

    static FamilyRows of(Catalogue catalogue, Family family) {
        Map<String, Map<String, SortedMap<String, String>>> tables = new LinkedHashMap<>();
        Map<String, SortedMap<String, String>> lines = new LinkedHashMap<>();
        for (Position position : family.positions()) {
            position.lines().forEach(line -> lines.put(line.name().text(), cells(catalogue, position, line)));
        }
        tables.put(LINES, lines);
        EntryTable.of(catalogue, family).forEach(table -> tables.put(table.title(), table.cells()));
        return new FamilyRows(family.name(), tables);
    }

    private static SortedMap<String, String> cells(Catalogue catalogue, Position position, Line line) {
        SortedMap<String, String> cells = new TreeMap<>();
        put(cells, "position", position.name().text());
        put(cells, "part", line.part().text());
        put(cells, "quantity", FamilySheet.plain(line.quantity()));
        put(cells, "when", ConditionText.of(line.when()));
        put(cells, "note", line.note());
        put(cells, "=name", catalogue.part(line.part()).name().english());
        put(cells, "=unit", catalogue.part(line.part()).unit());
        return cells;
    }

    /** As a spreadsheet gives it back: without blanks at its ends; nothing where it is empty. */
    static void put(SortedMap<String, String> cells, String key, String text) {
        String bare = GridCell.text(text, GridCell.Face.PLAIN).text();
        if (!bare.isEmpty()) {
            cells.put(key, bare);
        }
    }

    static boolean tells(String key) {
        return key.startsWith(TELLS);
    }

    Map<String, SortedMap<String, String>> rows(String title) {
        return tables.getOrDefault(title, Map.of());
    }

    /** The family with a sum over all that can be taken back. */
    Mark mark() {
        StringBuilder all = new StringBuilder();
        tables.forEach((title, rows) -> rows.forEach((name, cells) -> {
            all.append(title).append('\n').append(name).append('\n');
            cells.forEach((key, text) -> all.append(tells(key) ? "" : key + '\n' + text + '\n'));
        }));
        try {
            byte[] sum =
                    MessageDigest.getInstance("SHA-256").digest(all.toString().getBytes(StandardCharsets.UTF_8));
            return new Mark(family, HexFormat.of().formatHex(sum, 0, MARK_BYTES));
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException(impossible);
        }
    }

    /** The sheet that keeps what the workbook was written from. */
    PageBuilder page() {
        List<Kept> kept = new ArrayList<>();
        tables.forEach((title, rows) -> rows.forEach((name, cells) -> {
            JsonOut.Members content = JsonOut.object();
            cells.forEach(content::put);
            kept.add(new Kept(title, name, content.writtenInLine()));
        }));
        TableSpec<Kept> table = TableSpec.<Kept>named("as-written")
                .text("sheet", HEADINGS.get(0), Kept::sheet)
                .text("row", HEADINGS.get(1), Kept::row)
                .column(new Column("content", HEADINGS.get(2), Kind.text()).atMost(120), row -> Cell.of(row.content()));
        return Page.named(TITLE)
                .landscape()
                .title("As the workbook was written")
                .note(
                        "Leave this sheet as it is: 'boltlore bring --onto' sees by it what was edited here, and what in the"
                                + " catalogue since.")
                .add(table.of(kept));
    }

    /** The mark of a workbook, or of one sheet of it that was saved alone. */
    static Optional<Mark> mark(List<Sheet> sheets) {
        return sheets.stream()
                .flatMap(sheet -> sheet.rows().values().stream())
                .flatMap(line -> line.cells().stream())
                .filter(GridCell::isText)
                .map(cell -> MARKED.matcher(cell.text()))
                .filter(Matcher::find)
                .map(found -> new Mark(found.group(1), found.group(2)))
                .findFirst();
    }

    /** What the workbook was written from, where its sheet is there and nobody touched it. */
    static Optional<FamilyRows> kept(List<Sheet> sheets, Mark mark) {
        return sheets.stream()
                .filter(sheet -> sheet.name().equals(TITLE))
                .map(sheet -> kept(sheet, mark.family()))
                .filter(rows -> rows.mark().equals(mark))
                .findFirst();
    }

    private static FamilyRows kept(Sheet sheet, String family) {
        Map<String, Map<String, SortedMap<String, String>>> tables = new LinkedHashMap<>();
        for (Sheet.Line line : sheet.rows().values()) {
            String content = line.cell(2).text();
            if (JsonFile.parse("", content.getBytes(StandardCharsets.UTF_8)) instanceof Outcome.Sound<Json> tree
                    && tree.value() instanceof Json.Obj object) {
                SortedMap<String, String> cells = new TreeMap<>();
                object.members()
                        .forEach((key, value) -> cells.put(key, value instanceof Json.Text text ? text.text() : ""));
                tables.computeIfAbsent(line.cell(0).text(), any -> new LinkedHashMap<>())
                        .put(line.cell(1).text(), cells);
            }
        }
        return new FamilyRows(family, tables);
    }
}
