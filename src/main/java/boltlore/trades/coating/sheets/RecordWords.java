package boltlore.trades.coating.sheets;

import boltlore.measure.Digits;
import boltlore.trades.coating.FilmDemand;
import boltlore.trades.coating.FilmReading;
import boltlore.trades.coating.FilmVerdict;
import boltlore.trades.coating.PieceVerdict;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** What is worth saying about what was read. */
public final class RecordWords {

    private RecordWords() {}

    /** '70, 72, 68, 75, 71'. */
    static String readings(FilmReading reading) {
        return reading.um().stream().map(Digits::plain).collect(Collectors.joining(", "));
    }

    /** 'good', or what it falls short of. */
    public static String verdict(PieceVerdict piece, FilmDemand demand) {
        List<String> words = new ArrayList<>();
        if (piece.mean().compareTo(BigDecimal.valueOf(demand.leastUm())) < 0) {
            words.add("mean under " + demand.leastUm() + " µm");
        }
        if (piece.reading().lowest().compareTo(demand.acceptance().floorUm()) < 0) {
            words.add("a reading under " + Digits.plain(demand.acceptance().floorUm()) + " µm");
        }
        if (piece.tooThick()) {
            words.add("mean over " + demand.mostUm() + " µm: tell engineering");
        }
        return words.isEmpty() ? "good" : String.join(", ", words);
    }

    /** Parts that nobody read, and pieces that are too thick. */
    public static String look(FilmVerdict film) {
        List<String> words = new ArrayList<>();
        if (!film.unread().isEmpty()) {
            words.add("not read: " + String.join(", ", film.unread()));
        }
        long thick = film.pieces().stream().filter(PieceVerdict::tooThick).count();
        if (thick > 0) {
            words.add(thick + " over " + film.demand().mostUm() + " µm: tell engineering");
        }
        return String.join("; ", words);
    }
}
