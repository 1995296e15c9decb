package boltlore.trades.coating;

import boltlore.catalogue.Finish;
import boltlore.catalogue.PowderCoat;

/**
 * Film that a finish asks for, all coats together.
 *
 * @param leastUm least mean in µm
 * @param mostUm most film in µm
 */
public record FilmDemand(int leastUm, int mostUm) {

    /** Film in µm that may stay under the head or washer of a preloaded joint; a constructional-steel technical note. */
    public static final int MOST_UNDER_PRELOAD_UM = 50;

    public static FilmDemand of(Finish finish) {
        return new FilmDemand(
                finish.coats().stream().mapToInt(PowderCoat::filmMinUm).sum(),
                finish.coats().stream().mapToInt(PowderCoat::filmMaxUm).sum());
    }

    public FilmAcceptance acceptance() {
        return new FilmAcceptance(leastUm);
    }
}
