package boltlore.trades;

import boltlore.findings.Findings;
import boltlore.report.Report;
import boltlore.report.SheetFile;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Predicate;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;

/**
 * What a trade has made of one order, or of several together.
 *
 * @param folder of the order's name; empty where it is of several orders
 * @param findings all that a person must know of it
 * @param sheets made only when they are written
 * @param apart files that options ask for
 */
public record TradeResult(String folder, Findings findings, List<Sheet> sheets, List<Apart> apart) {

    public TradeResult {
        sheets = List.copyOf(sheets);
        apart = List.copyOf(apart);
    }

    public TradeResult(String folder, Findings findings, List<Sheet> sheets) {
        this(folder, findings, sheets, List.of());
    }

    /**
     * A file at the place that an option names, written after the sheets.
     *
     * @param kind what writes it, for only its own earlier file is replaced: 'cut --left'
     * @param carriesOver the file's text as this run has read it, where all of that is in the new text: then the earlier file
     *     is replaced although somebody has written in it; else empty
     */
    public record Apart(Path file, String kind, Supplier<String> text, String carriesOver) {}

    /** Folder of what leaves the house: nothing in it shows a cost. */
    public static final String FOR_CUSTOMERS = "customer";

    /**
     * A report, or files of another kind that go with the reports.
     *
     * @param folder below the order's folder, mostly empty
     * @param beside made only when they are written, as the report is
     * @param always whether it goes with every kit; else only where all sheets of a kit are asked for
     */
    public record Sheet(String folder, Supplier<Report> report, Supplier<List<SheetFile>> beside, boolean always) {

        public Sheet(String folder, Supplier<Report> report, Supplier<List<SheetFile>> beside) {
            this(folder, report, beside, false);
        }

        private Sheet as(UnaryOperator<Report> other) {
            return new Sheet(folder, () -> other.apply(report.get()), beside, always);
        }

        public static Sheet of(Supplier<Report> report) {
            return new Sheet("", report, List::of);
        }

        /** One that goes with every kit. */
        public static Sheet always(Supplier<Report> report) {
            return new Sheet("", report, List::of, true);
        }
    }

    /** Of one order, with one report. */
    public static TradeResult of(KitInWork kit, Findings findings, Supplier<Report> report) {
        return new TradeResult(kit.order().name(), findings, List.of(Sheet.of(report)));
    }

    /**
     * With each report as one of those functions makes it.
     *
     * @param inside of what stays in the house
     * @param outside of what lies in the folder of what leaves it
     */
    public TradeResult each(UnaryOperator<Report> inside, UnaryOperator<Report> outside) {
        List<Sheet> others = sheets.stream()
                .map(sheet -> sheet.as(sheet.folder().equals(FOR_CUSTOMERS) ? outside : inside))
                .toList();
        return new TradeResult(folder, findings, others, apart);
    }

    /** With some of its sheets. */
    public TradeResult only(Predicate<Sheet> wanted) {
        return new TradeResult(folder, findings, sheets.stream().filter(wanted).toList());
    }
}
