package boltlore.trades.coating;

import boltlore.findings.Finding;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A batch against its film readings.
 *
 * @param sample how many pieces are to be read, and how many may fall short before all of them must be
 * @param pieces one row each time that a piece was read; of one piece the last one counts
 * @param unread parts of which no piece was read
 * @param later pieces that came to the batch after the record was written, for which no reading of the others speaks
 */
public record FilmVerdict(
        OvenBatch batch,
        FilmDemand demand,
        ReadingSample sample,
        List<PieceVerdict> pieces,
        List<String> unread,
        List<String> later,
        Decision decision) {

    /** What becomes of the batch. */
    public enum Decision {
        ACCEPTED,
        /** Enough is read and no more fell short than may, but some of what was read is to be reworked. */
        REWORK,
        /** More pieces fell short than may, and not every piece has been read since. */
        REJECTED,
        /** Too few pieces are read to accept it, and too few fall short to reject it. */
        READ_MORE
    }

    /** Readings of that batch only. */
    public static FilmVerdict of(OvenBatch batch, List<FilmReading> readings) {
        FilmDemand demand = FilmDemand.of(batch.finish());
        List<FilmReading> filled =
                readings.stream().filter(FilmReading::isFilled).toList();
        List<String> later = filled.isEmpty() ? List.of() : later(batch, readings);
        int lot = batch.pieces() - later.size();
        ReadingSample sample = ReadingSample.of(lot);
        List<PieceVerdict> pieces = judged(filled, demand);
        Decision decision = decision(lot, sample, pieces);
        boolean whole = later.isEmpty() || decision == Decision.REJECTED;
        return new FilmVerdict(
                batch, demand, sample, pieces, unread(batch, filled), later, whole ? decision : Decision.READ_MORE);
    }

    /** A record of just this lot, or one that names no lot, is of all its pieces; another one of those that it lists. */
    private static List<String> later(OvenBatch batch, List<FilmReading> readings) {
        String lot = CoatCodes.lot(batch);
        if (readings.stream().map(reading -> reading.sheet().lot()).anyMatch(of -> of.isEmpty() || of.equals(lot))) {
            return List.of();
        }
        Set<String> listed = readings.stream().map(FilmReading::which).collect(Collectors.toSet());
        return FilmPiece.of(batch).stream()
                .map(FilmPiece::which)
                .filter(piece -> !listed.contains(piece))
                .toList();
    }

    private static List<PieceVerdict> judged(List<FilmReading> readings, FilmDemand demand) {
        Map<String, List<FilmReading>> byPiece = readings.stream()
                .collect(Collectors.groupingBy(FilmReading::which, LinkedHashMap::new, Collectors.toList()));
        List<PieceVerdict> judged = new ArrayList<>();
        byPiece.values().forEach(all -> {
            List<FilmReading> sorted =
                    all.stream().sorted(FilmReading.LATEST_LAST).toList();
            for (int i = 0; i < sorted.size(); i++) {
                judged.add(new PieceVerdict(sorted.get(i), demand, i + 1 < sorted.size()));
            }
        });
        return List.copyOf(judged);
    }

    private static List<String> unread(OvenBatch batch, List<FilmReading> readings) {
        return batch.rows().stream()
                .map(row -> row.part().number().text())
                .distinct()
                .filter(part -> readings.stream()
                        .noneMatch(reading -> reading.isRead() && reading.part().equals(part)))
                .toList();
    }

    private static Decision decision(int lot, ReadingSample sample, List<PieceVerdict> pieces) {
        long read = read(pieces);
        if (everThin(pieces) > sample.acceptUpTo() && (read < lot || thin(pieces) > sample.acceptUpTo())) {
            return Decision.REJECTED;
        }
        if (read < sample.pieces()) {
            return Decision.READ_MORE;
        }
        return counting(pieces).allMatch(PieceVerdict::good) ? Decision.ACCEPTED : Decision.REWORK;
    }

    /** What counts of each piece. */
    private static Stream<PieceVerdict> counting(List<PieceVerdict> pieces) {
        return pieces.stream().filter(piece -> !piece.replaced());
    }

    private static long read(List<PieceVerdict> pieces) {
        return counting(pieces).filter(piece -> piece.reading().isRead()).count();
    }

    private static long thin(List<PieceVerdict> pieces) {
        return counting(pieces).filter(PieceVerdict::tooThin).count();
    }

    /**
     * Pieces that fell short in some coating, though they may have been coated again since: they tell of those that nobody
     * has read. Of one coating the last reading counts.
     */
    private static long everThin(List<PieceVerdict> pieces) {
        Map<String, PieceVerdict> last = new LinkedHashMap<>();
        pieces.forEach(piece ->
                last.put(piece.reading().which() + " " + piece.reading().coating(), piece));
        return last.values().stream()
                .filter(PieceVerdict::tooThin)
                .map(piece -> piece.reading().which())
                .distinct()
                .count();
    }

    /** How many pieces are read. */
    public long read() {
        return read(pieces);
    }

    /** How many pieces fall short, or fell short before they were coated again. */
    public long shortfalls() {
        return everThin(pieces);
    }

    /** What cannot leave as it is. */
    List<PieceVerdict> toRework() {
        return counting(pieces).filter(piece -> !piece.good()).toList();
    }

    /** What keeps the batch, its parts and its pieces from being accepted as they are. */
    Stream<Finding> findings() {
        Stream<Finding> parts = pieces.isEmpty()
                ? Stream.of()
                : unread.stream()
                        .map(part ->
                                Finding.of(FilmFinding.PART_NOT_READ, part, "batch", batch.number(), "part", part));
        return Stream.of(
                        whole(),
                        rework(),
                        laterOnes(),
                        lots(),
                        parts,
                        counting(pieces).flatMap(piece -> piece.findings(batch.number())))
                .flatMap(some -> some);
    }

    private Stream<Finding> whole() {
        return switch (decision) {
            case ACCEPTED, REWORK -> Stream.of();
            case REJECTED -> Stream.of(of(FilmFinding.BATCH_REJECTED));
            case READ_MORE -> {
                boolean enough = !pieces.isEmpty() && read() >= sample.pieces();
                yield enough
                        ? Stream.of()
                        : Stream.of(of(pieces.isEmpty() ? FilmFinding.BATCH_NOT_READ : FilmFinding.TOO_FEW_READINGS));
            }
        };
    }

    private Stream<Finding> laterOnes() {
        return later.isEmpty() ? Stream.of() : Stream.of(named(FilmFinding.PIECES_IN_NO_RECORD, later));
    }

    private Stream<Finding> rework() {
        List<PieceVerdict> bad = toRework();
        return bad.isEmpty()
                ? Stream.of()
                : Stream.of(named(
                        FilmFinding.PIECES_TO_REWORK,
                        bad.stream().map(piece -> piece.reading().which()).toList()));
    }

    private Finding named(FilmFinding kind, List<String> which) {
        return Finding.of(
                kind,
                "batch " + batch.number(),
                "batch",
                batch.number(),
                "finish",
                batch.finish().says(),
                "count",
                which.size(),
                "pieces",
                String.join(", ", which));
    }

    /** Where the batch held other pieces when its record was written, or had another number. */
    private Stream<Finding> lots() {
        String lot = CoatCodes.lot(batch);
        return pieces.stream()
                .map(PieceVerdict::reading)
                .filter(reading -> reading.coating() == 1)
                .map(FilmReading::sheet)
                .filter(sheet -> !sheet.lot().isEmpty())
                .filter(sheet -> !sheet.lot().equals(lot) || !sheet.batch().equals(String.valueOf(batch.number())))
                .map(FilmReading.Sheet::batch)
                .distinct()
                .map(was -> Finding.of(
                        FilmFinding.BATCH_CHANGED_SINCE,
                        "batch " + batch.number(),
                        "batch",
                        batch.number(),
                        "finish",
                        batch.finish().says(),
                        "was",
                        was));
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
                read(),
                "needed",
                sample.pieces(),
                "below",
                shortfalls(),
                "allowed",
                sample.acceptUpTo(),
                "pieces",
                batch.pieces());
    }
}
