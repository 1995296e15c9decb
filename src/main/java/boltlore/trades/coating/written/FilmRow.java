package boltlore.trades.coating.written;

import boltlore.csv.CsvTable;
import boltlore.faults.Fault;
import boltlore.json.Faults;
import boltlore.trades.coating.FilmAcceptance;
import boltlore.trades.coating.FilmReading;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** The rows of a film record, each of one piece. */
final class FilmRow {

    private static final List<String> READINGS = IntStream.rangeClosed(1, FilmAcceptance.READINGS)
            .mapToObj(number -> "reading " + number)
            .toList();

    static final List<String> NEEDED = List.of("limits", "part", "piece", READINGS.get(0));

    /** In the languages of the sheets, as people tick and write it. */
    private static final Set<String> YES = Set.of("yes", "y", "ok", "x", "true", "1", "✓", "✔", "ja", "j", "oui", "o");

    private static final Set<String> NO = Set.of("no", "n", "false", "0", "nein", "non");

    private final String file;
    private final CsvTable table;
    private final Faults faults;
    private final Cells cells;

    FilmRow(String file, CsvTable table, Faults faults) {
        this.file = file;
        this.table = table;
        this.faults = faults;
        this.cells = new Cells(table, faults);
    }

    /** Rows in which nothing is read or seen still say that the piece is there. */
    List<Written<FilmReading>> film(List<CsvTable.Row> rows) {
        List<Written<FilmReading>> film = new ArrayList<>();
        rows.forEach(line -> film(line, flaw(line), film));
        return film;
    }

    private void film(CsvTable.Row line, String flaw, List<Written<FilmReading>> film) {
        int before = faults.count();
        List<BigDecimal> um = cells.numbers(line, READINGS, RecordFile.FILM, RecordFile.MOST_UM);
        if (faults.count() == before && !um.isEmpty() && um.size() != FilmAcceptance.READINGS) {
            String found = um.size() + (um.size() == 1 ? " reading" : " readings");
            faults.add(new Fault(file, line.line(), "", found, FilmAcceptance.READINGS + " on each piece", ""));
        }
        Stream.of("limits", "part", "piece")
                .filter(heading -> cell(line, heading).isEmpty())
                .forEach(heading ->
                        faults.add(table.fault(line, heading, "nothing", "what 'boltlore coat' wrote there")));
        OptionalInt coating = cell(line, "coating").isEmpty() ? OptionalInt.of(1) : cells.whole(line, "coating");
        LocalDate on = cells.day(line, "on").orElse(null);
        if (faults.count() == before) {
            FilmReading.Sheet sheet = new FilmReading.Sheet(
                    cell(line, "batch"), cell(line, "lot"), cell(line, "finish"), cell(line, "limits"));
            FilmReading reading = new FilmReading(
                    sheet, cell(line, "part"), cell(line, "piece"), coating.orElseThrow(), on, um, flaw);
            film.add(new Written<>(reading, file, line.line(), ""));
        }
    }

    private String cell(CsvTable.Row line, String heading) {
        return table.cell(line, heading).replace('\u00A0', ' ');
    }

    /** Why the piece is rejected by eye, as its two boxes say; empty where they do not. */
    private String flaw(CsvTable.Row line) {
        String look = first(line, "look", "visual ok");
        String good = first(line, "good", "accepted");
        if (!is(YES, look) && !look.isEmpty()) {
            return is(NO, look) ? "visual not OK" : look;
        }
        if (good.isEmpty() || is(YES, good)) {
            return "";
        }
        if (!is(NO, good)) {
            faults.add(table.fault(line, "good", "'" + good + "'", "yes or no, the reason under 'look'"));
        }
        return "not accepted";
    }

    private String first(CsvTable.Row line, String heading, String printed) {
        String cell = cell(line, heading);
        return cell.isEmpty() ? cell(line, printed) : cell;
    }

    private static boolean is(Set<String> words, String cell) {
        return words.contains(cell.toLowerCase(Locale.ROOT));
    }
}
