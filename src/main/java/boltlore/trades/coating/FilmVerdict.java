package boltlore.trades.coating;

import boltlore.findings.Finding;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.stream.Stream;

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

    /** What keeps the batch, its parts and its pieces from being accepted as they are. */
    Stream<Finding> findings() {
        Stream<Finding> whole = decision == Decision.ACCEPTED
                ? Stream.of()
                : Stream.of(
                        of(decision == Decision.REJECTED ? FilmFinding.BATCH_REJECTED : FilmFinding.TOO_FEW_READINGS));
        Stream<Finding> parts = unread.stream()
                .map(part -> Finding.of(FilmFinding.PART_NOT_READ, part, "batch", batch.number(), "part", part));
        return Stream.of(whole, parts, pieces.stream().flatMap(this::of)).flatMap(some -> some);
    }

    private Finding of(FilmFinding kind) {
        return Finding.of(
                kind,
                "batch " + batch.number(),
                "batch",
                batch.number(),
                "finish",
                batch.finish().says(),
                "read",
                pieces.size(),
                "needed",
                sample.pieces(),
                "below",
                shortfalls(),
                "allowed",
                sample.acceptUpTo());
    }

    private Stream<Finding> of(PieceVerdict piece) {
        BigDecimal least = BigDecimal.valueOf(demand.leastUm());
        BigDecimal floor = demand.acceptance().floorUm();
        BigDecimal mean = piece.mean().setScale(1, RoundingMode.HALF_UP);
        BigDecimal lowest = piece.reading().lowest();
        return Stream.of(
                        of(
                                piece.mean().compareTo(least) < 0,
                                FilmFinding.MEAN_BELOW_MINIMUM,
                                piece,
                                "mean",
                                mean,
                                least),
                        of(
                                lowest.compareTo(floor) < 0,
                                FilmFinding.READING_BELOW_MINIMUM,
                                piece,
                                "reading",
                                lowest,
                                floor),
                        of(
                                piece.tooThick(),
                                FilmFinding.MEAN_ABOVE_MAXIMUM,
                                piece,
                                "mean",
                                mean,
                                BigDecimal.valueOf(demand.mostUm())))
                .flatMap(some -> some);
    }

    private Stream<Finding> of(
            boolean isSo, FilmFinding kind, PieceVerdict piece, String valueIs, BigDecimal value, BigDecimal limit) {
        FilmReading reading = piece.reading();
        String which = (reading.part() + " " + reading.piece()).strip();
        return isSo
                ? Stream.of(Finding.of(
                        kind, which, "batch", batch.number(), "piece", which, valueIs, value, "limit", limit))
                : Stream.of();
    }
}
