package boltlore.trades.picking.sheets;

import boltlore.measure.Digits;
import boltlore.report.Column;
import boltlore.report.RowBuilder;
import boltlore.trades.picking.PickRow;
import boltlore.trades.picking.PickingList;
import boltlore.trades.picking.StageQuantity;
import boltlore.trades.picking.Units;
import java.math.BigDecimal;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Three columns for how much: a count, or a quantity to measure out, and the unit. They stand apart so that nobody counts
 * out 2.5 of something or measures 2 of another.
 */
final class Amounts {

    private static final int FEWEST_DIGITS = 1;

    private final int digits;

    private Amounts(int digits) {
        this.digits = digits;
    }

    /** With as many digits as the finest quantity on the list has. */
    static Amounts of(PickingList list) {
        Stream<BigDecimal> bags =
                list.bags().stream().flatMap(page -> page.rows().stream()).map(row -> row.quantity());
        Stream<BigDecimal> apart = Stream.concat(
                list.heldBack().stream().map(held -> held.quantity()),
                list.extras().stream().map(extra -> extra.extra().quantity()));
        int finest = Stream.concat(bags, apart)
                .mapToInt(quantity -> quantity.stripTrailingZeros().scale())
                .max()
                .orElse(0);
        return new Amounts(Math.max(FEWEST_DIGITS, finest));
    }

    /** The columns of a table: the amounts stand after the first ones; what follows may end in boxes. */
    Column[] between(List<Column> first, List<Column> rest, List<Column> boxes) {
        return columns(first, List.of(), rest, boxes);
    }

    /** The same with spares beside the count. */
    Column[] withSparesBetween(List<Column> first, List<Column> rest, List<Column> boxes) {
        return columns(first, List.of(Column.whole("spares", "Spares")), rest, boxes);
    }

    private Column[] columns(List<Column> first, List<Column> spares, List<Column> rest, List<Column> boxes) {
        List<Column> counted = List.of(Column.whole("count", "Count"));
        List<Column> measured = List.of(Column.decimal("measure", "Measure out", digits), Column.text("unit", "Unit"));
        return Stream.of(first, counted, spares, measured, rest, boxes)
                .flatMap(List::stream)
                .toArray(Column[]::new);
    }

    static RowBuilder put(RowBuilder row, BigDecimal quantity, String unit) {
        boolean fraction = quantity.stripTrailingZeros().scale() > 0;
        return row.put(fraction || Units.measured(unit) ? "measure" : "count", quantity)
                .put("unit", unit);
    }

    static void putSpares(RowBuilder row, BigDecimal spares) {
        if (spares.signum() > 0) {
            row.put("spares", spares);
        }
    }

    /** 'front 4, cabin 8'. */
    static String byStage(PickRow row) {
        return row.byStage().stream().map(Amounts::stage).collect(Collectors.joining(", "));
    }

    private static String stage(StageQuantity at) {
        return at.stage() + " " + Digits.plain(at.quantity());
    }
}
