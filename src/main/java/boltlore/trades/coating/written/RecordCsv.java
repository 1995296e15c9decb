package boltlore.trades.coating.written;

import boltlore.csv.CsvTable;
import boltlore.faults.Fault;
import boltlore.faults.Outcome;
import boltlore.json.Faults;
import boltlore.trades.coating.FilmAcceptance;
import boltlore.trades.coating.FilmReading;
import boltlore.trades.coating.PowderIssued;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.regex.Pattern;
import java.util.stream.IntStream;

/** Film readings or powder issued in a CSV table, such as those of the batch sheet, filled in. */
final class RecordCsv {

    private static final List<String> READINGS = IntStream.rangeClosed(1, FilmAcceptance.READINGS)
            .mapToObj(number -> "reading " + number)
            .toList();
    private static final String COLUMNS = "a table with the columns batch, part, piece, reading 1 to reading "
            + FilmAcceptance.READINGS + ", or run and issued";

    private static final Pattern WHOLE = Pattern.compile("[0-9]{1,6}");
    private static final Pattern NUMBER = Pattern.compile("-?[0-9]{1,12}([.,][0-9]{1,9})?");

    private final String file;
    private final Faults faults = new Faults();

    private RecordCsv(String file) {
        this.file = file;
    }

    static Outcome<Entries> read(String file, byte[] bytes) {
        return CsvTable.read(file, bytes, COLUMNS).then(table -> new RecordCsv(file).entries(table));
    }

    private Outcome<Entries> entries(CsvTable table) {
        if (table.has(List.of("batch", "part", READINGS.get(0)))) {
            return faults.orElse(new Entries(film(table), List.of()));
        }
        if (table.has(List.of("run", "issued"))) {
            return faults.orElse(new Entries(List.of(), issued(table)));
        }
        return Outcome.faulty(table.otherHeadings(COLUMNS));
    }

    /** Rows in which no reading is filled in are passed over. */
    private List<Written<FilmReading>> film(CsvTable table) {
        List<Written<FilmReading>> film = new ArrayList<>();
        for (CsvTable.Row line : table.rows()) {
            if (READINGS.stream().anyMatch(heading -> !table.cell(line, heading).isEmpty())) {
                film(table, line, film);
            }
        }
        return film;
    }

    private void film(CsvTable table, CsvTable.Row line, List<Written<FilmReading>> film) {
        int before = faults.count();
        OptionalInt batch = whole(table, line, "batch");
        List<BigDecimal> um = numbers(table, line, READINGS, RecordFile.FILM, RecordFile.MOST_UM);
        if (faults.count() == before && um.size() != FilmAcceptance.READINGS) {
            String found = um.size() + (um.size() == 1 ? " reading" : " readings");
            faults.add(new Fault(file, line.line(), "", found, FilmAcceptance.READINGS + " on each piece", ""));
        }
        if (faults.count() == before) {
            String part = table.cell(line, "part");
            FilmReading reading = new FilmReading(batch.orElseThrow(), part, table.cell(line, "piece"), um);
            film.add(new Written<>(reading, file, line.line(), ""));
        }
    }

    private List<Written<PowderIssued>> issued(CsvTable table) {
        List<Written<PowderIssued>> issued = new ArrayList<>();
        for (CsvTable.Row line : table.rows()) {
            List<BigDecimal> kg = numbers(table, line, List.of("issued"), RecordFile.POWDER, RecordFile.MOST_KG);
            if (!kg.isEmpty()) {
                whole(table, line, "run")
                        .ifPresent(run -> issued.add(
                                new Written<>(new PowderIssued(run, kg.get(0)), file, line.line(), "issued")));
            }
        }
        return issued;
    }

    /** A whole number from 1; a fault where it is none. */
    private OptionalInt whole(CsvTable table, CsvTable.Row line, String heading) {
        String cell = table.cell(line, heading);
        if (!WHOLE.matcher(cell).matches() || Integer.parseInt(cell) == 0) {
            faults.add(table.fault(line, heading, "'" + cell + "'", "the number of a " + heading));
            return OptionalInt.empty();
        }
        return OptionalInt.of(Integer.parseInt(cell));
    }

    /** Numbers above 0 and up to that; a fault for each that is none. */
    private List<BigDecimal> numbers(CsvTable table, CsvTable.Row line, List<String> under, String expected, int most) {
        List<BigDecimal> numbers = new ArrayList<>();
        for (String heading : under) {
            String cell = table.cell(line, heading);
            boolean number = NUMBER.matcher(cell).matches() && (table.decimalComma() || cell.indexOf(',') < 0);
            if (number) {
                numbers.add(new BigDecimal(cell.replace(',', '.')));
            }
            if (!cell.isEmpty() && !(number && within(numbers.get(numbers.size() - 1), most))) {
                faults.add(table.fault(line, heading, "'" + cell + "'", expected));
            }
        }
        return numbers;
    }

    private static boolean within(BigDecimal number, int most) {
        return number.signum() > 0 && number.compareTo(BigDecimal.valueOf(most)) <= 0;
    }
}
