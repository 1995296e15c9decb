package boltlore.trades.coating;

import java.math.BigDecimal;

/**
 * One piece against its film.
 *
 * @param good whether mean and lowest reading reach what they must
 * @param tooThick whether the mean is over the most that the powders' data allows
 */
public record PieceVerdict(FilmReading reading, BigDecimal mean, boolean good, boolean tooThick) {

    static PieceVerdict of(FilmReading reading, FilmDemand demand) {
        BigDecimal mean = FilmAcceptance.mean(reading.um());
        boolean tooThick = mean.compareTo(BigDecimal.valueOf(demand.mostUm())) > 0;
        return new PieceVerdict(reading, mean, demand.acceptance().accepts(reading.um()), tooThick);
    }
}
