package boltlore.report.json;

import boltlore.report.SheetFile;
import boltlore.report.Workbook;
import boltlore.report.WorkbookWriter;
import java.util.List;

/** One file a report. */
public final class JsonWriter implements WorkbookWriter {

    @Override
    public List<SheetFile> write(Workbook report) {
        return List.of(
                SheetFile.utf8(report.file() + ".json", ReportJson.of(report).written()));
    }
}
