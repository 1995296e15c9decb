package boltlore.book.stores;

import boltlore.book.By;
import boltlore.book.ShopHappening.Coat;
import boltlore.book.ShopHappening.Judged;
import boltlore.book.db.Book;
import boltlore.book.db.Shop.Piece;
import boltlore.book.db.Writing;
import boltlore.book.db.Written;
import boltlore.catalogue.Catalogue;
import boltlore.faults.Outcome;
import boltlore.trades.coating.CoatPlan;
import boltlore.trades.coating.FilmToRead;
import boltlore.trades.coating.FilmVerdict.Decision;
import boltlore.trades.coating.RecordVerdict;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Film records: what they reject is rejected in the coating shop too, in the same transaction. */
public final class FilmDesk {

    private final Book book;
    private final By by;
    private final Catalogue catalogue;

    public FilmDesk(Book book, By by, Catalogue catalogue) {
        this.book = book;
        this.by = by;
        this.catalogue = catalogue;
    }

    /**
     * A record as it was judged.
     *
     * @param findings of the judgement, as codes
     */
    public record Film(CoatPlan plan, RecordVerdict verdict, boolean passed, List<String> findings) {}

    /** What is kept of each order, and the pieces that are rejected with it. */
    public record Kept(List<Judged> records, List<Piece> rejected) {}

    /**
     * Keeps a record. All pieces of a rejected batch, and those of others that are not good, are rejected where they came out
     * of the oven, back from the coater, or into the stores; what is picked already is held by the record itself.
     *
     * @param record as it was read
     */
    public Outcome<Written<Kept>> keep(List<String> orders, byte[] record, Film film, String reason) {
        return book.write(
                by,
                writing -> RackDesk.kept(writing, orders, "film", record, film.passed(), film.findings(), reason)
                        .then(records -> Outcome.sound(new Kept(records, rejected(writing, film)))));
    }

    private List<Piece> rejected(Writing writing, Film film) {
        CoatDesk desk = new CoatDesk(book, by, catalogue);
        BarePieces bare = new BarePieces(writing, catalogue);
        List<Piece> rejected = new ArrayList<>();
        why(film)
                .forEach((mark, why) -> piece(writing, mark)
                        .filter(piece -> piece.state().next().contains(Coat.REJECTED))
                        .map(piece -> desk.move(writing, bare, piece, Coat.REJECTED, "", why))
                        .ifPresent(moved -> {
                            if (moved instanceof Outcome.Sound<Piece> sound) {
                                rejected.add(sound.value());
                            }
                        }));
        return List.copyOf(rejected);
    }

    /** A part and the mark of its piece, 'BL-1001 3'. */
    private record Marked(String part, String mark) {}

    private static Map<Marked, String> why(Film film) {
        Map<Marked, String> why = new LinkedHashMap<>();
        film.verdict().film().forEach(batch -> {
            if (batch.decision() == Decision.REJECTED) {
                int number = batch.batch().number();
                FilmToRead.of(film.plan()).stream()
                        .filter(piece -> piece.batch() == number)
                        .forEach(piece -> why.put(
                                new Marked(piece.part(), piece.mark()), "film record: batch " + number + " rejected"));
            }
            batch.pieces().stream()
                    .filter(piece -> !piece.replaced() && !piece.good())
                    .forEach(piece -> why.put(
                            new Marked(piece.reading().part(), piece.reading().piece()),
                            "film record: " + piece.why()));
        });
        return why;
    }

    /** The third piece of its order that was not given up is the one that sheets call 3. */
    private static Optional<Piece> piece(Writing writing, Marked marked) {
        int space = marked.mark().lastIndexOf(' ');
        if (space < 0 || !marked.mark().substring(space + 1).matches("[1-9][0-9]{0,8}")) {
            return Optional.empty();
        }
        int number = Integer.parseInt(marked.mark().substring(space + 1));
        return CoatDesk.ofPart(writing, marked.mark().substring(0, space), marked.part()).stream()
                .filter(CoatDesk::isAlive)
                .sorted(Comparator.comparingInt(CoatDesk::number))
                .skip(number - 1L)
                .findFirst();
    }
}
