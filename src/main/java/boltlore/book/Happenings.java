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
        for (What what : What.values()) {
            kinds.put(
                    PersonHappening.KIND + what.name().toLowerCase(Locale.ROOT),
                    (key, reader) -> PersonHappening.read(key, what, reader));
        }
        return kinds;
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
