package boltlore.report;

import java.util.List;

/** Turns a workbook into the files of one format. The same workbook gives the same bytes. */
@FunctionalInterface
public interface ReportWriter {

    List<SheetFile> write(Report report);
}
