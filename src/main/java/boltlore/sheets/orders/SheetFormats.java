package boltlore.sheets.orders;

import boltlore.sheets.BarChart;
import boltlore.sheets.Column;
import boltlore.sheets.Page;
import boltlore.sheets.SheetFile;
import boltlore.sheets.Table;
import boltlore.sheets.TableBuilder;
import boltlore.sheets.Workbook;
import boltlore.sheets.csv.CsvWriter;
import boltlore.sheets.json.JsonWriter;
import boltlore.sheets.xlsx.XlsxWriter;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/** Workbooks as files: XLSX beside each other, their tables as CSV and JSON in a folder each. */
public final class SheetFormats {

    private SheetFormats() {}

    /** Writes a small workbook to nowhere, so that the first real one finds its libraries loaded. */
    public static void makeReady() {
        TableBuilder table =
                Table.named("ready").columns(Column.text("text", "Text"), Column.decimal("figure", "Figure", 2));
        table.row().put("text", "-").put("figure", BigDecimal.ONE);
        table.total("sum", "Sum").sum("figure", BigDecimal.ONE);
        of(List.of(Workbook.of("ready", "Ready")
                .page(Page.named("Ready")
                        .title("Ready")
                        .note("-")
                        .add(table)
                        .charts(new BarChart("-", "-", "ready", "text", "figure")))
                .build()));
    }

    public static List<SheetFile> of(List<Workbook> workbooks) {
        List<SheetFile> files = new ArrayList<>();
        workbooks.parallelStream()
                .map(workbook -> new XlsxWriter().write(workbook))
                .toList()
                .forEach(files::addAll);
        for (Workbook workbook : workbooks) {
            new CsvWriter().write(workbook).forEach(file -> files.add(file.under("csv")));
            new JsonWriter().write(workbook).forEach(file -> files.add(file.under("json")));
        }
        return files;
    }
}
