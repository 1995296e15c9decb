package boltlore.book.stores;

import boltlore.book.Held;
import boltlore.book.ShopHappening.Coat;
import boltlore.book.db.Reading;
import boltlore.book.db.Shop.Piece;
import boltlore.book.db.Stock;
import boltlore.book.db.Writing;
import boltlore.faults.Fault;
import boltlore.faults.Outcome;
import java.math.BigDecimal;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Where a piece may go in the coating shop, and what of it lies in the stores. */
final class CoatRules {

    private CoatRules() {}

    static Fault cannot(Piece piece, Coat to) {
        String may = piece.state().next().stream().map(Coat::written).collect(Collectors.joining(", "));
        return Fault.of(
                "piece " + piece.piece(),
                "'" + piece.state().written() + "', from where it does not go to '" + to.written() + "'",
                may.isEmpty() ? "nothing further" : "one of " + may,
                "");
    }

    /** A booth sprays one powder at a time, so that a load has one finish. */
    static Outcome<Boolean> onePowder(Reading reading, Piece piece, Coat to, String load) {
        return reading.shop().pieces(List.of(Coat.HUNG), "").stream()
                .filter(other -> to == Coat.HUNG
                        && other.load().equals(load)
                        && !other.finish().equals(piece.finish()))
                .findFirst()
                .map(other -> Outcome.<Boolean>faulty(Fault.of(
                        "piece " + piece.piece(),
                        piece.finish() + " in load " + load + ", in which " + other.piece() + " hangs for "
                                + other.finish(),
                        "one powder in a load",
                        "Hang it in a load of its own.")))
                .orElseGet(() -> Outcome.sound(true));
    }

    static @Nullable Held lying(Writing writing, String part, String finish) {
        return writing.stock().of(part).stream()
                .filter(row ->
                        row.held().finish().equals(finish) && row.quantity().compareTo(BigDecimal.ONE) >= 0)
                .map(Stock.Row::held)
                .findFirst()
                .orElse(null);
    }
}
