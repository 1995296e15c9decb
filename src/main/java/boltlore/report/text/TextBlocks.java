package boltlore.report.text;

import boltlore.report.BarChart;
import boltlore.report.BarCharts;
import boltlore.report.Block;
import boltlore.report.Heading;
import boltlore.report.Look;
import boltlore.report.Note;
import boltlore.report.Page;
import boltlore.report.Particular;
import boltlore.report.Particulars;
import boltlore.report.Picture;
import boltlore.report.Printed;
import boltlore.report.Signatures;
import boltlore.report.Table;
import boltlore.report.Wrapping;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Each block as lines. */
final class TextBlocks implements Block.Cases<List<String>> {

    private static final int WIDEST_LABEL = 24;
    private static final String LINE_TO_WRITE_ON = "_".repeat(24);

    private final int width;
    private final int keyColumns;
    private final @Nullable Page page;
    private final String language;

    TextBlocks(int width, int keyColumns, @Nullable Page page, String language) {
        this.width = width;
        this.keyColumns = keyColumns;
        this.page = page;
        this.language = language;
    }

    @Override
    public List<String> heading(Heading heading) {
        List<String> lines = new ArrayList<>(Wrapping.lines(heading.text(), width));
        int longest = lines.stream().mapToInt(Wrapping::length).max().orElse(0);
        lines.add((heading.look() == Look.TITLE ? "=" : "-").repeat(longest));
        return lines;
    }

    @Override
    public List<String> note(Note note) {
        String rule = "+" + (note.look() == Look.CAUTION ? "=" : "-").repeat(width - 2) + "+";
        Stream<String> words = Wrapping.lines(note.words(), width - 4).stream()
                .map(line -> "| " + Padding.left(line, width - 4) + " |");
        return Stream.of(Stream.of(rule), words, Stream.of(rule))
                .flatMap(lines -> lines)
                .toList();
    }

    private static int labelWidth(Particulars particulars) {
        return particulars.entries().stream()
                .mapToInt(entry -> Math.min(Wrapping.length(entry.label()), WIDEST_LABEL))
                .max()
                .orElse(0);
    }

    @Override
    public List<String> particulars(Particulars particulars) {
        int labelWidth = labelWidth(particulars);
        List<String> lines = new ArrayList<>();
        for (Particular entry : particulars.entries()) {
            List<String> labels = Wrapping.lines(entry.label(), labelWidth);
            List<String> values = Wrapping.lines(value(entry), width - labelWidth - 2);
            lines.addAll(Padding.sideBySide(List.of(labels, values), List.of(labelWidth, width - labelWidth - 2)));
        }
        return lines;
    }

    private String value(Particular entry) {
        return entry.kind().form().isByHand() ? LINE_TO_WRITE_ON : Printed.alone(entry.kind(), entry.cell(), language);
    }

    @Override
    public List<String> table(Table table) {
        return new TextTable(table, width, keyColumns, language).lines();
    }

    @Override
    public List<String> charts(BarCharts charts) {
        List<String> lines = new ArrayList<>();
        for (BarChart chart : charts.charts()) {
            lines.addAll(lines.isEmpty() ? List.of() : List.of(""));
            lines.addAll(new TextChart(chart, width, language).lines(page));
        }
        return lines;
    }

    @Override
    public List<String> picture(Picture picture) {
        return Wrapping.lines(picture.drawing().says(), width);
    }

    @Override
    public List<String> signatures(Signatures signatures) {
        int longest =
                signatures.lines().stream().mapToInt(Wrapping::length).max().orElse(0);
        String day = Padding.GAP + signatures.dateWord() + Padding.GAP + "_".repeat(10);
        int room = width - longest - Padding.GAP.length() - Wrapping.length(day);
        int pen = Math.max(1, Math.min(LINE_TO_WRITE_ON.length(), room));
        return signatures.lines().stream()
                .map(line -> Padding.left(line, longest) + Padding.GAP + "_".repeat(pen) + day)
                .toList();
    }
}
