package boltlore.desk.stores;

import boltlore.book.PurchaseStanding;
import boltlore.book.PurchaseStanding.LineStanding;
import boltlore.book.db.Reading;
import boltlore.measure.Digits;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;

/**
 * A line of a purchase order of which something is still to come.
 *
 * @param due day as 2026-06-19
 * @param late whether that day is past
 * @param left with its unit
 */
public record DueIn(
        String purchase,
        String supplier,
        String part,
        String orderCode,
        String left,
        String of,
        String due,
        boolean late) {

    /** First what is due first. */
    public static List<DueIn> all(Reading reading, LocalDate today) {
        return reading.stock().purchases(false).stream()
                .flatMap(purchase -> purchase.lines().stream()
                        .filter(line -> line.left().signum() > 0)
                        .map(line -> of(purchase, line, today)))
                .sorted(Comparator.comparing(DueIn::due)
                        .thenComparing(DueIn::purchase)
                        .thenComparing(DueIn::part))
                .toList();
    }

    private static DueIn of(PurchaseStanding purchase, LineStanding line, LocalDate today) {
        return new DueIn(
                purchase.purchase(),
                purchase.supplier(),
                line.part(),
                line.orderCode(),
                Digits.plain(line.left()) + " " + line.unit(),
                Digits.plain(line.quantity()) + " " + line.unit(),
                line.due().toString(),
                line.due().isBefore(today));
    }
}
