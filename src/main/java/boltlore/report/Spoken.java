package boltlore.report;

import boltlore.report.PrintSetup.PageCount;
import boltlore.report.drawing.Drawing;
import boltlore.report.drawing.Mark;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/** What stands on a sheet, said in its language: every word that people read, and nothing that programs go by. */
final class Spoken implements Block.Cases<Block> {

    private final Words words;
    private final Map<String, String> said = new HashMap<>();

    Spoken(Words words) {
        this.words = words;
    }

    /** A page that speaks another language than the report is written in it already. */
    Page page(Page page) {
        boolean own = page.language().isEmpty() || page.language().equals(words.language());
        return own ? spoken(page) : new Spoken(Words.of(page.language())).spoken(page);
    }

    /** The page, whatever language it says it is in. */
    Page spoken(Page page) {
        return new Page(page.name(), say(page.tab()), page.language(), print(page.print()), blocks(page.blocks()));
    }

    private PrintSetup print(PrintSetup print) {
        PrintSetup said = print.withFooter(say(print.footer()));
        if (words.isNone() || !print.count().equals(PageCount.ENGLISH)) {
            return said;
        }
        String count = say("Page {0} of {1}");
        int first = count.indexOf("{0}");
        return said.withCount(new PageCount(
                count.substring(0, first), count.substring(first + "{0}".length(), count.indexOf("{1}"))));
    }

    String say(String text) {
        return words.isNone() ? text : said.computeIfAbsent(text, words::say);
    }

    List<Block> blocks(List<Block> blocks) {
        return blocks.stream().map(block -> block.as(this)).toList();
    }

    @Override
    public Block heading(Heading heading) {
        return new Heading(say(heading.text()), heading.look());
    }

    @Override
    public Block note(Note note) {
        return new Note(note.look(), note.key(), say(note.lead()), say(note.text()));
    }

    @Override
    public Block particulars(Particulars particulars) {
        return new Particulars(
                particulars.name(),
                particulars.entries().stream()
                        .map(entry -> new Particular(
                                entry.key(), say(entry.label()), kind(entry.kind()), cell(entry.kind(), entry.cell())))
                        .toList());
    }

    @Override
    public Table table(Table table) {
        boolean named =
                table.rows().stream().anyMatch(row -> row.cells().stream().anyMatch(Cell.Said.class::isInstance));
        if (words.language().isEmpty() || (words.isNone() && !named)) {
            return table;
        }
        List<Column> columns = table.columns().stream()
                .map(column -> new Column(
                        column.key(),
                        say(column.heading()),
                        say(column.unit()),
                        kind(column.kind()),
                        column.widest(),
                        column.onPaper()))
                .toList();
        return new Table(
                table.name(),
                table.about(),
                columns,
                table.rows().stream().map(row -> row(table, row)).toList(),
                table.onPaper());
    }

    @Override
    public Block charts(BarCharts charts) {
        return new BarCharts(charts.charts().stream()
                .map(chart -> new BarChart(
                        say(chart.title()), say(chart.axis()), chart.table(), chart.labels(), chart.values()))
                .toList());
    }

    @Override
    public Block picture(Picture picture) {
        Drawing drawing = picture.drawing();
        return new Picture(new Drawing(
                drawing.widthMm(),
                drawing.heightMm(),
                say(drawing.says()),
                drawing.marks().stream().map(this::mark).toList()));
    }

    @Override
    public Block signatures(Signatures signatures) {
        return new Signatures(signatures.lines().stream().map(this::say).toList(), say(signatures.dateWord()));
    }

    private Mark mark(Mark mark) {
        return mark instanceof Mark.Lettering letters
                ? new Mark.Lettering(letters.at(), say(letters.text()), letters.heightMm(), letters.centred())
                : mark;
    }

    private Kind kind(Kind kind) {
        List<String> answers = kind.entry().answers().stream().map(this::say).toList();
        return new Kind(
                kind.form(),
                kind.scale(),
                say(kind.unit()),
                new Kind.Entry(kind.entry().day(), answers));
    }

    private Row row(Table table, Row row) {
        List<Cell> cells = IntStream.range(0, row.cells().size())
                .mapToObj(i -> cell(table.columns().get(i).kind(), row.cells().get(i)))
                .toList();
        return new Row(row.kind(), row.key(), row.group(), say(row.words()), cells, remarks(row), row.codes());
    }

    private Map<String, String> remarks(Row row) {
        Map<String, String> remarks = new LinkedHashMap<>(row.remarks());
        remarks.replaceAll((column, text) -> say(text));
        return remarks;
    }

    /** What machines read stays as it is. */
    private Cell cell(Kind kind, Cell cell) {
        if (cell instanceof Cell.Said name && !words.language().isEmpty()) {
            return Cell.of(name.in(words.language(), say(name.within())));
        }
        return cell instanceof Cell.Words text && kind.form() != Kind.Form.CODE ? Cell.of(say(text.text())) : cell;
    }
}
