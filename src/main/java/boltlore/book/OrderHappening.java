package boltlore.book;

import boltlore.json.JsonOut;
import boltlore.json.ObjectReader;
import boltlore.json.TextShape;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.SortedMap;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/** What happens to an order. */
public sealed interface OrderHappening extends Happening {

    String WHAT = "order";

    TextShape SENTENCE = new TextShape(text -> !text.isBlank(), "a sentence", "\\S", 10_000);

    /** The order's number. */
    String order();

    @Override
    default Subject subject() {
        return new Subject(WHAT, order());
    }

    /**
     * Taken down, or taken down otherwise.
     *
     * @param content hash of the order's file, with the customer's key in the place of the name
     */
    record Drafted(
            String order,
            String family,
            String customer,
            String partner,
            @Nullable LocalDate due,
            SortedMap<String, String> choices,
            String content)
            implements OrderHappening {

        /** Of its entries. */
        public static final String KIND = "order drafted";

        @Override
        public String kind() {
            return KIND;
        }

        @Override
        public JsonOut.Members data() {
            return JsonOut.object()
                    .put("family", family)
                    .put("customer", customer)
                    .putIfAny("partner", partner)
                    .putIfAny("due", due == null ? null : due.toString())
                    .put("choices", texts(choices))
                    .put("content", content);
        }

        static Drafted read(String order, ObjectReader reader) {
            return new Drafted(
                    order,
                    reader.text("family", TextShape.NAME),
                    reader.text("customer"),
                    reader.findText("partner").orElse(""),
                    reader.findDate("due"),
                    readTexts(reader, "choices"),
                    reader.text("content"));
        }
    }

    /** A quotation was made of it. */
    record Quoted(String order, int version, Offer offer, Frozen stands) implements OrderHappening {

        /** Of its entries. */
        public static final String KIND = "order quoted";

        @Override
        public String kind() {
            return KIND;
        }

        @Override
        public JsonOut.Members data() {
            return JsonOut.object()
                    .put("version", version)
                    .put("offer", offer.json())
                    .put("stands", stands.json());
        }

        static Quoted read(String order, ObjectReader reader) {
            return new Quoted(
                    order,
                    reader.whole("version", 1, MOST),
                    reader.object("offer", Offer::read),
                    reader.object("stands", Frozen::read));
        }
    }

    /** The customer confirmed a version of the quotation: from here on it is frozen. */
    record Ordered(String order, int version, @Nullable LocalDate due) implements OrderHappening {

        public static final String KIND = "order confirmed";

        @Override
        public String kind() {
            return KIND;
        }

        @Override
        public JsonOut.Members data() {
            return JsonOut.object().put("version", version).putIfAny("due", due == null ? null : due.toString());
        }

        static Ordered read(String order, ObjectReader reader) {
            return new Ordered(order, reader.whole("version", 1, MOST), reader.findDate("due"));
        }
    }

    /**
     * It stands elsewhere now.
     *
     * @param released hold points that a person has passed it by, in sentences; who and why stand with the entry
     */
    record Moved(String order, OrderState to, List<String> released) implements OrderHappening {

        public Moved {
            released = List.copyOf(released);
        }

        public Moved(String order, OrderState to) {
            this(order, to, List.of());
        }

        static final String KIND = "order moved";

        @Override
        public String kind() {
            return KIND;
        }

        @Override
        public JsonOut.Members data() {
            JsonOut.Members members = JsonOut.object().put("to", to.written());
            return released.isEmpty() ? members : members.put("released", JsonOut.texts(released));
        }

        static Moved read(String order, ObjectReader reader) {
            return new Moved(
                    order,
                    reader.oneOf("to", Happenings.STATES),
                    reader.findTexts("released", SENTENCE, (text, spot) -> text));
        }
    }

    /**
     * Sheets were written and given out.
     *
     * @param sheets hash of each file by its name within the order's folder
     */
    record Issued(String order, SortedMap<String, String> sheets) implements OrderHappening {

        static final String KIND = "sheets issued";

        @Override
        public String kind() {
            return KIND;
        }

        @Override
        public JsonOut.Members data() {
            return JsonOut.object().put("sheets", texts(sheets));
        }

        static Issued read(String order, ObjectReader reader) {
            return new Issued(order, readTexts(reader, "sheets"));
        }
    }

    int MOST = 100_000;

    static JsonOut texts(Map<String, String> texts) {
        JsonOut.Members members = JsonOut.object();
        texts.forEach(members::put);
        return members;
    }

    static SortedMap<String, String> readTexts(ObjectReader reader, String key) {
        return Objects.requireNonNull(reader.object(key, members -> {
            SortedMap<String, String> texts = new TreeMap<>();
            members.keys().forEach(name -> texts.put(name, members.text(name)));
            return texts;
        }));
    }
}
