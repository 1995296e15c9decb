package boltlore.trades.coating;

import java.util.List;

/**
 * A batch against its film readings.
 *
 * @param sample how many pieces are to be read, and how many may fall short
 * @param unread parts of which no piece was read
 */
public record FilmVerdict(
        OvenBatch batch,
        FilmDemand demand,
        ReadingSample sample,
        List<PieceVerdict> pieces,
        List<String> unread,
        Decision decision) {

    /** What becomes of the batch. */
    public enum Decision {
        ACCEPTED,
        /** More pieces fall short than may. */
        REJECTED,
        /** Too few pieces are read to accept it, and too few fall short to reject it. */
        READ_MORE
    }

    /** Readings of that batch only. */
    public static FilmVerdict of(OvenBatch batch, List<FilmReading> readings) {
        FilmDemand demand = FilmDemand.of(batch.finish());
        ReadingSample sample = ReadingSample.of(batch.pieces());
        List<PieceVerdict> pieces = readings.stream()
                .map(reading -> PieceVerdict.of(reading, demand))
                .toList();
        return new FilmVerdict(batch, demand, sample, pieces, unread(batch, readings), decision(sample, pieces));
    }

    private static List<String> unread(OvenBatch batch, List<FilmReading> readings) {
        return batch.rows().stream()
                .map(row -> row.part().number().text())
                .distinct()
                .filter(part ->
                        readings.stream().noneMatch(reading -> reading.part().equals(part)))
                .toList();
    }

    private static Decision decision(ReadingSample sample, List<PieceVerdict> pieces) {
        if (pieces.stream().filter(piece -> !piece.good()).count() > sample.acceptUpTo()) {
            return Decision.REJECTED;
        }
        return pieces.size() < sample.pieces() ? Decision.READ_MORE : Decision.ACCEPTED;
    }

    /** How many pieces fall short. */
    public long shortfalls() {
        return pieces.stream().filter(piece -> !piece.good()).count();
    }
}
