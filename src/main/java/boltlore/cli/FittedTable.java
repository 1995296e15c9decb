package boltlore.cli;

import boltlore.book.BuiltHappening.Fitted;
import boltlore.csv.CsvTable;
import boltlore.faults.Fault;
import boltlore.faults.Outcome;
import boltlore.json.JsonFile;
import boltlore.json.TextShape;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/** Parts that went into a kit, as people write them down. */
final class FittedTable {

    private static final Pattern NUMBER = Pattern.compile("[0-9]{1,9}(\\.[0-9]{1,6})?");
    private static final BigDecimal MOST = BigDecimal.valueOf(1_000_000);

    private FittedTable() {}

    static Outcome<List<Fitted>> read(Path file) {
        return JsonFile.bytes(file)
                .then(bytes -> CsvTable.read(file.toString(), bytes, "parts that were fitted"))
                .then(table -> {
                    if (!table.has(List.of("part"))) {
                        return Outcome.faulty(
                                table.otherHeadings("part, and any of revision, quantity, serial, lot, heat"));
                    }
                    List<Fault> faults = new ArrayList<>(table.overflows());
                    List<Fitted> parts = new ArrayList<>();
                    for (CsvTable.Row row : table.rows()) {
                        Outcome<Fitted> part = row(table, row);
                        part.faults()
                                .forEach(fault ->
                                        faults.add(table.fault(row, fault.file(), fault.found(), fault.expected())));
                        part.then(fitted -> Outcome.sound(parts.add(fitted)));
                    }
                    return faults.isEmpty() ? Outcome.sound(parts) : Outcome.faulty(faults);
                });
    }

    private static Outcome<Fitted> row(CsvTable table, CsvTable.Row row) {
        String written = table.cell(row, "quantity").replace(',', table.decimalComma() ? '.' : ',');
        BigDecimal quantity = written.isEmpty() ? BigDecimal.ONE : quantity(written);
        return one(
                table.cell(row, "part"),
                table.cell(row, "revision"),
                quantity,
                table.cell(row, "serial"),
                table.cell(row, "lot"),
                table.cell(row, "heat"));
    }

    /** A number in plain digits; 0, which no quantity is, where it is none. */
    static BigDecimal quantity(String written) {
        return NUMBER.matcher(written).matches() ? new BigDecimal(written) : BigDecimal.ZERO;
    }

    /** One part; faults name the column. */
    static Outcome<Fitted> one(
            String part, String revision, BigDecimal quantity, String serial, String lot, String heat) {
        List<Fault> faults = new ArrayList<>();
        faults.addAll(Said.text("part", part, TextShape.PART_NUMBER).faults());
        faults.addAll(amount("quantity", quantity).faults());
        optional("revision", revision, faults);
        optional("serial", serial, faults);
        optional("lot", lot, faults);
        optional("heat", heat, faults);
        if (!serial.isEmpty() && quantity.compareTo(BigDecimal.ONE) != 0) {
            faults.add(Fault.of("quantity", quantity.toPlainString() + " with one serial number", "1", ""));
        }
        return faults.isEmpty()
                ? Outcome.sound(new Fitted("", part, revision, quantity, serial, lot, heat))
                : Outcome.faulty(faults);
    }

    static Outcome<BigDecimal> amount(String option, BigDecimal quantity) {
        return quantity.signum() > 0 && quantity.compareTo(MOST) <= 0 && quantity.scale() <= 6
                ? Outcome.sound(quantity)
                : Outcome.faulty(Fault.of(
                        option,
                        quantity.precision() - quantity.scale() > 20
                                ? "a number without end"
                                : quantity.toPlainString(),
                        "a number above 0, at most " + MOST.toPlainString() + ", with at most 6 decimals",
                        ""));
    }

    private static void optional(String option, String said, List<Fault> faults) {
        if (!said.isEmpty()) {
            faults.addAll(Said.text(option, said, TextShape.LINE).faults());
        }
    }
}
