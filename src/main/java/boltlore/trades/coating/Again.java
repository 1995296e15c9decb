package boltlore.trades.coating;

import boltlore.csv.CsvTable;
import boltlore.faults.Fault;
import boltlore.faults.Outcome;
import boltlore.json.JsonFile;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * Single pieces that are to be coated again.
 *
 * @param coatings the piece as 'PV-BL-S BL-1001 3', and its how manieth coating that is, from 2
 */
public record Again(Map<String, Integer> coatings) {

    static final Again NONE = new Again(Map.of());

    private static final List<String> NEEDED = List.of("part", "piece");
    private static final String EXPECTED =
            "a table with the columns part and piece, as 'film-check' writes it of pieces to be reworked";
    private static final String SECOND = "2";

    boolean isEmpty() {
        return coatings.isEmpty();
    }

    /** 1 for a piece that is not coated again. */
    int coating(BatchRow row, String piece) {
        return coatings.getOrDefault(which(row, piece), 1);
    }

    /** The highest number of the coatings that its pieces get. */
    int lastCoating() {
        return coatings.values().stream().mapToInt(coating -> coating).max().orElse(1);
    }

    private static String which(BatchRow row, String piece) {
        return row.part().number() + " " + piece;
    }

    /** Of these rows what is coated again; all of them where nothing is. */
    List<BatchRow> of(List<BatchRow> rows) {
        return isEmpty() ? rows : rows.stream().flatMap(this::of).toList();
    }

    private Stream<BatchRow> of(BatchRow row) {
        List<PieceMarks> marks = row.marks().stream()
                .flatMap(PieceMarks::apart)
                .filter(mark -> coatings.containsKey(which(row, mark.written())))
                .toList();
        return marks.isEmpty() ? Stream.of() : Stream.of(row.of(marks));
    }

    /** Pieces that the plan does not have. */
    List<String> missing(CoatPlan plan) {
        List<String> there = Stream.concat(
                        plan.batches().stream().flatMap(batch -> batch.rows().stream()),
                        plan.sendOuts().stream().flatMap(out -> out.rows().stream()))
                .flatMap(row -> row.marks().stream().flatMap(PieceMarks::each).map(piece -> which(row, piece)))
                .toList();
        return coatings.keySet().stream()
                .filter(piece -> !there.contains(piece))
                .toList();
    }

    /** Reads a CSV table with a row for each piece. */
    static Outcome<Again> read(Path file) {
        return JsonFile.bytes(file)
                .then(bytes -> CsvTable.read(file.toString(), bytes, EXPECTED))
                .then(table -> table.has(NEEDED)
                        ? read(table, file.toString())
                        : Outcome.faulty(table.otherHeadings(EXPECTED)));
    }

    /** A list of no piece is refused: an empty {@link Again} stands for the coating of everything. */
    private static Outcome<Again> read(CsvTable table, String file) {
        Map<String, Integer> coatings = new LinkedHashMap<>();
        List<Fault> faults = new ArrayList<>(table.overflows());
        if (table.rows().isEmpty()) {
            faults.add(Fault.of(
                    file, "headings without a row", "a row for each piece that is coated again", "It may be cut off."));
        }
        for (CsvTable.Row row : table.rows()) {
            String cell = table.cell(row, "coating");
            String coating = cell.isEmpty() ? SECOND : cell;
            NEEDED.stream()
                    .filter(heading -> table.cell(row, heading).isEmpty())
                    .forEach(heading ->
                            faults.add(table.fault(row, heading, "nothing", "the part and the mark of a piece")));
            if (!coating.matches("[2-9]|[1-9][0-9]")) {
                faults.add(table.fault(row, "coating", "'" + coating + "'", "2 where the piece was coated once"));
                continue;
            }
            String piece = table.cell(row, "part") + " " + table.cell(row, "piece");
            Integer other = coatings.put(piece, Integer.valueOf(coating));
            if (other != null && !coating.equals(other.toString())) {
                faults.add(table.fault(
                        row,
                        "coating",
                        coating + " for " + piece + ", and " + other + " in a row above",
                        "one of them"));
            }
        }
        return faults.isEmpty() ? Outcome.sound(new Again(Map.copyOf(coatings))) : Outcome.faulty(faults);
    }
}
