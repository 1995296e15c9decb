package boltlore.json;

import boltlore.faults.Nearest;
import boltlore.measure.Wording;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * Reads one JSON object key by key. What is missing or will not do leaves a fault, and a harmless stand-in comes back
 * so that reading goes on and all faults are found in one go; nobody uses the stand-ins, because the outcome is faulty
 * then. A required key is read by {@code text}, {@code decimal} …, an optional one by {@code find…}. Ask for every key
 * that the object may have, then call {@link #done()}: what was never asked for is an unknown key.
 */
public final class ObjectReader {

    private final Json.Obj object;
    private final Faults faults;
    private final Set<String> asked = new LinkedHashSet<>();
    private final boolean readable;
    private final int faultsBefore;

    private ObjectReader(Json.Obj object, Faults faults, boolean readable) {
        this.object = object;
        this.faults = faults;
        this.readable = readable;
        this.faultsBefore = faults.count();
    }

    /** A reader of that object; anything but an object leaves a fault and reads as an empty one. */
    public static ObjectReader of(Json json, Faults faults) {
        if (json instanceof Json.Obj object) {
            return new ObjectReader(object, faults, true);
        }
        Values.refuse(json, "an object in { }", "", faults);
        return new ObjectReader(new Json.Obj(json.spot(), Map.of()), faults, false);
    }

    /** A reader of nothing, for a file that is missing: every required key comes back as a stand-in without a fault. */
    public static ObjectReader ofNothing(Faults faults) {
        return new ObjectReader(new Json.Obj(Spot.document("", 0), Map.of()), faults, false);
    }

    public Spot spot() {
        return object.spot();
    }

    /** Where the value of that key stands, or the object itself where the key is missing. */
    public Spot spot(String key) {
        Json member = object.members().get(key);
        return member == null ? object.spot() : member.spot();
    }

    public Faults faults() {
        return faults;
    }

    /** A fault of the whole object. */
    public void fault(String found, String expected, String advice) {
        faults.add(spot().fault(found, expected, advice));
    }

    /** A fault of the value under that key. */
    public void faultAt(String key, String found, String expected, String advice) {
        faults.add(spot(key).fault(found, expected, advice));
    }

    /** Whether nothing has gone wrong since this reader began, so that its values may be compared with one another. */
    public boolean sound() {
        return readable && faults.count() == faultsBefore;
    }

    /** The keys of the object in the order of the file. */
    public Set<String> keys() {
        return object.members().keySet();
    }

    public boolean has(String key) {
        return object.members().containsKey(key);
    }

    /** The value of an optional key. */
    public Optional<Json> find(String key) {
        asked.add(key);
        return Optional.ofNullable(object.members().get(key));
    }

    /** The value of a required key; a fault where it is missing. */
    public Optional<Json> get(String key) {
        Optional<Json> member = find(key);
        if (member.isEmpty() && readable) {
            faults.add(spot().fault("no '" + key + "'", "the key '" + key + "'", "Add it."));
        }
        return member;
    }

    public String text(String key) {
        return get(key).flatMap(json -> Values.text(json, faults)).orElse("");
    }

    public Optional<String> findText(String key) {
        return find(key).flatMap(json -> Values.text(json, faults));
    }

    /** A text of that look; empty where it is missing or will not do. */
    public String text(String key, TextShape shape) {
        return get(key).flatMap(json -> Values.text(json, shape, faults)).orElse("");
    }

    public Optional<String> findText(String key, TextShape shape) {
        return find(key).flatMap(json -> Values.text(json, shape, faults));
    }

    public BigDecimal decimal(String key, Range range) {
        return get(key).flatMap(json -> Values.decimal(json, range, faults)).orElse(BigDecimal.ONE);
    }

    public @Nullable BigDecimal findDecimal(String key, Range range) {
        return find(key).flatMap(json -> Values.decimal(json, range, faults)).orElse(null);
    }

    public int whole(String key, long least, long most) {
        return get(key).flatMap(json -> Values.whole(json, least, most, faults)).orElse(1);
    }

    public @Nullable Integer findWhole(String key, long least, long most) {
        return find(key)
                .flatMap(json -> Values.whole(json, least, most, faults))
                .orElse(null);
    }

    public boolean truth(String key, boolean otherwise) {
        return find(key).flatMap(json -> Values.truth(json, faults)).orElse(otherwise);
    }

    public @Nullable Boolean findTruth(String key) {
        return find(key).flatMap(json -> Values.truth(json, faults)).orElse(null);
    }

    public LocalDate date(String key) {
        return get(key).flatMap(json -> Values.date(json, faults)).orElse(LocalDate.EPOCH);
    }

    public @Nullable LocalDate findDate(String key) {
        return find(key).flatMap(json -> Values.date(json, faults)).orElse(null);
    }

    public <E> E oneOf(String key, Allowed<E> allowed) {
        return get(key).flatMap(json -> Values.oneOf(json, allowed, faults))
                .orElseGet(() -> allowed.byName().values().iterator().next());
    }

    public <E> @Nullable E findOneOf(String key, Allowed<E> allowed) {
        return find(key).flatMap(json -> Values.oneOf(json, allowed, faults)).orElse(null);
    }

    /** A text in English, or an object of texts by language code with English among them. */
    public Wording wording(String key) {
        return get(key).map(json -> Values.wording(json, faults)).orElse(Wording.english(""));
    }

    /** The object under a required key, read whole; a stand-in comes from reading an empty object. */
    public <T> T object(String key, Function<ObjectReader, T> reading) {
        return reading(get(key).orElse(null), reading);
    }

    public <T> Optional<T> findObject(String key, Function<ObjectReader, T> reading) {
        return find(key).map(json -> reading(json, reading));
    }

    private <T> T reading(@Nullable Json json, Function<ObjectReader, T> reading) {
        ObjectReader reader =
                json == null ? new ObjectReader(new Json.Obj(spot(), Map.of()), faults, false) : of(json, faults);
        T value = reading.apply(reader);
        reader.done();
        return value;
    }

    /** The items of an optional list; none where it is missing. */
    public List<Json> findItems(String key) {
        return find(key).map(json -> Values.items(json, faults)).orElse(List.of());
    }

    /** The items of a required list with at least one item. */
    public List<Json> items(String key) {
        return get(key).map(json -> Values.someItems(json, faults)).orElse(List.of());
    }

    /** The objects of a required list with at least one item. */
    public <T> List<T> objects(String key, Function<ObjectReader, T> reading) {
        return items(key).stream().map(json -> reading(json, reading)).toList();
    }

    /** The objects of a required list, which may be empty. */
    public <T> List<T> list(String key, Function<ObjectReader, T> reading) {
        return get(key).map(json -> Values.items(json, faults)).orElse(List.of()).stream()
                .map(json -> reading(json, reading))
                .toList();
    }

    /** The objects of an optional list. */
    public <T> List<T> findObjects(String key, Function<ObjectReader, T> reading) {
        return findItems(key).stream().map(json -> reading(json, reading)).toList();
    }

    /** The texts of an optional list, each of that look and at most once; each is handed over with its place. */
    public <T> List<T> findTexts(String key, TextShape shape, BiFunction<String, Spot, T> each) {
        return Values.texts(findItems(key), shape, faults, each);
    }

    /** The texts of a required list with at least one item. */
    public <T> List<T> texts(String key, TextShape shape, BiFunction<String, Spot, T> each) {
        return Values.texts(items(key), shape, faults, each);
    }

    /** Leaves a fault for each key that was never asked for. */
    public void done() {
        object.members().forEach((key, member) -> {
            if (!asked.contains(key)) {
                faults.add(member.spot()
                        .fault(
                                "the unknown key " + Shown.text(key),
                                "one of " + String.join(", ", asked),
                                Nearest.advice(key, asked, "")));
            }
        });
    }
}
