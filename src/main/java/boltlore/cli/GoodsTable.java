package boltlore.cli;

import boltlore.csv.CsvTable;
import boltlore.faults.Fault;
import boltlore.faults.Outcome;
import boltlore.json.JsonFile;
import boltlore.json.TextShape;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Pattern;

/** Goods that came in or were picked, as people write them down: a row for each part, finish and lot. */
final class GoodsTable {

    private static final Pattern NUMBER = Pattern.compile("[0-9]{1,9}(\\.[0-9]{1,6})?");
    private static final String COLUMNS =
            "part, quantity, and any of finish, lot, serial, bin, purchase, instead, concession";

    /**
     * One row.
     *
     * @param serials with blanks between them in the file
     * @param purchase purchase order that it came with, or empty
     * @param instead part in whose place it was picked, or empty
     */
    record Goods(
            String part,
            BigDecimal quantity,
            String finish,
            String lot,
            List<String> serials,
            String bin,
            String purchase,
            String instead,
            String concession) {}

    private GoodsTable() {}

    static Outcome<List<Goods>> read(Path file) {
        return JsonFile.bytes(file)
                .then(bytes -> CsvTable.read(file.toString(), bytes, "goods"))
                .then(table -> {
                    if (!table.has(List.of("part", "quantity"))) {
                        return Outcome.faulty(table.otherHeadings(COLUMNS));
                    }
                    List<Fault> faults = new ArrayList<>(table.overflows());
                    List<Goods> goods = new ArrayList<>();
                    for (CsvTable.Row row : table.rows()) {
                        Outcome<Goods> one = row(table, row);
                        one.faults()
                                .forEach(fault ->
                                        faults.add(table.fault(row, fault.file(), fault.found(), fault.expected())));
                        one.then(read -> Outcome.sound(goods.add(read)));
                    }
                    return faults.isEmpty() ? Outcome.sound(goods) : Outcome.faulty(faults);
                });
    }

    private static Outcome<Goods> row(CsvTable table, CsvTable.Row row) {
        List<Fault> faults = new ArrayList<>();
        String typed = table.cell(row, "quantity");
        String number = table.decimalComma() ? typed.replace(',', '.') : typed;
        boolean sound = NUMBER.matcher(number).matches() && new BigDecimal(number).signum() > 0;
        if (!sound) {
            faults.add(Fault.of("quantity", "'" + typed + "'", "a number above 0, with at most 6 decimals", ""));
        }
        String part = table.cell(row, "part");
        faults.addAll(Said.text("part", part, TextShape.PART_NUMBER).faults());
        List<String> serials = Arrays.stream(cell(table, row, "serial", faults).split(" ", -1))
                .filter(serial -> !serial.isEmpty())
                .toList();
        Goods goods = new Goods(
                part,
                sound ? new BigDecimal(number) : BigDecimal.ONE,
                cell(table, row, "finish", faults),
                cell(table, row, "lot", faults),
                serials,
                cell(table, row, "bin", faults),
                cell(table, row, "purchase", faults),
                cell(table, row, "instead", faults),
                cell(table, row, "concession", faults));
        return faults.isEmpty() ? Outcome.sound(goods) : Outcome.faulty(faults);
    }

    /** The cell of a column that may be missing. */
    private static String cell(CsvTable table, CsvTable.Row row, String column, List<Fault> faults) {
        String said = table.cell(row, column);
        if (!said.isEmpty()) {
            faults.addAll(Said.text(column, said, TextShape.LINE).faults());
        }
        return said;
    }
}
