package boltlore.book;

import boltlore.json.Allowed;
import boltlore.json.JsonOut;
import boltlore.json.ObjectReader;
import boltlore.json.Range;
import boltlore.json.TextShape;
import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;

/** What happens in the rooms to the kit of an order: picking, coating, readings; and to the rack of remnants. */
public sealed interface ShopHappening extends Happening {

    String ORDER = "order";
    String PIECE = "piece";
    String REMNANT = "remnant";

    /**
     * The bin held too little when it was picked.
     *
     * @param missing 0 where it is not short any more
     */
    record FoundShort(String order, String part, String finish, BigDecimal missing) implements ShopHappening {

        static final String KIND = "pick short";

        @Override
        public String kind() {
            return KIND;
        }

        @Override
        public Subject subject() {
            return new Subject(ORDER, order);
        }

        @Override
        public JsonOut.Members data() {
            return JsonOut.object().put("part", part).putIfAny("finish", finish).put("missing", missing);
        }

        static FoundShort read(String order, ObjectReader reader) {
            return new FoundShort(
                    order,
                    reader.text("part", TextShape.PART_NUMBER),
                    reader.findText("finish", TextShape.LINE).orElse(""),
                    reader.decimal("missing", Range.NOT_NEGATIVE));
        }
    }

    /**
     * Somebody said that all is picked.
     *
     * @param open parts that are still to come, none of which safety hangs on
     */
    record Picked(String order, List<String> open) implements ShopHappening {

        static final String KIND = "picking complete";

        @Override
        public String kind() {
            return KIND;
        }

        @Override
        public Subject subject() {
            return new Subject(ORDER, order);
        }

        @Override
        public JsonOut.Members data() {
            return withTexts(JsonOut.object(), "open", open);
        }

        static Picked read(String order, ObjectReader reader) {
            return new Picked(order, reader.findTexts("open", TextShape.LINE, (text, spot) -> text));
        }
    }

    /** Where a piece stands on its way through the coating shop. */
    enum Coat {
        WAITING,
        MASKED,
        /** It hangs in a load. */
        HUNG,
        COATED,
        /** It is at an outside coater. */
        OUT,
        BACK,
        /** It was looked at, and may go to the stores. */
        ACCEPTED,
        /** It was looked at, and may not. */
        REJECTED,
        /** Nothing more will become of it. */
        SCRAPPED,
        /** It is not to be coated any more, for its order does not ask for it; it lies bare where it was. */
        WITHDRAWN;

        private static final Allowed<Coat> WRITTEN = Allowed.of(values());

        public String written() {
            return name().toLowerCase(Locale.ROOT);
        }

        /** Whether nothing is to be done with it in the coating shop. */
        public boolean done() {
            return this == ACCEPTED || this == SCRAPPED || this == WITHDRAWN;
        }

        /** Where it may go from here. */
        public List<Coat> next() {
            return switch (this) {
                case WAITING -> List.of(MASKED, HUNG, OUT, WITHDRAWN);
                case MASKED -> List.of(HUNG, OUT, WAITING, WITHDRAWN);
                case HUNG -> List.of(COATED, MASKED, WAITING);
                case OUT -> List.of(BACK);
                case COATED, BACK -> List.of(ACCEPTED, REJECTED);
                case REJECTED -> List.of(WAITING, SCRAPPED);
                case ACCEPTED -> List.of(REJECTED);
                case WITHDRAWN -> List.of(WAITING);
                case SCRAPPED -> List.of();
            };
        }
    }

    /**
     * A piece stands elsewhere in the coating shop now.
     *
     * @param piece 'BL-1001/PX-12/3': order, part, and which one of it
     * @param load that it hangs in, or the coater that it is at; or empty
     */
    record Coating(String piece, String order, String part, String finish, Coat to, String load)
            implements ShopHappening {

        static final String KIND = "piece coating";

        @Override
        public String kind() {
            return KIND;
        }

        @Override
        public Subject subject() {
            return new Subject(PIECE, piece);
        }

        @Override
        public JsonOut.Members data() {
            return JsonOut.object()
                    .put("order", order)
                    .put("part", part)
                    .put("finish", finish)
                    .put("to", to.written())
                    .putIfAny("load", load);
        }

        static Coating read(String piece, ObjectReader reader) {
            return new Coating(
                    piece,
                    reader.text("order", TextShape.ORDER_NAME),
                    reader.text("part", TextShape.PART_NUMBER),
                    reader.text("finish", TextShape.LINE),
                    reader.oneOf("to", Coat.WRITTEN),
                    reader.findText("load", TextShape.LINE).orElse(""));
        }
    }

    /**
     * A rest of a bar lies on the rack.
     *
     * @param from order that it was left over from, or empty
     */
    record Kept(String remnant, String material, BigDecimal lengthMm, String heat, String from)
            implements ShopHappening {

        static final String KIND = "remnant kept";

        @Override
        public String kind() {
            return KIND;
        }

        @Override
        public Subject subject() {
            return new Subject(REMNANT, remnant);
        }

        @Override
        public JsonOut.Members data() {
            return JsonOut.object()
                    .put("material", material)
                    .put("lengthMm", lengthMm)
                    .putIfAny("heat", heat)
                    .putIfAny("from", from);
        }

        static Kept read(String remnant, ObjectReader reader) {
            return new Kept(
                    remnant,
                    reader.text("material", TextShape.NAME),
                    reader.decimal("lengthMm", Range.POSITIVE),
                    reader.findText("heat", TextShape.LINE).orElse(""),
                    reader.findText("from", TextShape.LINE).orElse(""));
        }
    }

    /** A rest of a bar was cut up for orders, or thrown away. */
    record Used(String remnant, String by) implements ShopHappening {

        static final String KIND = "remnant used";

        @Override
        public String kind() {
            return KIND;
        }

        @Override
        public Subject subject() {
            return new Subject(REMNANT, remnant);
        }

        @Override
        public JsonOut.Members data() {
            return JsonOut.object().put("by", by);
        }

        static Used read(String remnant, ObjectReader reader) {
            return new Used(remnant, reader.text("by", TextShape.LINE));
        }
    }

    /**
     * A record was filled in, judged and kept.
     *
     * @param of what it is of: 'film', 'test', 'count'
     * @param content hash of the record as it was read
     * @param passed whether nothing in it stops
     * @param findings of the judgement, as codes
     */
    record Judged(String order, String of, String content, boolean passed, List<String> findings)
            implements ShopHappening {

        static final String KIND = "record judged";

        @Override
        public String kind() {
            return KIND;
        }

        @Override
        public Subject subject() {
            return new Subject(ORDER, order);
        }

        @Override
        public JsonOut.Members data() {
            JsonOut.Members members =
                    JsonOut.object().put("of", of).put("content", content).put("passed", passed);
            return withTexts(members, "findings", findings);
        }

        static Judged read(String order, ObjectReader reader) {
            return new Judged(
                    order,
                    reader.text("of", TextShape.WORDS),
                    reader.text("content"),
                    reader.truth("passed", false),
                    reader.findTexts("findings", TextShape.LINE, (text, spot) -> text));
        }
    }

    /** A list is told where it holds something. */
    private static JsonOut.Members withTexts(JsonOut.Members members, String key, List<String> texts) {
        return texts.isEmpty() ? members : members.put(key, JsonOut.texts(texts));
    }
}
