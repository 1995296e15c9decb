package boltlore.trades.orders;

import boltlore.report.BarChart;
import boltlore.report.Column;
import boltlore.report.Page;
import boltlore.report.Report;
import boltlore.report.SheetFile;
import boltlore.report.Table;
import boltlore.report.TableBuilder;
import boltlore.report.csv.CsvWriter;
import boltlore.report.html.HtmlWriter;
import boltlore.report.json.JsonWriter;
import boltlore.report.xlsx.XlsxWriter;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;

/** Workbooks as files: XLSX beside each other, their tables as CSV and JSON in a folder each. */
public final class SheetFormats {

    private SheetFormats() {}

    /** Writes a small workbook to nowhere, so that the first real one finds its libraries loaded. */
    public static void makeReady() {
        TableBuilder table =
                Table.named("ready").columns(Column.text("text", "Text"), Column.decimal("figure", "Figure", 2));
        table.row().put("text", "-").put("figure", BigDecimal.ONE);
        table.total("sum", "Sum").sum("figure", BigDecimal.ONE);
        write(List.of(Report.named("ready", "Ready")
                .page(Page.named("Ready")
                        .title("Ready")
                        .note("-")
                        .add(table)
                        .charts(new BarChart("-", "-", "ready", "text", "figure")))
                .build()));
    }

    public static List<SheetFile> write(List<Report> reports) {
        return write(reports, false);
    }

    /**
     * In all formats.
     *
     * @param html whether each is written as a page too
     */
    public static List<SheetFile> write(List<Report> reports, boolean html) {
        return writeEach(
                reports.stream().<Supplier<Report>>map(report -> () -> report).toList(), html);
    }

    /** Makes each workbook, writes it and lets it go, several at once. */
    public static List<SheetFile> writeEach(List<Supplier<Report>> workbooks, boolean html) {
        List<Written> all = workbooks.parallelStream()
                .map(Supplier::get)
                .map(report -> written(report, html))
                .toList();
        List<SheetFile> files = new ArrayList<>();
        all.forEach(written -> files.addAll(written.books()));
        all.forEach(written -> files.addAll(written.tables()));
        return files;
    }

    private static Written written(Report report, boolean html) {
        List<SheetFile> tables = new ArrayList<>();
        if (html) {
            new HtmlWriter().write(report).forEach(file -> tables.add(file.under("html")));
        }
        new CsvWriter().write(report).forEach(file -> tables.add(file.under("csv")));
        new JsonWriter().write(report).forEach(file -> tables.add(file.under("json")));
        return new Written(new XlsxWriter().write(report), tables);
    }

    private record Written(List<SheetFile> books, List<SheetFile> tables) {}
}
