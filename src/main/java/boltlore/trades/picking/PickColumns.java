package boltlore.trades.picking;

import boltlore.catalogue.Part;
import boltlore.measure.Digits;
import boltlore.report.Cell;
import boltlore.report.Column;
import boltlore.report.TableSpec;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * The columns that pages of a picking list share: by which a picker finds a part and knows it; how much, a count or a
 * quantity to measure out, which stand apart so that nobody counts out 2.5 of something or measures 2 of another; and the
 * boxes that stores fill in by hand.
 *
 * @param digits of what is measured out, as many as the finest quantity on the list has
 * @param measured whether paper has a column of what is measured out
 */
record PickColumns(int digits, boolean measured) {

    /** For pages of which everything is counted: no column of what is measured. */
    PickColumns counted() {
        return new PickColumns(digits, false);
    }

    private static final int WIDEST_NAME = 34;

    /**
     * What a row of any page hands out.
     *
     * @param part null for a one-off that is only described
     * @param spares 0 where none are added
     */
    record Handed(@Nullable Part part, Cell name, String bin, BigDecimal quantity, BigDecimal spares, String unit) {

        static Handed of(Part part, BigDecimal quantity, BigDecimal spares) {
            String bin = part.bin().isEmpty() ? "no bin" : part.bin();
            return new Handed(part, Cell.of(part.name()), bin, quantity, spares, part.unit());
        }

        /** A piece cut to one vehicle looks like any other of its number, and fits no other vehicle. */
        static Handed of(PickRow row) {
            Handed plain = of(row.part(), row.quantity(), row.spares());
            return row.measured()
                    ? new Handed(
                            plain.part,
                            Cell.of(row.part().name(), "{0} (to this vehicle's measure: look for the order on it)"),
                            plain.bin,
                            plain.quantity,
                            plain.spares,
                            plain.unit)
                    : plain;
        }

        static Handed of(OnHold held) {
            return of(held.part(), held.quantity(), BigDecimal.ZERO);
        }

        static Handed of(BagRow packed) {
            return of(packed.part(), packed.quantity(), packed.spares());
        }

        static Handed of(ExtraRow row) {
            Part part = row.part();
            boolean customers = row.extra().suppliedByCustomer();
            String bin = part == null ? "" : customers ? "customer" : row.bin().isEmpty() ? "no bin" : row.bin();
            return new Handed(
                    part,
                    part == null ? Cell.of(row.extra().says()) : Cell.of(part.name()),
                    bin,
                    row.extra().quantity(),
                    BigDecimal.ZERO,
                    row.extra().unit());
        }

        boolean isMeasured() {
            return quantity.stripTrailingZeros().scale() > 0 || Units.measured(unit);
        }
    }

    static PickColumns of(PickingList list) {
        Stream<BigDecimal> bags =
                list.bags().stream().flatMap(page -> page.rows().stream()).map(BagRow::quantity);
        Stream<BigDecimal> apart = Stream.concat(
                list.onHold().stream().map(OnHold::quantity),
                list.extras().stream().map(extra -> extra.extra().quantity()));
        int finest = Stream.concat(bags, apart)
                .mapToInt(quantity -> quantity.stripTrailingZeros().scale())
                .max()
                .orElse(0);
        return new PickColumns(Math.max(1, finest), true);
    }

    /** Bin, part and how much. */
    <R> TableSpec<R> of(String table, String bin, boolean spares, Function<R, Handed> handed) {
        TableSpec<R> spec = TableSpec.<R>named(table)
                .text("bin", bin, row -> handed.apply(row).bin())
                .text(
                        "part",
                        "Part",
                        row -> ofPart(handed.apply(row), part -> part.number().text()))
                .column(
                        Column.text("name", "Name").atMost(WIDEST_NAME),
                        row -> handed.apply(row).name());
        return amounts(spec, spares, handed);
    }

    /** @param spares whether they are taken at once with what is counted */
    <R> TableSpec<R> amounts(TableSpec<R> spec, boolean spares, Function<R, Handed> handed) {
        spec.whole("take", spares ? "Take" : "Count", "", row -> {
            Handed what = handed.apply(row);
            return what.isMeasured() ? null : spares ? what.quantity().add(what.spares()) : what.quantity();
        });
        return measured ? spec.text("amount", "Measure out", 9, row -> amount(handed.apply(row))) : spec;
    }

    /** What must lie in the bag, spares included: '13', or '2.40 m' of what is measured. */
    String taken(Handed what) {
        String amount = amount(what);
        if (what.isMeasured()) {
            return String.valueOf(amount);
        }
        String count = Digits.plain(what.quantity().add(what.spares()));
        return amount == null ? count : count + " " + amount;
    }

    /** '2.40 m' of what is measured; the unit alone of what is counted in another than pieces. */
    private @Nullable String amount(Handed what) {
        if (what.isMeasured()) {
            return what.quantity().setScale(digits, RoundingMode.HALF_UP).toPlainString() + " " + what.unit();
        }
        return what.unit().equals("each") ? null : what.unit();
    }

    /** What only a screen and programs show: of which the count to take is made, and the revision. */
    <R> TableSpec<R> beside(TableSpec<R> spec, Function<R, Handed> handed) {
        return spec.besideThePaper()
                .decimal("measure", "Measure out", "", digits, row -> {
                    Handed what = handed.apply(row);
                    return what.isMeasured() ? what.quantity() : null;
                })
                .text("unit", "Unit", row -> handed.apply(row).unit())
                .text("revision", "Rev.", row -> ofPart(handed.apply(row), Part::revision))
                .whole("count", "Count", "", row -> {
                    Handed what = handed.apply(row);
                    return what.isMeasured() ? null : what.quantity();
                })
                .whole("spares", "Spares", "", row -> {
                    BigDecimal more = handed.apply(row).spares();
                    return more.signum() > 0 ? more : null;
                });
    }

    /** The part's number for a scanner, as 'boltlore pick take' has it. */
    static <R> TableSpec<R> scan(TableSpec<R> spec, Function<R, Part> part) {
        return spec.column(
                Column.code("scan", "Scan"),
                row -> Cell.of(part.apply(row).number().text()));
    }

    static <R> TableSpec<R> cautions(TableSpec<R> spec, int widest, Function<R, List<String>> codes) {
        return spec.text("caution", "Caution", widest, row -> PickingReport.beside(codes.apply(row)));
    }

    private static @Nullable String ofPart(Handed what, Function<Part, String> fact) {
        Part part = what.part();
        return part == null ? null : fact.apply(part);
    }
}
