package boltlore.bring;

import boltlore.grid.Sheet;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What was read from a sheet, held row by row against what a person reads there.
 *
 * @param right rows whose name and every quantity are as they stand there
 * @param asked rows about which a question is open
 * @param wrong the others, in words: misread, passed over, or taken for parts though they are none
 */
record Judged(int right, int asked, List<String> wrong) {

    /**
     * One table as a person reads it.
     *
     * @param rows row to its quantities, '?' where it says none that is plain
     */
    record Truth(String file, String sheet, List<String> names, List<String> quantities, Map<Integer, String> rows) {

        static Truth of(String line) {
            String[] fields = line.split("\t", -1);
            Map<Integer, String> rows = new LinkedHashMap<>();
            for (String row : fields[4].isEmpty() ? new String[0] : fields[4].split(" ", -1)) {
                rows.put(Integer.parseInt(row.split("=", -1)[0]), row.split("=", -1)[1]);
            }
            return new Truth(
                    fields[0],
                    fields[1],
                    List.of(fields[2].split("\\|", -1)),
                    List.of(fields[3].split("\\|", -1)),
                    rows);
        }
    }

    Judged and(Judged other) {
        return new Judged(
                right + other.right,
                asked + other.asked,
                Stream.concat(wrong.stream(), other.wrong.stream()).toList());
    }

    int all() {
        return right + asked + wrong.size();
    }

    /** Holds what was read of the table that has that column of names against the truth. */
    static Judged of(Truth truth, Brought brought) {
        List<TableRead> tables = brought.tables().stream()
                .filter(read -> read.table().sheet().name().equals(truth.sheet()))
                .filter(read -> read.table().columns().anyMatch(column -> isNamed(truth, column)))
                .toList();
        Map<Integer, Entry> entries = new LinkedHashMap<>();
        tables.forEach(read -> read.entries().forEach(entry -> entries.put(entry.row(), entry)));
        // Whether deeper rows are inside those above is asked of the whole list, whose rows are read all the same.
        List<String> open = brought.mapping().open().stream()
                .filter(asked -> !asked.contains("the list has levels"))
                .toList();
        int right = 0;
        int asked = 0;
        List<String> wrong = new ArrayList<>();
        for (Map.Entry<Integer, String> row : truth.rows().entrySet()) {
            Entry entry = entries.remove(row.getKey());
            if (isAsked(open, truth, row.getKey(), tables)) {
                asked++;
            } else if (entry != null && said(entry).equals(row.getValue()) && isName(truth, tables, entry)) {
                right++;
            } else {
                wrong.add(truth.file() + " " + truth.sheet() + " row " + row.getKey() + ": " + row.getValue()
                        + " read as " + (entry == null ? "nothing" : said(entry) + " " + entry.name()));
            }
        }
        for (Entry left : entries.values()) {
            if (!isAsked(open, truth, left.row(), tables)) {
                wrong.add(truth.file() + " " + truth.sheet() + " row " + left.row() + ": no part, read as " + left);
            }
        }
        return new Judged(right, asked, wrong);
    }

    private static boolean isNamed(Truth truth, int column) {
        return truth.names().contains(Sheet.letters(column));
    }

    private static boolean isAsked(List<String> open, Truth truth, int row, List<TableRead> tables) {
        String cell = ".*" + Pattern.quote(truth.sheet() + "!") + "[A-Z]+" + row + ": .*";
        boolean ofTable = tables.stream()
                .filter(read -> read.entries().stream().anyMatch(entry -> entry.row() == row))
                .anyMatch(read -> open.stream()
                        .anyMatch(asked -> asked.startsWith(
                                        read.table()
                                                        .address(
                                                                read.table().firstHead(),
                                                                read.table().firstColumn()) + ": ")
                                || read.table()
                                        .columns()
                                        .anyMatch(column ->
                                                asked.startsWith(truth.sheet() + "!" + Sheet.letters(column) + ": "))));
        return ofTable || open.stream().anyMatch(asked -> asked.matches("(?s)" + cell));
    }

    private static String said(Entry entry) {
        if (!entry.values().isEmpty()) {
            return entry.values().values().stream()
                    .map(amount -> plain(amount.number()))
                    .collect(Collectors.joining("/"));
        }
        Amount amount = entry.quantity();
        return amount == null ? "?" : plain(amount.number()) + amount.unit();
    }

    private static String plain(BigDecimal number) {
        return number.signum() == 0 ? "0" : number.stripTrailingZeros().toPlainString();
    }

    /** Whether the name is what the first filled of those columns holds. */
    private static boolean isName(Truth truth, List<TableRead> tables, Entry entry) {
        return tables.stream()
                .anyMatch(read -> read.table()
                        .columns()
                        .filter(column -> isNamed(truth, column))
                        .mapToObj(column -> read.table().cell(entry.row(), column))
                        .filter(cell -> !cell.isEmpty())
                        .findFirst()
                        .filter(cell -> entry.name().equals(cell.text()))
                        .isPresent());
    }
}
