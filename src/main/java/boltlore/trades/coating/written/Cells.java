package boltlore.trades.coating.written;

import boltlore.csv.CsvTable;
import boltlore.json.Faults;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeParseException;
import java.time.format.ResolverStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** What stands in cells that somebody filled in; a fault for each that cannot be understood. */
final class Cells {

    private static final Pattern WHOLE = Pattern.compile("[0-9]{1,6}");
    private static final Pattern NUMBER = Pattern.compile("-?[0-9]{1,12}([.,][0-9]{1,20})?");

    /** 1,200 may be one and a bit, or thousand two hundred. */
    private static final Pattern DOUBTFUL = Pattern.compile("-?[0-9]{1,3},[0-9]{3}");

    /** As ISO 8601 has it, or with points, as spreadsheet programs write it in many countries. */
    private static final List<DateTimeFormatter> DAYS = Stream.of("uuuu-MM-dd", "d.M.uuuu")
            .map(day -> DateTimeFormatter.ofPattern(day).withResolverStyle(ResolverStyle.STRICT))
            .toList();

    private final CsvTable table;
    private final Faults faults;

    Cells(CsvTable table, Faults faults) {
        this.table = table;
        this.faults = faults;
    }

    /** A whole number from 1; a fault where it is none. */
    OptionalInt whole(CsvTable.Row line, String heading) {
        String cell = table.cell(line, heading);
        if (!WHOLE.matcher(cell).matches() || Integer.parseInt(cell) == 0) {
            faults.add(table.fault(line, heading, "'" + cell + "'", "the number of a " + heading));
            return OptionalInt.empty();
        }
        return OptionalInt.of(Integer.parseInt(cell));
    }

    /** A day; empty where there is none, or a fault where it cannot be read. */
    Optional<LocalDate> day(CsvTable.Row line, String heading) {
        String cell = table.cell(line, heading);
        if (cell.isEmpty()) {
            return Optional.empty();
        }
        Optional<LocalDate> day =
                DAYS.stream().flatMap(format -> day(cell, format).stream()).findFirst();
        if (day.isEmpty()) {
            faults.add(table.fault(line, heading, "'" + cell + "'", "a day such as 2026-06-01 or 1.6.2026"));
        }
        return day;
    }

    private static Optional<LocalDate> day(String cell, DateTimeFormatter format) {
        try {
            return Optional.of(LocalDate.parse(cell, format));
        } catch (DateTimeParseException otherFormat) {
            return Optional.empty();
        }
    }

    /** Numbers above 0 and up to that; a fault for each that is none. */
    List<BigDecimal> numbers(CsvTable.Row line, List<String> under, String expected, int most) {
        List<BigDecimal> numbers = new ArrayList<>();
        for (String heading : under) {
            String cell = table.cell(line, heading);
            boolean doubtful = !table.decimalComma() && DOUBTFUL.matcher(cell).matches();
            if (NUMBER.matcher(cell).matches() && !doubtful) {
                numbers.add(new BigDecimal(cell.replace(',', '.')));
                if (within(numbers.get(numbers.size() - 1), most)) {
                    continue;
                }
            }
            if (!cell.isEmpty()) {
                String point = doubtful ? ", with a point before its decimals" : "";
                faults.add(table.fault(line, heading, "'" + cell + "'", expected + point));
            }
        }
        return numbers;
    }

    private static boolean within(BigDecimal number, int most) {
        return number.signum() > 0 && number.compareTo(BigDecimal.valueOf(most)) <= 0;
    }
}
