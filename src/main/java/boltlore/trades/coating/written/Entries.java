package boltlore.trades.coating.written;

import boltlore.trades.coating.FilmReading;
import boltlore.trades.coating.PowderIssued;
import java.util.List;
import java.util.stream.Stream;

/**
 * All entries of some files.
 *
 * @param filmRead whether one of them is for film readings, though none may be filled in
 */
record Entries(boolean filmRead, List<Written<FilmReading>> film, List<Written<PowderIssued>> issued) {

    static final Entries NONE = new Entries(false, List.of(), List.of());

    Entries and(Entries others) {
        return new Entries(
                filmRead || others.filmRead,
                Stream.concat(film.stream(), others.film.stream()).toList(),
                Stream.concat(issued.stream(), others.issued.stream()).toList());
    }

    boolean isFilled() {
        return !issued.isEmpty()
                || film.stream().anyMatch(written -> written.value().isFilled());
    }
}
