package boltlore.trades.coating;

import java.util.List;

/**
 * A line of the film record before anybody has filled it in.
 *
 * @param batch number of the batch in this plan
 * @param lot code of what is coated together
 * @param finish in English
 * @param limits code of the film limits
 * @param rule by what a piece and the batch are accepted, in sentences
 * @param mark of the piece, such as 'BL-1001 3'
 * @param toRead whether it is one of those that are read; of the others what is seen or read besides is written down
 */
public record FilmToRead(
        int batch, String lot, String finish, String limits, String rule, String part, String mark, boolean toRead) {

    /** All of a plan, batch by batch. */
    public static List<FilmToRead> of(CoatPlan plan) {
        return plan.batches().stream()
                .flatMap(batch -> FilmPiece.of(batch).stream().map(piece -> of(batch, piece)))
                .toList();
    }

    private static FilmToRead of(OvenBatch batch, FilmPiece piece) {
        return new FilmToRead(
                batch.number(),
                CoatCodes.lot(batch),
                batch.finish().says().english(),
                CoatCodes.limits(batch.finish()),
                FilmPage.rule(batch),
                piece.row().part().number().text(),
                piece.mark(),
                piece.toRead());
    }
}
