package boltlore.report.json;

import boltlore.report.Report;
import boltlore.report.ReportWriter;
import boltlore.report.SheetFile;
import java.util.List;

/** One file a report. */
public final class JsonWriter implements ReportWriter {

    @Override
    public List<SheetFile> write(Report report) {
        return List.of(SheetFile.utf8(
                report.file() + ".json", ReportJson.encode(report).written()));
    }
}
