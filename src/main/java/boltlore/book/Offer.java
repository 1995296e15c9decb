package boltlore.book;

import boltlore.json.JsonOut;
import boltlore.json.ObjectReader;
import boltlore.json.Range;
import boltlore.json.TextShape;
import java.math.BigDecimal;
import java.time.LocalDate;

/**
 * What a customer was offered.
 *
 * @param currency code (ISO 4217)
 * @param net after discount, before tax
 * @param total what the customer pays
 * @param leadDays calendar days from the confirmed order to shipping
 */
public record Offer(
        LocalDate on, LocalDate validUntil, String currency, BigDecimal net, BigDecimal total, int leadDays) {

    private static final int MOST_DAYS = 100_000;

    public JsonOut.Members json() {
        return JsonOut.object()
                .put("on", on.toString())
                .put("validUntil", validUntil.toString())
                .put("currency", currency)
                .put("net", net)
                .put("total", total)
                .put("leadDays", leadDays);
    }

    public static Offer read(ObjectReader reader) {
        return new Offer(
                reader.date("on"),
                reader.date("validUntil"),
                reader.text("currency", TextShape.CURRENCY),
                reader.decimal("net", Range.NOT_NEGATIVE),
                reader.decimal("total", Range.NOT_NEGATIVE),
                reader.whole("leadDays", 0, MOST_DAYS));
    }
}
