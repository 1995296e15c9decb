package boltlore.book;

import boltlore.json.JsonOut;
import boltlore.json.ObjectReader;
import boltlore.json.Range;
import boltlore.json.TextShape;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;

/** What happens to a purchase order; what comes in for it is told of the part. */
public sealed interface PurchaseHappening extends Happening {

    String WHAT = "purchase";

    /** Number of the purchase order. */
    String purchase();

    @Override
    default Subject subject() {
        return new Subject(WHAT, purchase());
    }

    /**
     * A line of a purchase order.
     *
     * @param orderCode the supplier's number of the part
     * @param unitCost in the order's currency
     */
    record Line(String part, String orderCode, BigDecimal quantity, String unit, BigDecimal unitCost, LocalDate due) {

        public JsonOut.Members json() {
            return JsonOut.object()
                    .put("part", part)
                    .put("orderCode", orderCode)
                    .put("quantity", quantity)
                    .put("unit", unit)
                    .put("unitCost", unitCost)
                    .put("due", due.toString());
        }

        static Line read(ObjectReader reader) {
            return new Line(
                    reader.text("part", TextShape.PART_NUMBER),
                    reader.text("orderCode"),
                    reader.decimal("quantity", Range.POSITIVE),
                    reader.text("unit"),
                    reader.decimal("unitCost", Range.NOT_NEGATIVE),
                    reader.date("due"));
        }
    }

    /** It was sent to the supplier; a part stands on one line only. */
    record Placed(String purchase, String supplier, String currency, LocalDate on, List<Line> lines)
            implements PurchaseHappening {

        public static final String KIND = "purchase placed";

        @Override
        public String kind() {
            return KIND;
        }

        @Override
        public JsonOut.Members data() {
            return JsonOut.object()
                    .put("supplier", supplier)
                    .put("currency", currency)
                    .put("on", on.toString())
                    .put("lines", JsonOut.list(lines, Line::json));
        }

        static Placed read(String purchase, ObjectReader reader) {
            return new Placed(
                    purchase,
                    reader.text("supplier"),
                    reader.text("currency"),
                    reader.date("on"),
                    reader.list("lines", Line::read));
        }
    }

    /** The supplier named another day. */
    record Promised(String purchase, String part, LocalDate due) implements PurchaseHappening {

        static final String KIND = "purchase promised";

        @Override
        public String kind() {
            return KIND;
        }

        @Override
        public JsonOut.Members data() {
            return JsonOut.object().put("part", part).put("due", due.toString());
        }

        static Promised read(String purchase, ObjectReader reader) {
            return new Promised(purchase, reader.text("part", TextShape.PART_NUMBER), reader.date("due"));
        }
    }

    /** What has not come will not come. */
    record Closed(String purchase) implements PurchaseHappening {

        static final String KIND = "purchase closed";

        @Override
        public String kind() {
            return KIND;
        }

        @Override
        public JsonOut.Members data() {
            return JsonOut.object();
        }

        static Closed read(String purchase, ObjectReader reader) {
            return new Closed(purchase);
        }
    }
}
