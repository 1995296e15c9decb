package boltlore.book;

import boltlore.book.PersonHappening.What;
import boltlore.faults.Fault;
import boltlore.faults.Outcome;
import boltlore.json.Allowed;
import boltlore.json.Faults;
import boltlore.json.Json;
import boltlore.json.ObjectReader;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.function.BiFunction;

/** How each kind of happening is read back from the journal. A new kind is one line here. */
final class Happenings {

    static final Allowed<OrderState> STATES =
            Allowed.of(OrderState.ALL.toArray(OrderState[]::new), OrderState::written);

    private static final Map<String, BiFunction<String, ObjectReader, Happening>> KINDS = kinds();

    private Happenings() {}

    static Map<String, BiFunction<String, ObjectReader, Happening>> kinds() {
        Map<String, BiFunction<String, ObjectReader, Happening>> kinds = new LinkedHashMap<>();
        kinds.put(BookBegun.KIND, BookBegun::read);
        kinds.put(OrderHappening.Drafted.KIND, OrderHappening.Drafted::read);
        kinds.put(OrderHappening.Quoted.KIND, OrderHappening.Quoted::read);
        kinds.put(OrderHappening.Ordered.KIND, OrderHappening.Ordered::read);
        kinds.put(OrderHappening.Moved.KIND, OrderHappening.Moved::read);
        kinds.put(OrderHappening.Issued.KIND, OrderHappening.Issued::read);
        kinds.put(ChangeHappening.Proposed.KIND, ChangeHappening.Proposed::read);
        kinds.put(ChangeHappening.Decided.KIND, ChangeHappening.Decided::read);
        kinds.put(ChangeHappening.ServiceAdded.KIND, ChangeHappening.ServiceAdded::read);
        kinds.put(BuiltHappening.OfVehicle.KIND, BuiltHappening.OfVehicle::read);
        kinds.put(BuiltHappening.Fitted.KIND, BuiltHappening.Fitted::read);
        kinds.put(BuiltHappening.TakenOut.KIND, BuiltHappening.TakenOut::read);
        kinds.put(BuiltHappening.Noted.KIND, BuiltHappening.Noted::read);
        kinds.put(BuiltHappening.Worked.KIND, BuiltHappening.Worked::read);
        kinds.put(BuiltHappening.Measured.KIND, BuiltHappening.Measured::read);
        addStores(kinds);
        for (What what : What.values()) {
            kinds.put(
                    PersonHappening.KIND + what.name().toLowerCase(Locale.ROOT),
                    (key, reader) -> PersonHappening.read(key, what, reader));
        }
        return kinds;
    }

    private static void addStores(Map<String, BiFunction<String, ObjectReader, Happening>> kinds) {
        kinds.put(StockHappening.Received.KIND, StockHappening.Received::read);
        kinds.put(StockHappening.Unreceived.KIND, StockHappening.Unreceived::read);
        kinds.put(StockHappening.Issued.KIND, StockHappening.Issued::read);
        kinds.put(StockHappening.Returned.KIND, StockHappening.Returned::read);
        kinds.put(StockHappening.Moved.KIND, StockHappening.Moved::read);
        kinds.put(StockHappening.Counted.KIND, StockHappening.Counted::read);
        kinds.put(StockHappening.BuiltIn.KIND, StockHappening.BuiltIn::read);
        kinds.put(StockHappening.Scrapped.KIND, StockHappening.Scrapped::read);
        kinds.put(StockHappening.Coated.KIND, StockHappening.Coated::read);
        kinds.put(StockHappening.Reserved.KIND, StockHappening.Reserved::read);
        kinds.put(PurchaseHappening.Placed.KIND, PurchaseHappening.Placed::read);
        kinds.put(PurchaseHappening.Promised.KIND, PurchaseHappening.Promised::read);
        kinds.put(PurchaseHappening.Closed.KIND, PurchaseHappening.Closed::read);
        kinds.put(ShopHappening.FoundShort.KIND, ShopHappening.FoundShort::read);
        kinds.put(ShopHappening.Picked.KIND, ShopHappening.Picked::read);
        kinds.put(ShopHappening.Coating.KIND, ShopHappening.Coating::read);
        kinds.put(ShopHappening.Kept.KIND, ShopHappening.Kept::read);
        kinds.put(ShopHappening.Used.KIND, ShopHappening.Used::read);
        kinds.put(ShopHappening.Judged.KIND, ShopHappening.Judged::read);
        kinds.put(PackHappening.Packed.KIND, PackHappening.Packed::read);
        kinds.put(PackHappening.BagCounted.KIND, PackHappening.BagCounted::read);
    }

    /** What an entry says; faulty where no kind of this program is of that name, or its data are not as they should be. */
    static Outcome<Happening> read(Entry entry, Json data) {
        BiFunction<String, ObjectReader, Happening> kind = KINDS.get(entry.kind());
        if (kind == null) {
            return Outcome.faulty(Fault.of(
                    "entry " + entry.number(),
                    "the kind '" + entry.kind() + "'",
                    "a kind of entry that this program knows",
                    "A newer program wrote it: use that one."));
        }
        Faults faults = new Faults();
        ObjectReader reader = ObjectReader.of(data, faults);
        Happening happening = kind.apply(entry.subject().name(), reader);
        reader.done();
        return faults.orElse(happening);
    }
}
