package boltlore.trades.coating.written;

import boltlore.csv.CsvText;
import boltlore.faults.Fault;
import boltlore.json.Faults;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A CSV text with a line of headings; a unit in brackets and capital letters make no other heading. */
final class CsvTable {

    private static final Pattern HEADING = Pattern.compile("(?:which )?(.*?)\\s*(?:\\(.*\\))?");
    private static final Pattern WHOLE = Pattern.compile("[0-9]{1,6}");
    private static final Pattern NUMBER = Pattern.compile("-?[0-9]{1,12}([.,][0-9]{1,9})?");

    private final String file;
    private final boolean decimalComma;
    private final List<String> headings = new ArrayList<>();
    private final List<CsvText.Line> rows;
    private final Faults faults;

    CsvTable(String file, CsvText text, Faults faults) {
        this.file = file;
        this.decimalComma = text.decimalComma();
        this.faults = faults;
        List<CsvText.Line> lines = text.lines();
        lines.stream().limit(1).flatMap(line -> line.cells().stream()).forEach(cell -> headings.add(heading(cell)));
        // Sub-totals and headings of groups say so in their first column.
        this.rows = lines.stream()
                .skip(1)
                .filter(line ->
                        !headings.get(0).equals("row") || line.cells().get(0).equals("row"))
                .toList();
    }

    private static String heading(String cell) {
        Matcher matcher = HEADING.matcher(cell.toLowerCase(Locale.ROOT));
        return matcher.matches() ? matcher.group(1) : "";
    }

    List<CsvText.Line> rows() {
        return rows;
    }

    boolean has(String heading) {
        return headings.contains(heading);
    }

    List<String> headings() {
        return headings;
    }

    /** The cell under that heading, or empty. */
    String cell(CsvText.Line line, String heading) {
        int at = headings.indexOf(heading);
        return at < 0 || at >= line.cells().size() ? "" : line.cells().get(at);
    }

    /** A whole number from 1; a fault where it is none. */
    OptionalInt whole(CsvText.Line line, String heading) {
        String cell = cell(line, heading);
        if (!WHOLE.matcher(cell).matches() || Integer.parseInt(cell) == 0) {
            faults.add(fault(line, heading, cell, "the number of a " + heading));
            return OptionalInt.empty();
        }
        return OptionalInt.of(Integer.parseInt(cell));
    }

    /** Numbers above 0 and up to that; a fault for each that is none. */
    List<BigDecimal> numbers(CsvText.Line line, List<String> under, String expected, int most) {
        List<BigDecimal> numbers = new ArrayList<>();
        for (String heading : under) {
            String cell = cell(line, heading);
            if (!cell.isEmpty() && isNumber(cell)) {
                numbers.add(new BigDecimal(cell.replace(',', '.')));
            }
            if (!cell.isEmpty() && !(isNumber(cell) && within(numbers.get(numbers.size() - 1), most))) {
                faults.add(fault(line, heading, cell, expected));
            }
        }
        return numbers;
    }

    private boolean isNumber(String cell) {
        return NUMBER.matcher(cell).matches() && (decimalComma || cell.indexOf(',') < 0);
    }

    private static boolean within(BigDecimal number, int most) {
        return number.signum() > 0 && number.compareTo(BigDecimal.valueOf(most)) <= 0;
    }

    private Fault fault(CsvText.Line line, String heading, String cell, String expected) {
        return new Fault(file, line.number(), heading, "'" + cell + "'", expected, "");
    }
}
