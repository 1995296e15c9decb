package boltlore.book;

import boltlore.json.JsonOut;
import boltlore.json.ObjectReader;
import boltlore.json.Range;
import boltlore.json.TextShape;
import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/** What really went into a kit, what was read of it, conceded and signed: the order as it was built. */
public sealed interface BuiltHappening extends Happening {

    String order();

    @Override
    default Subject subject() {
        return new Subject(OrderHappening.WHAT, order());
    }

    /** The vehicle that the kit goes into. The chassis number is the vehicle's, whoever owns it. */
    record OfVehicle(String order, String chassis) implements BuiltHappening {

        static final String KIND = "vehicle known";

        @Override
        public String kind() {
            return KIND;
        }

        @Override
        public JsonOut.Members data() {
            return JsonOut.object().put("chassis", chassis);
        }

        static OfVehicle read(String order, ObjectReader reader) {
            return new OfVehicle(order, reader.text("chassis", TextShape.LINE));
        }
    }

    /**
     * A part went in.
     *
     * @param serial of one piece, or empty
     * @param lot that it came from, or empty
     * @param heat of the metal that it was made of, or empty
     */
    record Fitted(
            String order, String part, String revision, BigDecimal quantity, String serial, String lot, String heat)
            implements BuiltHappening {

        static final String KIND = "part fitted";

        @Override
        public String kind() {
            return KIND;
        }

        @Override
        public JsonOut.Members data() {
            return JsonOut.object()
                    .put("part", part)
                    .put("revision", revision)
                    .put("quantity", quantity)
                    .putIfAny("serial", serial)
                    .putIfAny("lot", lot)
                    .putIfAny("heat", heat);
        }

        static Fitted read(String order, ObjectReader reader) {
            return new Fitted(
                    order,
                    reader.text("part", TextShape.PART_NUMBER),
                    reader.text("revision"),
                    reader.decimal("quantity", Range.POSITIVE),
                    reader.findText("serial").orElse(""),
                    reader.findText("lot").orElse(""),
                    reader.findText("heat").orElse(""));
        }
    }

    /**
     * A part came out again; that it was in stays known.
     *
     * @param fitted number of the entry with which it went in
     */
    record TakenOut(String order, long fitted) implements BuiltHappening {

        static final String KIND = "part taken out";

        @Override
        public String kind() {
            return KIND;
        }

        @Override
        public JsonOut.Members data() {
            return JsonOut.object().put("fitted", fitted);
        }

        static TakenOut read(String order, ObjectReader reader) {
            return new TakenOut(
                    order,
                    reader.decimal("fitted", Range.between(1, Long.MAX_VALUE)).longValue());
        }
    }

    /**
     * Something that was found or allowed of the kit.
     *
     * @param what 'reading', 'concession' or 'signature'
     * @param of what it is about: a test, a part, a sheet
     * @param says the value with its unit, what is allowed, or what is signed for
     */
    record Noted(String order, String what, String of, String says) implements BuiltHappening {

        public static final String READING = "reading";
        public static final String CONCESSION = "concession";
        public static final String SIGNATURE = "signature";

        static final String KIND = "noted as built";

        @Override
        public String kind() {
            return KIND;
        }

        @Override
        public JsonOut.Members data() {
            return JsonOut.object().put("what", what).put("of", of).put("says", says);
        }

        static Noted read(String order, ObjectReader reader) {
            return new Noted(order, reader.text("what", TextShape.NAME), reader.text("of"), reader.text("says"));
        }
    }

    /**
     * A value was read of the kit and judged.
     *
     * @param of what was measured: 'isolation resistance'
     * @param unit symbol, as 'MΩ'; empty where it has none
     * @param least the value may be no less; null where nothing is asked
     * @param most the value may be no more; null where nothing is asked
     */
    record Measured(
            String order,
            String of,
            BigDecimal value,
            String unit,
            @Nullable BigDecimal least,
            @Nullable BigDecimal most)
            implements BuiltHappening {

        static final String KIND = "reading taken";

        private static final Range ANY = Range.between(-1_000_000_000, 1_000_000_000);

        /** Whether it is between the limits; they belong to it. */
        public boolean within() {
            return (least == null || value.compareTo(least) >= 0) && (most == null || value.compareTo(most) <= 0);
        }

        @Override
        public String kind() {
            return KIND;
        }

        @Override
        public JsonOut.Members data() {
            return JsonOut.object()
                    .put("of", of)
                    .put("value", value)
                    .putIfAny("unit", unit)
                    .putIfAny("least", least)
                    .putIfAny("most", most);
        }

        static Measured read(String order, ObjectReader reader) {
            return new Measured(
                    order,
                    reader.text("of", TextShape.LINE),
                    reader.decimal("value", ANY),
                    reader.findText("unit", TextShape.LINE).orElse(""),
                    reader.has("least") ? reader.decimal("least", ANY) : null,
                    reader.has("most") ? reader.decimal("most", ANY) : null);
        }
    }

    /**
     * Work on parts of the order: so much of them is bought, cut, coated or picked.
     *
     * @param stage 'bought', 'cut', 'coated' or 'picked'
     * @param quantity below 0 where it was undone
     */
    record Worked(String order, String part, String revision, String finish, String stage, BigDecimal quantity)
            implements BuiltHappening {

        static final String KIND = "work done";

        private static final Range ANY = Range.between(-1_000_000, 1_000_000);

        @Override
        public String kind() {
            return KIND;
        }

        @Override
        public JsonOut.Members data() {
            return JsonOut.object()
                    .put("part", part)
                    .put("revision", revision)
                    .putIfAny("finish", finish)
                    .put("stage", stage)
                    .put("quantity", quantity);
        }

        static Worked read(String order, ObjectReader reader) {
            return new Worked(
                    order,
                    reader.text("part", TextShape.PART_NUMBER),
                    reader.text("revision"),
                    reader.findText("finish").orElse(""),
                    reader.text("stage", TextShape.NAME),
                    reader.decimal("quantity", ANY));
        }
    }
}
