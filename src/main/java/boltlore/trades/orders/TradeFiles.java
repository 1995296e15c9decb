package boltlore.trades.orders;

import boltlore.report.SheetFile;
import boltlore.report.Workbook;
import boltlore.trades.TradeResult;
import java.util.ArrayList;
import java.util.List;

/** The files of what trades have made: each report in all formats, and what goes beside it. */
public final class TradeFiles {

    private TradeFiles() {}

    /**
     * Of all these results.
     *
     * @param html whether each report is written as a page too
     */
    public static List<SheetFile> of(List<TradeResult> results, boolean html) {
        List<SheetFile> files = new ArrayList<>();
        for (TradeResult result : results) {
            List<Workbook> reports = result.sheets().parallelStream()
                    .map(sheet -> sheet.report().get())
                    .toList();
            files.addAll(of(result, reports, html));
        }
        return files;
    }

    /** Of a result whose reports are made already. */
    public static List<SheetFile> of(TradeResult result, List<Workbook> reports, boolean html) {
        List<SheetFile> files = new ArrayList<>();
        for (int i = 0; i < reports.size(); i++) {
            TradeResult.Sheet sheet = result.sheets().get(i);
            List<SheetFile> all = new ArrayList<>(SheetFormats.of(List.of(reports.get(i)), html));
            all.addAll(sheet.beside().get());
            all.forEach(file -> files.add(sheet.folder().isEmpty() ? file : file.under(sheet.folder())));
        }
        return files;
    }
}
