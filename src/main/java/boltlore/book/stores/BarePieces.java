package boltlore.book.stores;

import boltlore.book.Held;
import boltlore.book.ShopHappening.Coat;
import boltlore.book.StockHappening;
import boltlore.book.db.Reading;
import boltlore.book.db.Shop.Piece;
import boltlore.book.db.Stock;
import boltlore.book.db.Writing;
import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Part;
import boltlore.catalogue.Tracked;
import boltlore.faults.Fault;
import boltlore.faults.Outcome;
import boltlore.measure.PartNumber;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** The pieces as they were made: each that hangs, is out, or waits for its judgement lies bare in the stores' account. */
final class BarePieces {

    private static final List<Coat> IN_SHOP = List.of(Coat.HUNG, Coat.COATED, Coat.OUT, Coat.BACK, Coat.REJECTED);

    private static final int SHOWN = 3;

    private final Writing writing;
    private final Catalogue catalogue;
    private final Map<String, Integer> taken = new TreeMap<>();

    BarePieces(Writing writing, Catalogue catalogue) {
        this.writing = writing;
        this.catalogue = catalogue;
        writing.shop().pieces(IN_SHOP, "").forEach(piece -> taken.merge(piece.part(), 1, Integer::sum));
    }

    /** Those of a part that the coating shop has, and that nobody else may take, move or throw away. */
    static List<Piece> inShop(Reading reading, String part) {
        return reading.shop().ofPart(part, IN_SHOP);
    }

    /** 'BL-1/BR-1/1 is hung in load L-1; BL-1/BR-1/2 is out at Coater B'. */
    static String where(List<Piece> inShop) {
        return inShop.stream()
                        .limit(SHOWN)
                        .map(piece -> piece.piece() + " is " + piece.state().written() + place(piece))
                        .collect(Collectors.joining("; "))
                + (inShop.size() > SHOWN ? " and " + (inShop.size() - SHOWN) + " more" : "");
    }

    private static String place(Piece piece) {
        if (piece.load().isEmpty()) {
            return "";
        }
        return piece.state() == Coat.OUT ? " at " + piece.load() : " in load " + piece.load();
    }

    /** One that lies there and is in no load yet, or comes in with a reason that says where it is from. */
    Outcome<Boolean> toShop(Piece piece, String reason) {
        int before = taken.getOrDefault(piece.part(), 0);
        BigDecimal lying = writing.stock().of(piece.part()).stream()
                .filter(row -> row.held().finish().isEmpty())
                .map(Stock.Row::quantity)
                .reduce(BigDecimal.ZERO, BigDecimal::add);
        Outcome<Boolean> there = lying.compareTo(BigDecimal.valueOf(before + 1L)) >= 0
                ? Outcome.sound(true)
                : in(piece, reason).then(held -> Outcome.sound(true));
        if (there instanceof Outcome.Sound<Boolean>) {
            taken.put(piece.part(), before + 1);
        }
        return there;
    }

    /** The one that is accepted, scrapped or taken in now. */
    Outcome<Held> out(Piece piece, String reason) {
        Held bare = lying(piece.part(), "");
        return bare != null ? Outcome.sound(bare) : in(piece, reason);
    }

    @Nullable
    Held lying(String part, String finish) {
        return writing.stock().of(part).stream()
                .filter(row ->
                        row.held().finish().equals(finish) && row.quantity().compareTo(BigDecimal.ONE) >= 0)
                .map(Stock.Row::held)
                .findFirst()
                .orElse(null);
    }

    private Outcome<Held> in(Piece piece, String reason) {
        Part part = catalogue.parts().get(new PartNumber(piece.part()));
        Tracked tracked = part == null ? null : part.tracked();
        if (part == null || tracked != null || reason.isBlank()) {
            return Outcome.faulty(Fault.of(
                    "piece " + piece.piece(),
                    "no bare " + piece.part() + " in the stores for it"
                            + (tracked != null
                                    ? ", of which the " + (tracked == Tracked.LOT ? "lot" : "serial number")
                                            + " is written down"
                                    : ""),
                    "the piece as it was made, taken in"
                            + (tracked != null ? "" : ", or a reason that says where it is from"),
                    "'boltlore stock receive " + piece.part() + " 1' takes it in."));
        }
        Held held = new Held(piece.part(), "", "", "", part.bin());
        writing.add(new StockHappening.Received(held, BigDecimal.ONE, "", part.revision()), reason);
        return Outcome.sound(held);
    }
}
