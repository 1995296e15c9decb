package boltlore.desk.fabrication;

import boltlore.desk.frame.Call;
import boltlore.trades.coating.FilmToRead;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Pieces whose film is to be read, with what stands in their fields.
 *
 * @param query names the orders
 */
public record FilmForm(List<String> told, List<String> orders, String query, String remark, List<Batch> batches) {

    private static final String HEAD = "batch,lot,finish,limits,part,piece,coating,"
            + "reading 1,reading 2,reading 3,reading 4,reading 5,good,look,on";

    static final int READINGS = 5;

    private Stream<Row> rows() {
        return batches.stream().flatMap(batch -> batch.rows().stream());
    }

    public long pieces() {
        return rows().count();
    }

    public long filled() {
        return rows().filter(Row::filled).count();
    }

    public long toRead() {
        return rows().filter(row -> row.piece().toRead()).count();
    }

    public long read() {
        return rows().filter(row -> row.piece().toRead() && row.filled()).count();
    }

    /** What stands in the piece's row of the form, whatever other rows there are. */
    static List<String> typed(Call call, FilmToRead piece) {
        List<String> parts = call.all("part");
        List<String> marks = call.all("piece");
        int row = 0;
        while (row < Math.min(parts.size(), marks.size())
                && !(parts.get(row).equals(piece.part()) && marks.get(row).equals(piece.mark()))) {
            row++;
        }
        List<String> typed = new ArrayList<>();
        for (int reading = 1; reading <= READINGS; reading++) {
            typed.add(at(call.all("um" + reading), row));
        }
        typed.add(at(call.all("flaw"), row));
        return typed;
    }

    private static String at(List<String> all, int row) {
        return row < all.size() ? all.get(row) : "";
    }

    /** Pieces that are coated together. */
    public record Batch(List<Row> rows) {
        public FilmToRead first() {
            return rows.get(0).piece();
        }
    }

    /**
     * A piece to be read.
     *
     * @param name its part, with its name
     * @param typed five readings and what is wrong to the eye
     * @param judged what they come to
     */
    public record Row(FilmToRead piece, String name, List<String> typed, String judged) {

        boolean filled() {
            return !typed.stream().allMatch(String::isEmpty);
        }
    }

    /** A row of the record as CSV (RFC 4180), to be read and judged as one that was filled in by hand. */
    static String csv(FilmToRead piece, List<String> typed, String on) {
        String flaw = typed.get(READINGS);
        List<String> cells = new ArrayList<>(List.of(
                String.valueOf(piece.batch()),
                piece.lot(),
                piece.finish(),
                piece.limits(),
                piece.part(),
                piece.mark(),
                "1"));
        cells.addAll(typed.subList(0, READINGS));
        cells.addAll(List.of(flaw.isEmpty() ? "" : "no", flaw, typed.stream().allMatch(String::isEmpty) ? "" : on));
        return cells.stream().map(FilmForm::quoted).collect(Collectors.joining(","));
    }

    private static String quoted(String cell) {
        return '"' + cell.replace("\"", "\"\"").replaceAll("\\R", " ") + '"';
    }

    static byte[] record(List<String> lines) {
        return (HEAD + "\r\n" + String.join("\r\n", lines) + "\r\n").getBytes(StandardCharsets.UTF_8);
    }
}
