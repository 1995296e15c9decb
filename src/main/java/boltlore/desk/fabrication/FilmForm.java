package boltlore.desk.fabrication;

import boltlore.desk.frame.Call;
import boltlore.trades.coating.FilmToRead;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * Pieces whose film is to be read, with what stands in their fields.
 *
 * @param query names the orders
 */
public record FilmForm(List<String> told, List<String> orders, String query, String remark, List<Batch> batches) {

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
     * @param typed five readings and what is wrong to the eye
     * @param judged what they come to
     */
    public record Row(FilmToRead piece, List<String> typed, String judged) {

        boolean filled() {
            return !typed.stream().allMatch(String::isEmpty);
        }
    }
}
