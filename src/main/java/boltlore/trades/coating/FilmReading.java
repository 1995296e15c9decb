package boltlore.trades.coating;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A line of the record: what was read, or seen, on one piece after its last coat.
 *
 * @param sheet what the record says that it was written for
 * @param part number of the part
 * @param piece its mark, such as 'BL-1001 3'
 * @param coating 1 where the piece was coated once, 2 where it was coated again
 * @param on day of the reading, or null where nobody wrote it down
 * @param um one reading a place, in µm; none where the piece was rejected by eye only
 * @param flaw why it is rejected by eye, or empty
 */
public record FilmReading(
        Sheet sheet,
        String part,
        String piece,
        int coating,
        @Nullable LocalDate on,
        List<BigDecimal> um,
        String flaw) {

    /**
     * The batch that a record was written for, as it was called then.
     *
     * @param batch its number in the plan of that day, which is none of today's
     * @param lot code of what was in it
     * @param finish its finish in words
     * @param limits code of its film limits
     */
    public record Sheet(String batch, String lot, String finish, String limits) {}

    /** Later coatings last, and of one coating later days last. */
    static final Comparator<FilmReading> LATEST_LAST = Comparator.comparingInt(FilmReading::coating)
            .thenComparing(FilmReading::on, Comparator.nullsFirst(Comparator.naturalOrder()));

    public FilmReading {
        um = List.copyOf(um);
    }

    /** 'PV-BL-S BL-1001 3': no other piece is called so. */
    public String which() {
        return part + " " + piece;
    }

    /** The order that its mark names. */
    String order() {
        int end = piece.lastIndexOf(' ');
        return end < 0 ? piece : piece.substring(0, end);
    }

    /** Whether somebody has filled it in; else the record only says that the piece was coated with the others of its lot. */
    public boolean isFilled() {
        return isRead() || !flaw.isEmpty();
    }

    boolean isRead() {
        return !um.isEmpty();
    }
}
