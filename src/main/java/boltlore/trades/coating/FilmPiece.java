package boltlore.trades.coating;

import java.util.ArrayList;
import java.util.List;

/**
 * One piece of a batch as the record has it.
 *
 * @param mark such as 'BL-1001 3'
 * @param toRead whether it is one of those that are read; of the others what is seen or read besides is written down
 */
record FilmPiece(BatchRow row, String mark, boolean toRead) {

    /** As records name it: 'PV-BL-S BL-1001 3'. */
    String which() {
        return row.part().number() + " " + mark;
    }

    /** All of a batch, row by row, the first of each row to be read. */
    static List<FilmPiece> of(OvenBatch batch) {
        List<Integer> pieces = batch.rows().stream().map(BatchRow::pieces).toList();
        List<Integer> read =
                SampledPieces.draw(pieces, ReadingSample.of(batch.pieces()).pieces());
        List<FilmPiece> all = new ArrayList<>();
        for (int i = 0; i < pieces.size(); i++) {
            BatchRow row = batch.rows().get(i);
            List<String> marks = row.marks().stream().flatMap(PieceMarks::each).toList();
            for (int piece = 0; piece < marks.size(); piece++) {
                all.add(new FilmPiece(row, marks.get(piece), piece < read.get(i)));
            }
        }
        return all;
    }
}
