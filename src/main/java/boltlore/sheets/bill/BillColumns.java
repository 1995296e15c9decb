package boltlore.sheets.bill;

import boltlore.catalogue.Part;
import boltlore.pricing.PricedBill;
import boltlore.sheets.Column;
import boltlore.sheets.Kind;
import java.math.BigDecimal;
import java.util.Currency;
import java.util.Objects;
import java.util.function.Function;
import java.util.stream.Stream;

/** The columns of the costed bill. */
final class BillColumns {

    private BillColumns() {}

    static Column[] of(PricedBill priced) {
        Currency currency = priced.currency();
        int coins = Math.max(0, currency.getDefaultFractionDigits());
        int unitCost = Scales.of(ofParts(priced, Part::cost), coins, 4);
        return new Column[] {
            Column.whole("level", "Level"),
            Column.text("position", "Position").atMost(22),
            Column.text("part", "Part number").atMost(11),
            Column.text("revision", "Rev.").atMost(4),
            Column.text("finish", "Finish").atMost(11),
            Column.text("name", "Name").atMost(25),
            Column.quantity("quantity", "Qty"),
            Column.text("unit", "Unit").atMost(5),
            Column.text("source", "Make, buy").atMost(5),
            Column.decimal("massEach", "Mass each", 3).in("kg"),
            Column.decimal("massExtended", "Mass", 2).in("kg"),
            new Column("unitCost", "Unit cost", Kind.money(currency, unitCost)),
            Column.percent("scrap", "Scrap", 1),
            Column.money("extended", "Cost", currency),
            Column.money("coating", "Coating", currency),
            Column.whole("leadDays", "Lead days"),
            Column.text("hs", "HS code").atMost(8),
            Column.text("origin", "From").atMost(5),
            Column.text("tracked", "Track by").atMost(6),
            Column.text("calledBy", "Called for by").atMost(28)
        };
    }

    private static Stream<BigDecimal> ofParts(PricedBill priced, Function<Part, BigDecimal> number) {
        return priced.rows().stream()
                .map(row -> number.apply(row.item().part()))
                .filter(Objects::nonNull);
    }
}
