package boltlore.sheets.orders;

import boltlore.sheets.SheetFile;
import boltlore.sheets.Workbook;
import boltlore.sheets.csv.CsvWriter;
import boltlore.sheets.json.JsonWriter;
import boltlore.sheets.xlsx.XlsxWriter;
import java.util.ArrayList;
import java.util.List;

/** Workbooks as files: XLSX beside each other, their tables as CSV and JSON in a folder each. */
public final class SheetFormats {

    private SheetFormats() {}

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
