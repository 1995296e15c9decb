package boltlore.book.db;

import boltlore.book.Happening;
import boltlore.book.PurchaseHappening;
import boltlore.book.PurchaseHappening.Line;
import boltlore.book.StockHappening;
import java.math.BigDecimal;
import java.util.List;
import org.jdbi.v3.core.Handle;

/** Purchase orders and what of them has come. */
final class PurchaseSum implements Sum {

    @Override
    public List<String> tables() {
        return List.of("purchase purchase", "purchase_line purchase part");
    }

    @Override
    public void take(Handle handle, long entry, Happening happening) {
        if (happening instanceof PurchaseHappening.Placed placed) {
            placed(handle, entry, placed);
        } else if (happening instanceof PurchaseHappening.Promised promised) {
            handle.execute(
                    "update purchase_line set due = ? where purchase = ? and part = ?",
                    promised.due().toString(),
                    promised.purchase(),
                    promised.part());
        } else if (happening instanceof PurchaseHappening.Closed closed) {
            close(handle, closed.purchase());
        } else if (happening instanceof StockHappening.Received received
                && !received.purchase().isEmpty()) {
            received(handle, received.purchase(), received.held().part(), received.quantity());
        } else if (happening instanceof StockHappening.Unreceived wrong
                && !wrong.purchase().isEmpty()) {
            handle.execute("update purchase set state = 'open' where purchase = ?", wrong.purchase());
            received(
                    handle,
                    wrong.purchase(),
                    wrong.held().part(),
                    wrong.quantity().negate());
        }
    }

    private static void placed(Handle handle, long entry, PurchaseHappening.Placed placed) {
        handle.execute(
                "insert into purchase (purchase, supplier, currency, placed_on, state, entry) values (?, ?, ?, ?, 'open', ?)",
                placed.purchase(),
                placed.supplier(),
                placed.currency(),
                placed.on().toString(),
                entry);
        int number = 0;
        for (Line line : placed.lines()) {
            handle.execute(
                    "insert into purchase_line (purchase, part, line, order_code, quantity, unit, unit_cost, due, received)"
                            + " values (?, ?, ?, ?, ?, ?, ?, ?, '0')",
                    placed.purchase(),
                    line.part(),
                    ++number,
                    line.orderCode(),
                    line.quantity().toPlainString(),
                    line.unit(),
                    line.unitCost().toPlainString(),
                    line.due().toString());
        }
    }

    private static void close(Handle handle, String purchase) {
        handle.execute("update purchase set state = 'closed' where purchase = ?", purchase);
    }

    /** A purchase order closes by itself when all of it has come. */
    private static void received(Handle handle, String purchase, String part, BigDecimal more) {
        BigDecimal before = handle.createQuery("select received from purchase_line where purchase = ? and part = ?")
                .bind(0, purchase)
                .bind(1, part)
                .mapTo(String.class)
                .findOne()
                .map(BigDecimal::new)
                .orElse(BigDecimal.ZERO);
        handle.execute(
                "update purchase_line set received = ? where purchase = ? and part = ?",
                StockSum.plain(before.add(more)),
                purchase,
                part);
        boolean whole = new Stock(handle)
                .purchase(purchase)
                .map(all -> all.lines().stream().allMatch(line -> line.left().signum() == 0))
                .orElse(false);
        if (whole) {
            close(handle, purchase);
        }
    }
}
