package boltlore.trades.orders;

import boltlore.report.Report;
import boltlore.report.SheetFile;
import boltlore.trades.TradeResult;
import java.util.ArrayList;
import java.util.List;

/** The files of what trades have made: each report in all formats, and what goes beside it. */
public final class TradeFiles {

    private TradeFiles() {}

    /**
     * Of all these results, several at once.
     *
     * @param html whether each report is written as a page too
     */
    public static List<SheetFile> write(List<TradeResult> results, boolean html) {
        return results.parallelStream()
                .flatMap(result -> {
                    List<Report> reports = result.sheets().parallelStream()
                            .map(sheet -> sheet.report().get())
                            .toList();
                    return write(result, reports, html).stream();
                })
                .toList();
    }

    /** Of a result whose reports are made already. */
    public static List<SheetFile> write(TradeResult result, List<Report> reports, boolean html) {
        List<SheetFile> files = new ArrayList<>();
        for (int i = 0; i < reports.size(); i++) {
            TradeResult.Sheet sheet = result.sheets().get(i);
            List<SheetFile> all = new ArrayList<>(SheetFormats.write(List.of(reports.get(i)), html));
            all.addAll(sheet.beside().get());
            all.forEach(file -> files.add(sheet.folder().isEmpty() ? file : file.under(sheet.folder())));
        }
        return files;
    }
}
