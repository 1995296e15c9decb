package boltlore.report.xlsx;

import boltlore.report.BarCharts;
import boltlore.report.Block;
import boltlore.report.Cell;
import boltlore.report.Column;
import boltlore.report.Formula;
import boltlore.report.Heading;
import boltlore.report.Note;
import boltlore.report.Page;
import boltlore.report.Particular;
import boltlore.report.Particulars;
import boltlore.report.Picture;
import boltlore.report.Row;
import boltlore.report.Signatures;
import boltlore.report.Table;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/** What a reader should find on a page: all filled cells, row by row from left to right, numbers without idle zeros. */
final class CellsInOrder implements Block.Cases<List<String>>, Cell.Cases<String> {

    static List<String> of(Page page) {
        List<String> cells = new ArrayList<>();
        page.blocks().forEach(block -> cells.addAll(block.as(new CellsInOrder())));
        cells.removeIf(String::isEmpty);
        return cells;
    }

    static String number(BigDecimal number) {
        return number.signum() == 0 ? "0" : number.stripTrailingZeros().toPlainString();
    }

    @Override
    public List<String> heading(Heading heading) {
        return List.of(heading.text());
    }

    @Override
    public List<String> note(Note note) {
        return List.of(note.words());
    }

    /** Up to three stand one below the other, more in two stacks side by side. */
    @Override
    public List<String> particulars(Particulars particulars) {
        List<Particular> entries = particulars.entries();
        int height = entries.size() > 3 ? (entries.size() + 1) / 2 : entries.size();
        List<String> cells = new ArrayList<>();
        for (int row = 0; row < height; row++) {
            for (int i = row; i < entries.size(); i += height) {
                cells.add(entries.get(i).label());
                cells.add(entries.get(i).cell().as(this));
            }
        }
        return cells;
    }

    @Override
    public List<String> table(Table table) {
        List<String> cells = new ArrayList<>(
                table.columns().stream().map(Column::headingWithUnit).toList());
        for (Row row : table.rows()) {
            cells.add(row.words());
            row.cells().forEach(cell -> cells.add(cell.as(this)));
        }
        return cells;
    }

    @Override
    public List<String> charts(BarCharts charts) {
        return List.of();
    }

    @Override
    public List<String> picture(Picture picture) {
        return List.of();
    }

    @Override
    public List<String> signatures(Signatures signatures) {
        return signatures.lines().stream()
                .flatMap(line -> List.of(line, signatures.dateWord()).stream())
                .toList();
    }

    @Override
    public String empty() {
        return "";
    }

    @Override
    public String words(String text) {
        return text;
    }

    @Override
    public String figure(BigDecimal value) {
        return number(value);
    }

    /** Days are numbers, counted from 30 December 1899. */
    @Override
    public String day(LocalDate value) {
        return String.valueOf(value.toEpochDay() - LocalDate.of(1899, 12, 30).toEpochDay());
    }

    @Override
    public String worked(Formula formula, BigDecimal result) {
        return number(result);
    }
}
