package boltlore.book;

import boltlore.json.JsonOut;
import boltlore.json.ObjectReader;
import boltlore.json.Range;
import boltlore.json.TextShape;
import java.math.BigDecimal;

/** What happens to a part in the stores. Quantities are in the part's unit and above 0 unless it is said otherwise. */
public sealed interface StockHappening extends Happening {

    String WHAT = "part";

    Held held();

    @Override
    default Subject subject() {
        return new Subject(WHAT, held().part());
    }

    /**
     * It came in.
     *
     * @param purchase the purchase order that it was ordered with, or empty where it was made here or found
     * @param revision issue of the part that it is
     */
    record Received(Held held, BigDecimal quantity, String purchase, String revision) implements StockHappening {

        static final String KIND = "stock received";

        @Override
        public String kind() {
            return KIND;
        }

        @Override
        public JsonOut.Members data() {
            return held.json()
                    .put("quantity", quantity)
                    .putIfAny("purchase", purchase)
                    .putIfAny("revision", revision);
        }

        static Received read(String part, ObjectReader reader) {
            return new Received(
                    Held.read(part, reader),
                    amount(reader),
                    reader.findText("purchase", TextShape.ORDER_NAME).orElse(""),
                    reader.findText("revision").orElse(""));
        }
    }

    /**
     * It had not come in: a receipt was written down wrongly and is taken back, all of it.
     *
     * @param receipt entry of the receipt
     */
    record Unreceived(Held held, BigDecimal quantity, String purchase, long receipt) implements StockHappening {

        static final String KIND = "stock receipt taken back";

        @Override
        public String kind() {
            return KIND;
        }

        @Override
        public JsonOut.Members data() {
            return held.json()
                    .put("quantity", quantity)
                    .putIfAny("purchase", purchase)
                    .put("receipt", receipt);
        }

        static Unreceived read(String part, ObjectReader reader) {
            return new Unreceived(
                    Held.read(part, reader),
                    amount(reader),
                    reader.findText("purchase", TextShape.ORDER_NAME).orElse(""),
                    reader.whole("receipt", 1, Integer.MAX_VALUE));
        }
    }

    /**
     * It went out for an order.
     *
     * @param instead the part in whose place it was taken, or empty
     * @param concession number or words under which that is allowed, or empty
     */
    record Issued(Held held, BigDecimal quantity, String order, String instead, String concession)
            implements StockHappening {

        static final String KIND = "stock issued";

        @Override
        public String kind() {
            return KIND;
        }

        @Override
        public JsonOut.Members data() {
            return held.json()
                    .put("quantity", quantity)
                    .put("order", order)
                    .putIfAny("instead", instead)
                    .putIfAny("concession", concession);
        }

        static Issued read(String part, ObjectReader reader) {
            return new Issued(
                    Held.read(part, reader),
                    amount(reader),
                    reader.text("order", TextShape.ORDER_NAME),
                    reader.findText("instead", TextShape.PART_NUMBER).orElse(""),
                    reader.findText("concession").orElse(""));
        }
    }

    /** It came back from an order. */
    record Returned(Held held, BigDecimal quantity, String order, String instead) implements StockHappening {

        static final String KIND = "stock returned";

        @Override
        public String kind() {
            return KIND;
        }

        @Override
        public JsonOut.Members data() {
            return held.json().put("quantity", quantity).put("order", order).putIfAny("instead", instead);
        }

        static Returned read(String part, ObjectReader reader) {
            return new Returned(
                    Held.read(part, reader),
                    amount(reader),
                    reader.text("order", TextShape.ORDER_NAME),
                    reader.findText("instead", TextShape.PART_NUMBER).orElse(""));
        }
    }

    /** It lies in another bin now. */
    record Moved(Held held, BigDecimal quantity, String to) implements StockHappening {

        static final String KIND = "stock moved";

        @Override
        public String kind() {
            return KIND;
        }

        @Override
        public JsonOut.Members data() {
            return held.json().put("quantity", quantity).put("to", to);
        }

        static Moved read(String part, ObjectReader reader) {
            return new Moved(Held.read(part, reader), amount(reader), reader.text("to", TextShape.LINE));
        }
    }

    /**
     * It was counted.
     *
     * @param counted 0 or more
     * @param booked what the book held until then
     */
    record Counted(Held held, BigDecimal counted, BigDecimal booked) implements StockHappening {

        static final String KIND = "stock counted";

        @Override
        public String kind() {
            return KIND;
        }

        @Override
        public JsonOut.Members data() {
            return held.json().put("counted", counted).put("booked", booked);
        }

        static Counted read(String part, ObjectReader reader) {
            return new Counted(
                    Held.read(part, reader),
                    reader.decimal("counted", Range.NOT_NEGATIVE),
                    reader.decimal("booked", Range.NOT_NEGATIVE));
        }
    }

    /**
     * It went into an assembly that was made here.
     *
     * @param into the assembly
     */
    record BuiltIn(Held held, BigDecimal quantity, String into) implements StockHappening {

        static final String KIND = "stock built in";

        @Override
        public String kind() {
            return KIND;
        }

        @Override
        public JsonOut.Members data() {
            return held.json().put("quantity", quantity).put("into", into);
        }

        static BuiltIn read(String part, ObjectReader reader) {
            return new BuiltIn(Held.read(part, reader), amount(reader), reader.text("into", TextShape.PART_NUMBER));
        }
    }

    /** It was thrown away. */
    record Scrapped(Held held, BigDecimal quantity) implements StockHappening {

        static final String KIND = "stock scrapped";

        @Override
        public String kind() {
            return KIND;
        }

        @Override
        public JsonOut.Members data() {
            return held.json().put("quantity", quantity);
        }

        static Scrapped read(String part, ObjectReader reader) {
            return new Scrapped(Held.read(part, reader), amount(reader));
        }
    }

    /**
     * It has another finish now.
     *
     * @param to empty where it was stripped
     */
    record Coated(Held held, BigDecimal quantity, String to) implements StockHappening {

        static final String KIND = "stock coated";

        @Override
        public String kind() {
            return KIND;
        }

        @Override
        public JsonOut.Members data() {
            return held.json().put("quantity", quantity).putIfAny("to", to);
        }

        static Coated read(String part, ObjectReader reader) {
            return new Coated(
                    Held.read(part, reader),
                    amount(reader),
                    reader.findText("to", TextShape.LINE).orElse(""));
        }
    }

    /**
     * So much of it is kept for an order, in whatever bin and lot.
     *
     * @param quantity 0 where nothing is kept for it any more
     */
    record Reserved(Held held, BigDecimal quantity, String order) implements StockHappening {

        static final String KIND = "stock reserved";

        @Override
        public String kind() {
            return KIND;
        }

        @Override
        public JsonOut.Members data() {
            return held.json().put("quantity", quantity).put("order", order);
        }

        static Reserved read(String part, ObjectReader reader) {
            return new Reserved(
                    Held.read(part, reader),
                    reader.decimal("quantity", Range.NOT_NEGATIVE),
                    reader.text("order", TextShape.ORDER_NAME));
        }
    }

    private static BigDecimal amount(ObjectReader reader) {
        return reader.decimal("quantity", Range.POSITIVE);
    }
}
