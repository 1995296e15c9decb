package boltlore.trades.coating.written;

import boltlore.csv.CsvTable;
import boltlore.faults.Outcome;
import boltlore.json.Faults;
import boltlore.trades.coating.FilmAcceptance;
import boltlore.trades.coating.PowderIssued;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/** Film readings or powder issued in a CSV table, such as those of the batch sheet, filled in. */
final class RecordCsv {

    private static final String COLUMNS =
            "a table as 'boltlore coat' writes it, with the columns limits, part, piece, reading 1 to reading "
                    + FilmAcceptance.READINGS + ", or run and issued";

    private final String file;
    private final Faults faults = new Faults();

    private RecordCsv(String file) {
        this.file = file;
    }

    static Outcome<Entries> read(String file, byte[] bytes) {
        return CsvTable.read(file, bytes, COLUMNS).then(table -> new RecordCsv(file).entries(table));
    }

    private Outcome<Entries> entries(CsvTable table) {
        if (table.has(FilmRow.NEEDED)) {
            List<CsvTable.Row> whole = whole(table);
            return faults.orElse(new Entries(true, new FilmRow(file, table, faults).film(whole), List.of()));
        }
        if (table.has(List.of("run", "issued"))) {
            List<CsvTable.Row> whole = whole(table);
            return faults.orElse(new Entries(false, List.of(), issued(table, whole)));
        }
        return Outcome.faulty(table.otherHeadings(COLUMNS));
    }

    private List<CsvTable.Row> whole(CsvTable table) {
        table.overflows().forEach(faults::add);
        return table.rows().stream().filter(row -> !table.overflows(row)).toList();
    }

    private List<Written<PowderIssued>> issued(CsvTable table, List<CsvTable.Row> rows) {
        Cells cells = new Cells(table, faults);
        List<Written<PowderIssued>> issued = new ArrayList<>();
        for (CsvTable.Row line : rows) {
            List<BigDecimal> kg = cells.numbers(line, List.of("issued"), RecordFile.POWDER, RecordFile.MOST_KG);
            if (!kg.isEmpty()) {
                String code = table.cell(line, "code");
                cells.whole(line, "run")
                        .ifPresent(run -> issued.add(
                                new Written<>(new PowderIssued(run, code, kg.get(0)), file, line.line(), "issued")));
            }
        }
        return issued;
    }
}
