package boltlore.trades.coating;

import boltlore.report.BarCharts;
import boltlore.report.Block;
import boltlore.report.Column;
import boltlore.report.Heading;
import boltlore.report.Note;
import boltlore.report.Particulars;
import boltlore.report.Picture;
import boltlore.report.Printed;
import boltlore.report.Report;
import boltlore.report.Row;
import boltlore.report.Signatures;
import boltlore.report.Table;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** All that a workbook says, a line for each heading, note and row, cells parted by bars; nothing is broken or cut. */
final class SheetWords implements Block.Cases<String> {

    private static final String BAR = " | ";

    private SheetWords() {}

    static String of(Report report) {
        return report.pages().stream()
                .flatMap(page -> page.blocks().stream())
                .map(block -> block.as(new SheetWords()))
                .collect(Collectors.joining("\n"))
                .replace('\u00A0', ' ');
    }

    @Override
    public String heading(Heading heading) {
        return heading.text();
    }

    @Override
    public String note(Note note) {
        return note.words();
    }

    @Override
    public String particulars(Particulars particulars) {
        return particulars.entries().stream()
                .map(entry -> entry.label() + BAR + Printed.alone(entry.kind(), entry.cell()))
                .collect(Collectors.joining("\n"));
    }

    @Override
    public String table(Table table) {
        List<String> lines = new ArrayList<>();
        lines.add(table.columns().stream().map(Column::headingWithUnit).collect(Collectors.joining(BAR)));
        table.rows().forEach(row -> lines.add(row(table, row)));
        return String.join("\n", lines);
    }

    @Override
    public String charts(BarCharts charts) {
        return "";
    }

    @Override
    public String picture(Picture picture) {
        return picture.drawing().says();
    }

    @Override
    public String signatures(Signatures signatures) {
        return String.join(BAR, signatures.lines());
    }

    private static String row(Table table, Row row) {
        List<String> cells = new ArrayList<>();
        for (int i = 0; i < row.cells().size(); i++) {
            cells.add(
                    Printed.inColumn(table.columns().get(i).kind(), row.cells().get(i)));
        }
        return row.words() + String.join(BAR, cells);
    }
}
