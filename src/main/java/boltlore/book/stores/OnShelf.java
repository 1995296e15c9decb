package boltlore.book.stores;

import boltlore.book.Held;
import boltlore.book.db.Reading;
import boltlore.book.db.Shop.Piece;
import boltlore.book.db.Stock;
import boltlore.faults.Fault;
import boltlore.faults.Outcome;
import boltlore.measure.Digits;
import java.math.BigDecimal;
import java.util.List;

/** How much of what the book has in the stores may be taken: not what is kept for another order, nor what the coating shop has. */
final class OnShelf {

    private OnShelf() {}

    /** What lies there of a part, is in no load of the coating shop and is kept for no other order. */
    static BigDecimal free(Reading reading, String part, String finish, String order) {
        BigDecimal lying = lying(reading, part, finish)
                .subtract(BigDecimal.valueOf(inShop(reading, part, finish).size()));
        return reading.stock().reservations().stream()
                .filter(kept -> kept.part().equals(part)
                        && kept.finish().equals(finish)
                        && !kept.order().equals(order))
                .map(Stock.Reservation::quantity)
                .reduce(lying, BigDecimal::subtract)
                .max(BigDecimal.ZERO);
    }

    private static BigDecimal lying(Reading reading, String part, String finish) {
        return reading.stock().of(part).stream()
                .filter(row -> row.held().finish().equals(finish))
                .map(Stock.Row::quantity)
                .reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    private static List<Piece> inShop(Reading reading, String part, String finish) {
        return finish.isEmpty() ? BarePieces.inShop(reading, part) : List.of();
    }

    /** Whether so much lies there just so, and the coating shop has not got it. */
    static Outcome<BigDecimal> there(Reading reading, Held held, BigDecimal quantity) {
        BigDecimal lying = reading.stock().lying(held);
        List<Piece> inShop = inShop(reading, held.part(), held.finish());
        BigDecimal mayGo = lying.min(
                        lying(reading, held.part(), held.finish()).subtract(BigDecimal.valueOf(inShop.size())))
                .max(BigDecimal.ZERO);
        return mayGo.compareTo(quantity) < 0
                ? Outcome.faulty(
                        lying.compareTo(quantity) < 0
                                ? tooLittle(held.toString(), quantity, lying)
                                : inLoads(held, quantity, mayGo, inShop))
                : Outcome.sound(lying);
    }

    private static Fault inLoads(Held held, BigDecimal wanted, BigDecimal mayGo, List<Piece> inShop) {
        return Fault.of(
                held.toString(),
                Digits.plain(wanted) + " wanted where " + Digits.plain(mayGo) + " may be taken: "
                        + BarePieces.where(inShop),
                "no more than that",
                "'boltlore coating back PIECE' takes one out of its load; 'coating reject' and 'coating scrap' throw it away.");
    }

    static Fault tooLittle(String what, BigDecimal wanted, BigDecimal lying) {
        return Fault.of(
                what,
                Digits.plain(wanted) + " wanted where " + Digits.plain(lying) + " may be taken",
                "no more than that",
                "Look with 'boltlore stock list'; if more lies there, 'boltlore stock count' says so.");
    }
}
