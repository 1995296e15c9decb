package boltlore.trades.orders;

import boltlore.report.Workbook;
import boltlore.resolution.FamilyPlan;
import boltlore.trades.costing.quote.OrderPricing;
import java.util.List;
import java.util.function.Supplier;
import java.util.stream.Stream;

/**
 * The workbooks of the other trades.
 *
 * @param workbooks each to be made when it is written
 * @param stops what must be mended before the kit goes out, a sentence each
 * @param whole whether none of them is missing that should be there
 */
public record FurtherSheets(List<Supplier<Workbook>> workbooks, List<String> stops, boolean whole) {

    public static final FurtherSheets NONE = new FurtherSheets(List.of(), List.of(), true);

    public FurtherSheets {
        workbooks = List.copyOf(workbooks);
        stops = List.copyOf(stops);
    }

    /** Those of an order that nothing stops: from the hanging plan to the shipping papers. */
    public static FurtherSheets of(FamilyPlan plan, OrderPricing pricing) {
        return new FurtherTrades(plan, pricing).all().reduce(NONE, FurtherSheets::and);
    }

    static FurtherSheets of(List<String> stops, Supplier<Workbook> workbook) {
        return new FurtherSheets(List.of(workbook), stops, true);
    }

    private FurtherSheets and(FurtherSheets other) {
        return new FurtherSheets(
                Stream.concat(workbooks.stream(), other.workbooks.stream()).toList(),
                Stream.concat(stops.stream(), other.stops.stream()).toList(),
                whole && other.whole);
    }
}
