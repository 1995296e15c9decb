package boltlore.book;

import boltlore.json.Allowed;
import boltlore.json.JsonOut;
import boltlore.json.ObjectReader;
import boltlore.json.Range;
import boltlore.json.TextShape;
import java.math.BigDecimal;
import java.util.List;
import java.util.SortedMap;

/**
 * What happens to the changes of a frozen order: each is numbered, described, evaluated and decided, and what was decided
 * is carried out and verified (ISO 10007:2017, 5.4).
 */
public sealed interface ChangeHappening extends Happening {

    /** Who wants a change. */
    enum Asker {
        CUSTOMER,
        WORKSHOP,
        SUPPLIER;

        public static final Allowed<Asker> WORDS = Allowed.of(values());
    }

    String order();

    int number();

    @Override
    default Subject subject() {
        return new Subject(OrderHappening.WHAT, order());
    }

    /**
     * A change was proposed and evaluated; nothing of the order is changed by that.
     *
     * @param from hash of the kit that it starts from
     * @param offer what the whole kit would cost the customer
     * @param stands what the order would stand on
     */
    record Proposed(
            String order,
            int number,
            Asker asker,
            String from,
            Offer offer,
            SortedMap<String, String> choices,
            Frozen stands)
            implements ChangeHappening {

        static final String KIND = "change proposed";

        @Override
        public String kind() {
            return KIND;
        }

        @Override
        public JsonOut.Members data() {
            return JsonOut.object()
                    .put("number", number)
                    .put("asker", asker)
                    .put("from", from)
                    .put("offer", offer.json())
                    .put("choices", OrderHappening.texts(choices))
                    .put("stands", stands.json());
        }

        static Proposed read(String order, ObjectReader reader) {
            return new Proposed(
                    order,
                    reader.whole("number", 1, OrderHappening.MOST),
                    reader.oneOf("asker", Asker.WORDS),
                    reader.text("from"),
                    reader.object("offer", Offer::read),
                    OrderHappening.readTexts(reader, "choices"),
                    reader.object("stands", Frozen::read));
        }
    }

    /** What became of a proposed change, or that an accepted one is carried out and verified. */
    record Decided(String order, int number, ChangeState state) implements ChangeHappening {

        static final String KIND = "change decided";

        @Override
        public String kind() {
            return KIND;
        }

        @Override
        public JsonOut.Members data() {
            return JsonOut.object().put("number", number).put("state", state.written());
        }

        static Decided read(String order, ObjectReader reader) {
            return new Decided(
                    order, reader.whole("number", 1, OrderHappening.MOST), reader.oneOf("state", ChangeState.WORDS));
        }
    }

    /**
     * Parts were ordered in addition to a kit that has been shipped.
     *
     * @param kit hash of the kit with them
     * @param net what the customer pays for them before tax, in that currency
     */
    record ServiceAdded(String order, int number, List<KitLine> lines, String kit, String currency, BigDecimal net)
            implements ChangeHappening {

        static final String KIND = "service order added";

        public ServiceAdded {
            lines = List.copyOf(lines);
        }

        @Override
        public String kind() {
            return KIND;
        }

        @Override
        public JsonOut.Members data() {
            return JsonOut.object()
                    .put("number", number)
                    .put("lines", JsonOut.list(lines, KitLine::json))
                    .put("kit", kit)
                    .put("currency", currency)
                    .put("net", net);
        }

        static ServiceAdded read(String order, ObjectReader reader) {
            return new ServiceAdded(
                    order,
                    reader.whole("number", 1, OrderHappening.MOST),
                    reader.objects("lines", KitLine::read),
                    reader.text("kit"),
                    reader.text("currency", TextShape.CURRENCY),
                    reader.decimal("net", Range.NOT_NEGATIVE));
        }
    }
}
