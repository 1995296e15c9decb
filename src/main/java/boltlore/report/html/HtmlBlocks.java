package boltlore.report.html;

import boltlore.report.BarChart;
import boltlore.report.BarCharts;
import boltlore.report.Block;
import boltlore.report.Cell;
import boltlore.report.Column;
import boltlore.report.Heading;
import boltlore.report.Kind;
import boltlore.report.Look;
import boltlore.report.Note;
import boltlore.report.Page;
import boltlore.report.Particulars;
import boltlore.report.Picture;
import boltlore.report.Printed;
import boltlore.report.Row;
import boltlore.report.Signatures;
import boltlore.report.Table;
import boltlore.report.drawing.MachineCode;
import boltlore.report.drawing.Svg;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** Each block as an element. What cannot be seen is said: pictures have their words, bars are a list of figures. */
final class HtmlBlocks implements Block.Cases<String> {

    private static final BigDecimal WHOLE = BigDecimal.valueOf(100);

    private final Page page;
    private final String language;
    private final boolean within;

    /** @param within whether it stands within a page of other things, which has the highest heading */
    HtmlBlocks(Page page, String language, boolean within) {
        this.page = page;
        this.language = language;
        this.within = within;
    }

    /** What XML and HTML cannot hold becomes a replacement character. */
    static String escaped(String text) {
        return text.replaceAll("[\\p{Cc}\\p{Cs}\uFFFE\uFFFF&&[^\n\t]]", "\uFFFD")
                .replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;");
    }

    private static String element(String name, String text) {
        return "<" + name + ">" + escaped(text) + "</" + name + ">";
    }

    @Override
    public String heading(Heading heading) {
        int level = (heading.look() == Look.TITLE ? 1 : 2) + (within ? 1 : 0);
        return element("h" + level, heading.text());
    }

    @Override
    public String note(Note note) {
        String lead = note.lead().isBlank() ? "" : element("strong", note.lead()) + " ";
        return note.look() == Look.CAUTION
                ? "<p class=\"caution\" role=\"note\">" + lead + escaped(note.text()) + "</p>"
                : "<p class=\"note\">" + lead + escaped(note.text()) + "</p>";
    }

    @Override
    public String particulars(Particulars particulars) {
        return particulars.entries().stream()
                .map(entry -> "<div>" + element("dt", entry.label()) + "<dd>"
                        + (entry.kind().form().isByHand()
                                ? "<span class=\"pen\"></span>"
                                : escaped(Printed.alone(entry.kind(), entry.cell(), language)))
                        + "</dd></div>")
                .collect(Collectors.joining("\n", "<dl>\n", "\n</dl>"));
    }

    @Override
    public String table(Table table) {
        String heads = table.columns().stream()
                .map(column ->
                        "<th scope=\"col\"" + look(column.kind()) + ">" + escaped(column.headingWithUnit()) + "</th>")
                .collect(Collectors.joining());
        String rows = table.rows().stream().map(row -> row(table, row)).collect(Collectors.joining("\n"));
        // Where it is wider than the screen it scrolls, by keyboard too.
        String named = within
                ? " role=\"group\" aria-label=\"" + escaped(page.tab()) + ", " + escaped(table.name()) + "\""
                : "";
        String paper = table.isPrinted() ? "table" : "table screen-only";
        return "<div class=\"" + paper + "\" tabindex=\"0\"" + named + "><table>\n<thead><tr>" + heads
                + "</tr></thead>\n<tbody>\n" + rows
                + "\n</tbody>\n</table></div>";
    }

    private String row(Table table, Row row) {
        StringBuilder text = new StringBuilder("<tr class=\"")
                .append(row.kind().name().toLowerCase(Locale.ROOT))
                .append("\">");
        int from = 0;
        if (!row.isPlain()) {
            from = row.wordsCover();
            text.append("<th scope=\"row\" colspan=\"").append(from).append("\">");
            text.append(escaped(row.words())).append("</th>");
        }
        for (int i = from; i < table.columns().size(); i++) {
            Column column = table.columns().get(i);
            text.append("<td").append(look(column.kind())).append('>');
            text.append(cell(column.kind(), row.cells().get(i), row.isPlain())).append("</td>");
        }
        return text.append("</tr>").toString();
    }

    private String cell(Kind kind, Cell cell, boolean plain) {
        if (kind.form() == Kind.Form.CODE && cell instanceof Cell.Words words) {
            return Svg.encode(MachineCode.alone(words.text()));
        }
        boolean toFill = plain && kind.form().isByHand() && cell == Cell.EMPTY;
        return toFill ? "<span class=\"pen\"></span>" : escaped(Printed.inColumn(kind, cell, language));
    }

    private static String look(Kind kind) {
        return kind.form().isNumber() ? " class=\"number\"" : kind.form().isByHand() ? " class=\"box\"" : "";
    }

    @Override
    public String charts(BarCharts charts) {
        return charts.charts().stream()
                .map(this::chart)
                .collect(Collectors.joining("\n", "<div class=\"charts\">\n", "\n</div>"));
    }

    private String chart(BarChart chart) {
        Table table = page.tables()
                .filter(each -> each.name().equals(chart.table()))
                .findFirst()
                .orElseThrow();
        Column values = table.columns().get(table.column(chart.values()));
        List<Row> rows = table.rows().stream().filter(Row::isPlain).toList();
        BigDecimal most = rows.stream().map(row -> amount(table, chart, row)).reduce(BigDecimal.ONE, BigDecimal::max);
        String bars = rows.stream()
                .map(row -> {
                    BigDecimal amount = amount(table, chart, row);
                    Cell label = row.cells().get(table.column(chart.labels()));
                    String width = WHOLE.multiply(amount.max(BigDecimal.ZERO))
                            .divide(most, 1, RoundingMode.HALF_UP)
                            .toPlainString();
                    return "<li><span>" + escaped(Printed.inColumn(Kind.text(), label))
                            + "</span><svg viewBox=\"0 0 100 6\" preserveAspectRatio=\"none\" aria-hidden=\"true\">"
                            + "<rect width=\"" + width + "\" height=\"6\"/></svg><span class=\"number\">"
                            + escaped(Printed.inColumn(values.kind(), Cell.of(amount), language)) + "</span></li>";
                })
                .collect(Collectors.joining("\n"));
        return "<figure>" + element("figcaption", chart.title() + ", " + chart.axis()) + "<ul class=\"bars\">\n" + bars
                + "\n</ul></figure>";
    }

    private static BigDecimal amount(Table table, BarChart chart, Row row) {
        Cell cell = row.cells().get(table.column(chart.values()));
        return cell instanceof Cell.Figure figure
                ? figure.value()
                : cell instanceof Cell.Worked worked ? worked.result() : BigDecimal.ZERO;
    }

    @Override
    public String picture(Picture picture) {
        return "<figure class=\"drawing\">" + Svg.encode(picture.drawing()) + "</figure>";
    }

    @Override
    public String signatures(Signatures signatures) {
        return signatures.lines().stream()
                .map(line -> "<div>" + element("dt", line) + "<dd><span class=\"pen\"></span></dd>"
                        + element("dt", signatures.dateWord()) + "<dd><span class=\"pen day\"></span></dd></div>")
                .collect(Collectors.joining("\n", "<dl class=\"signatures\">\n", "\n</dl>"));
    }
}
