package boltlore.trades.coating.written;

import boltlore.csv.CsvText;
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
import java.util.stream.IntStream;

/** Film readings or powder issued in a CSV table, such as those of the batch sheet, filled in. */
final class RecordCsv {

    private static final List<String> READINGS = IntStream.rangeClosed(1, FilmAcceptance.READINGS)
            .mapToObj(number -> "reading " + number)
            .toList();
    private static final String COLUMNS = "a table with the columns batch, part, piece, reading 1 to reading "
            + FilmAcceptance.READINGS + ", or run and issued";

    private final String file;
    private final Faults faults = new Faults();

    private RecordCsv(String file) {
        this.file = file;
    }

    static Outcome<Entries> read(String file, byte[] bytes) {
        return CsvText.of(file, bytes).then(text -> new RecordCsv(file).entries(text));
    }

    private Outcome<Entries> entries(CsvText text) {
        return text.lines().isEmpty()
                ? Outcome.faulty(Fault.of(file, "an empty file", COLUMNS, ""))
                : entries(new CsvTable(file, text, faults));
    }

    private Outcome<Entries> entries(CsvTable table) {
        if (table.has("batch") && table.has("part") && table.has(READINGS.get(0))) {
            return faults.orElse(new Entries(film(table), List.of()));
        }
        if (table.has("run") && table.has("issued")) {
            return faults.orElse(new Entries(List.of(), issued(table)));
        }
        return Outcome.faulty(
                new Fault(file, 1, "", "the headings " + String.join(", ", table.headings()), COLUMNS, ""));
    }

    /** Rows in which no reading is filled in are passed over. */
    private List<Written<FilmReading>> film(CsvTable table) {
        List<Written<FilmReading>> film = new ArrayList<>();
        for (CsvText.Line line : table.rows()) {
            if (READINGS.stream().anyMatch(heading -> !table.cell(line, heading).isEmpty())) {
                film(table, line, film);
            }
        }
        return film;
    }

    private void film(CsvTable table, CsvText.Line line, List<Written<FilmReading>> film) {
        int before = faults.count();
        OptionalInt batch = table.whole(line, "batch");
        List<BigDecimal> um = table.numbers(line, READINGS, RecordFile.FILM, RecordFile.MOST_UM);
        if (faults.count() == before && um.size() != FilmAcceptance.READINGS) {
            String found = um.size() + (um.size() == 1 ? " reading" : " readings");
            faults.add(new Fault(file, line.number(), "", found, FilmAcceptance.READINGS + " on each piece", ""));
        }
        if (faults.count() == before) {
            String part = table.cell(line, "part");
            FilmReading reading = new FilmReading(batch.orElseThrow(), part, table.cell(line, "piece"), um);
            film.add(new Written<>(reading, file, line.number(), ""));
        }
    }

    private List<Written<PowderIssued>> issued(CsvTable table) {
        List<Written<PowderIssued>> issued = new ArrayList<>();
        for (CsvText.Line line : table.rows()) {
            List<BigDecimal> kg = table.numbers(line, List.of("issued"), RecordFile.POWDER, RecordFile.MOST_KG);
            if (!kg.isEmpty()) {
                table.whole(line, "run")
                        .ifPresent(run -> issued.add(
                                new Written<>(new PowderIssued(run, kg.get(0)), file, line.number(), "issued")));
            }
        }
        return issued;
    }
}
