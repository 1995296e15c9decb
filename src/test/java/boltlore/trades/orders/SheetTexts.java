package boltlore.trades.orders;

import boltlore.report.BarChart;
import boltlore.report.BarCharts;
import boltlore.report.Block;
import boltlore.report.Cell;
import boltlore.report.Column;
import boltlore.report.Heading;
import boltlore.report.Kind;
import boltlore.report.Note;
import boltlore.report.Page;
import boltlore.report.Particular;
import boltlore.report.Particulars;
import boltlore.report.Picture;
import boltlore.report.Report;
import boltlore.report.Row;
import boltlore.report.Signatures;
import boltlore.report.Table;
import boltlore.report.drawing.Mark;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** All that people read on the pages of a report that speak its own language, in the order in which it stands there. */
final class SheetTexts implements Block.Cases<Stream<SheetTexts.Text>> {

    /**
     * A text of a sheet.
     *
     * @param filled whether it was filled into a cell or a drawing, and so may be a name or a number of something
     */
    record Text(String says, boolean filled) {}

    private static Text label(String says) {
        return new Text(says, false);
    }

    static List<Text> of(Report report) {
        SheetTexts texts = new SheetTexts();
        List<Text> all = new ArrayList<>(List.of(label(report.title()), new Text(report.subject(), true)));
        report.glance().forEach(block -> block.as(texts).forEach(all::add));
        report.pages().stream()
                .filter(page -> page.languageIn(report).equals(report.language()))
                .forEach(page -> texts.page(page).forEach(all::add));
        report.data().forEach(table -> table.as(texts).forEach(all::add));
        return all;
    }

    private Stream<Text> page(Page page) {
        return Stream.concat(
                Stream.of(label(page.tab()), new Text(page.print().footer(), true)),
                page.blocks().stream().flatMap(block -> block.as(this)));
    }

    @Override
    public Stream<Text> heading(Heading heading) {
        return Stream.of(new Text(heading.text(), true));
    }

    @Override
    public Stream<Text> note(Note note) {
        return Stream.of(label(note.lead()), new Text(note.text(), true));
    }

    @Override
    public Stream<Text> particulars(Particulars particulars) {
        return particulars.entries().stream().flatMap(this::particular);
    }

    private Stream<Text> particular(Particular entry) {
        return Stream.of(Stream.of(label(entry.label())), kind(entry.kind()), cell(entry.kind(), entry.cell()))
                .flatMap(each -> each);
    }

    @Override
    public Stream<Text> table(Table table) {
        Stream<Text> heads = table.columns().stream()
                .flatMap(column ->
                        Stream.concat(Stream.of(label(column.heading()), label(column.unit())), kind(column.kind())));
        return Stream.concat(heads, table.rows().stream().flatMap(row -> row(table.columns(), row)));
    }

    private Stream<Text> row(List<Column> columns, Row row) {
        Stream<Text> cells = Stream.iterate(0, i -> i < columns.size(), i -> i + 1)
                .flatMap(i -> cell(columns.get(i).kind(), row.cells().get(i)));
        Stream<Text> remarks = row.remarks().values().stream().map(remark -> new Text(remark, true));
        return Stream.of(Stream.of(new Text(row.words(), true)), cells, remarks).flatMap(each -> each);
    }

    private static Stream<Text> cell(Kind kind, Cell cell) {
        return cell instanceof Cell.Words words && kind.form() != Kind.Form.CODE
                ? Stream.of(new Text(words.text(), true))
                : Stream.empty();
    }

    private static Stream<Text> kind(Kind kind) {
        return Stream.concat(
                Stream.of(label(kind.unit())), kind.entry().answers().stream().map(SheetTexts::label));
    }

    @Override
    public Stream<Text> charts(BarCharts charts) {
        return charts.charts().stream()
                .flatMap((BarChart chart) -> Stream.of(label(chart.title()), label(chart.axis())));
    }

    @Override
    public Stream<Text> picture(Picture picture) {
        Stream<Text> letters = picture.drawing().marks().stream()
                .filter(Mark.Lettering.class::isInstance)
                .map(mark -> new Text(((Mark.Lettering) mark).text(), true));
        return Stream.concat(Stream.of(label(picture.says())), letters);
    }

    @Override
    public Stream<Text> signatures(Signatures signatures) {
        return Stream.concat(
                Stream.of(label(signatures.dateWord())),
                signatures.lines().stream().map(SheetTexts::label));
    }
}
