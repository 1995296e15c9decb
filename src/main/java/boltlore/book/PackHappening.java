package boltlore.book;

import boltlore.json.JsonOut;
import boltlore.json.ObjectReader;
import boltlore.json.Range;
import boltlore.json.TextShape;
import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/** What happens to a picked kit before it leaves: its bags are counted a second time, and it goes into its crates. */
public sealed interface PackHappening extends Happening {

    String order();

    @Override
    default Subject subject() {
        return new Subject(OrderHappening.WHAT, order());
    }

    /**
     * All of it lies in its crates, and they are closed.
     *
     * @param massKg gross mass of all crates on the scales, or null where nobody has weighed them
     */
    record Packed(String order, int crates, @Nullable BigDecimal massKg) implements PackHappening {

        static final String KIND = "kit packed";

        private static final int MOST_CRATES = 1000;

        @Override
        public String kind() {
            return KIND;
        }

        @Override
        public JsonOut.Members data() {
            return JsonOut.object().put("crates", crates).putIfAny("massKg", massKg);
        }

        static Packed read(String order, ObjectReader reader) {
            return new Packed(
                    order,
                    reader.whole("crates", 1, MOST_CRATES),
                    reader.has("massKg") ? reader.decimal("massKg", Range.POSITIVE) : null);
        }
    }

    /**
     * What lies in a bag was counted by a second person, or on the scales.
     *
     * @param bag name of the bag, or of the fit stage of what is packed loose
     * @param wanted what the kit asks for there, with spares
     */
    record BagCounted(String order, String bag, String part, String finish, BigDecimal wanted, BigDecimal counted)
            implements PackHappening {

        static final String KIND = "bag counted";

        @Override
        public String kind() {
            return KIND;
        }

        @Override
        public JsonOut.Members data() {
            return JsonOut.object()
                    .put("bag", bag)
                    .put("part", part)
                    .putIfAny("finish", finish)
                    .put("wanted", wanted)
                    .put("counted", counted);
        }

        static BagCounted read(String order, ObjectReader reader) {
            return new BagCounted(
                    order,
                    reader.text("bag", TextShape.LINE),
                    reader.text("part", TextShape.PART_NUMBER),
                    reader.findText("finish", TextShape.LINE).orElse(""),
                    reader.decimal("wanted", Range.NOT_NEGATIVE),
                    reader.decimal("counted", Range.NOT_NEGATIVE));
        }
    }
}
