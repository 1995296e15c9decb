package boltlore.book.stores;

import boltlore.book.Held;
import boltlore.book.ShopHappening.Coat;
import boltlore.book.db.Shop.Piece;
import boltlore.book.db.Stock;
import boltlore.book.db.Writing;
import boltlore.faults.Fault;
import java.math.BigDecimal;
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

    static @Nullable Held lying(Writing writing, String part, String finish) {
        return writing.stock().of(part).stream()
                .filter(row ->
                        row.held().finish().equals(finish) && row.quantity().compareTo(BigDecimal.ONE) >= 0)
                .map(Stock.Row::held)
                .findFirst()
                .orElse(null);
    }
}
