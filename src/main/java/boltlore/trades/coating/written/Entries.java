package boltlore.trades.coating.written;

import boltlore.trades.coating.FilmReading;
import boltlore.trades.coating.PowderIssued;
import java.util.List;
import java.util.stream.Stream;

/** All entries of some files. */
record Entries(List<Written<FilmReading>> film, List<Written<PowderIssued>> issued) {

    static final Entries NONE = new Entries(List.of(), List.of());

    Entries and(Entries others) {
        return new Entries(
                Stream.concat(film.stream(), others.film.stream()).toList(),
                Stream.concat(issued.stream(), others.issued.stream()).toList());
    }
}
