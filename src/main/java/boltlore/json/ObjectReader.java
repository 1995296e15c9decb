package boltlore.json;

import boltlore.faults.Nearest;
import boltlore.measure.Wording;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.LinkedHashMap;
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
public class ObjectReader {

    /** The word for the same thing in other files, which is not near by its letters. */
    private static final Map<String, String> OTHER_WORD = Map.of("says", "name", "name", "says");

    private final Json.Obj object;
    private final Faults faults;
    private final Set<String> asked = new LinkedHashSet<>();
    private final boolean readable;
    private final int faultsBefore;

    /** Open to those who draw schemas from what is asked. */
    protected ObjectReader(Json.Obj object, Faults faults, boolean readable) {
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
        return new ObjectReader(new Json.Obj(json.location(), Map.of()), faults, false);
    }

    /** A reader of nothing, for a file that is missing: every required key comes back as a stand-in without a fault. */
    public static ObjectReader ofNothing(Faults faults) {
        return new ObjectReader(new Json.Obj(SourceLocation.document("", 0), Map.of()), faults, false);
    }

    public SourceLocation spot() {
        return object.location();
    }

    /** Where the value of that key stands, or the object itself where the key is missing. */
    public SourceLocation spot(String key) {
        Json member = object.members().get(key);
        return member == null ? object.location() : member.location();
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

    /** The value under that key, which is not asked for by this. */
    public Optional<Json> member(String key) {
        return Optional.ofNullable(object.members().get(key));
    }

    /** Whether the object breaks a rule of its keys; the caller says what is wrong. */
    public boolean breaks(KeyRule rule) {
        return readable && rule.isBroken(object.members());
    }

    /** Leaves a fault unless the keys of exactly one way are there. */
    public void oneWay(String... ways) {
        KeyRule.OneWay rule = new KeyRule.OneWay(ways);
        if (breaks(rule)) {
            String keys = String.join("', '", keys());
            fault(
                    keys.isEmpty() ? "an empty object" : "the keys '" + keys + "'",
                    rule.says(),
                    "Write exactly one of them.");
        }
    }

    /** The value of a key that must look like this; a fault where it is required and missing. */
    protected Optional<Json> take(String key, boolean required, Shape shape) {
        asked.add(key);
        Optional<Json> member = member(key);
        if (required && member.isEmpty() && readable) {
            faults.add(spot().fault("no '" + key + "'", "the key '" + key + "'", "Add it."));
        }
        return member;
    }

    /** The value of an optional key, to be read by the caller. */
    public Optional<Json> find(String key, Shape shape) {
        return take(key, false, shape);
    }

    /** The value of a required key, to be read by the caller; a fault where it is missing. */
    public Optional<Json> get(String key, Shape shape) {
        return take(key, true, shape);
    }

    public String text(String key) {
        return get(key, Shape.Plain.TEXT)
                .flatMap(json -> Values.text(json, faults))
                .orElse("");
    }

    public Optional<String> findText(String key) {
        return find(key, Shape.Plain.TEXT).flatMap(json -> Values.text(json, faults));
    }

    /** A text of that look; empty where it is missing or will not do. */
    public String text(String key, TextShape shape) {
        return get(key, shape).flatMap(json -> Values.text(json, shape, faults)).orElse("");
    }

    public Optional<String> findText(String key, TextShape shape) {
        return find(key, shape).flatMap(json -> Values.text(json, shape, faults));
    }

    public BigDecimal decimal(String key, Range range) {
        return get(key, range)
                .flatMap(json -> Values.decimal(json, range, faults))
                .orElse(BigDecimal.ONE);
    }

    public @Nullable BigDecimal findDecimal(String key, Range range) {
        return find(key, range)
                .flatMap(json -> Values.decimal(json, range, faults))
                .orElse(null);
    }

    /** The numbers of an optional list. */
    public List<BigDecimal> findDecimals(String key, Range range) {
        return listed(key, false, new Shape.ListOf(range, false, false)).stream()
                .flatMap(json -> Values.decimal(json, range, faults).stream())
                .toList();
    }

    public int whole(String key, long least, long most) {
        return get(key, new Shape.Whole(least, most))
                .flatMap(json -> Values.whole(json, least, most, faults))
                .orElse(1);
    }

    public @Nullable Integer findWhole(String key, long least, long most) {
        return find(key, new Shape.Whole(least, most))
                .flatMap(json -> Values.whole(json, least, most, faults))
                .orElse(null);
    }

    public boolean truth(String key, boolean otherwise) {
        Boolean truth = findTruth(key);
        return truth == null ? otherwise : truth;
    }

    public @Nullable Boolean findTruth(String key) {
        return find(key, Shape.Plain.TRUTH)
                .flatMap(json -> Values.truth(json, faults))
                .orElse(null);
    }

    public LocalDate date(String key) {
        return get(key, Shape.Plain.DATE)
                .flatMap(json -> Values.date(json, faults))
                .orElse(LocalDate.EPOCH);
    }

    public @Nullable LocalDate findDate(String key) {
        return find(key, Shape.Plain.DATE)
                .flatMap(json -> Values.date(json, faults))
                .orElse(null);
    }

    public <E> E oneOf(String key, Allowed<E> allowed) {
        return oneOf(key, allowed, allowed.byName().values().iterator().next());
    }

    /** One of a few, or what stands in where it is missing or unknown. */
    public <E> E oneOf(String key, Allowed<E> allowed, E standIn) {
        return get(key, allowed)
                .flatMap(json -> Values.oneOf(json, allowed, faults))
                .orElse(standIn);
    }

    public <E> @Nullable E findOneOf(String key, Allowed<E> allowed) {
        return find(key, allowed)
                .flatMap(json -> Values.oneOf(json, allowed, faults))
                .orElse(null);
    }

    /** A text in English, or an object of texts by language code with English among them. */
    public Wording wording(String key) {
        return get(key, Shape.Plain.WORDING)
                .map(json -> Values.wording(json, faults))
                .orElse(Wording.english(""));
    }

    public Optional<Wording> findWording(String key) {
        return find(key, Shape.Plain.WORDING).map(json -> Values.wording(json, faults));
    }

    /** The object under a required key, read whole; a stand-in comes from reading an empty object. */
    public <T> T object(String key, Function<ObjectReader, T> reading) {
        return reading(get(key, new Shape.Read(reading)).orElse(null), reading);
    }

    public <T> Optional<T> findObject(String key, Function<ObjectReader, T> reading) {
        return find(key, new Shape.Read(reading)).map(json -> reading(json, reading));
    }

    private <T> T reading(@Nullable Json json, Function<ObjectReader, T> reading) {
        ObjectReader reader =
                json == null ? new ObjectReader(new Json.Obj(spot(), Map.of()), faults, false) : of(json, faults);
        T value = reading.apply(reader);
        reader.done();
        return value;
    }

    /** The objects of a required list with at least one item. */
    public <T> List<T> objects(String key, Function<ObjectReader, T> reading) {
        return objects(key, true, true, reading);
    }

    /** The objects of a required list, which may be empty. */
    public <T> List<T> list(String key, Function<ObjectReader, T> reading) {
        return objects(key, true, false, reading);
    }

    /** The objects of an optional list. */
    public <T> List<T> findObjects(String key, Function<ObjectReader, T> reading) {
        return objects(key, false, false, reading);
    }

    /** The objects of an optional list, which has some where it is there. */
    public <T> List<T> findSomeObjects(String key, Function<ObjectReader, T> reading) {
        return objects(key, false, true, reading);
    }

    private <T> List<T> objects(String key, boolean required, boolean some, Function<ObjectReader, T> reading) {
        return listed(key, required, new Shape.ListOf(new Shape.Read(reading), some, false)).stream()
                .map(json -> reading(json, reading))
                .toList();
    }

    /** The texts of an optional list, each of that look and at most once; each is handed over with its place. */
    public <T> List<T> findTexts(String key, TextShape shape, BiFunction<String, SourceLocation, T> each) {
        return Values.texts(listed(key, false, new Shape.ListOf(shape, false, true)), shape, faults, each);
    }

    /** The texts of a required list with at least one item. */
    public <T> List<T> texts(String key, TextShape shape, BiFunction<String, SourceLocation, T> each) {
        return Values.texts(listed(key, true, new Shape.ListOf(shape, true, true)), shape, faults, each);
    }

    /** An optional list of lists of texts; where it is there, it has some, and so has each of them. */
    public <T> List<List<T>> findTextLists(String key, TextShape shape, BiFunction<String, SourceLocation, T> each) {
        Shape.ListOf inner = new Shape.ListOf(shape, true, true);
        return listed(key, false, new Shape.ListOf(inner, true, false)).stream()
                .map(json -> Values.texts(Values.someItems(json, faults), shape, faults, each))
                .toList();
    }

    /** Every key of the object, which has names of that look for keys, with its own object. */
    public <T> Map<String, T> entries(TextShape shape, Function<ObjectReader, T> reading) {
        Map<String, T> entries = new LinkedHashMap<>();
        for (String key : keys()) {
            if (!shape.fits().test(key)) {
                faultAt(key, Preview.text(key), shape.says(), "");
            }
            entries.put(key, object(key, reading));
        }
        return entries;
    }

    private List<Json> listed(String key, boolean required, Shape.ListOf shape) {
        return take(key, required, shape)
                .map(json -> shape.some() ? Values.someItems(json, faults) : Values.items(json, faults))
                .orElse(List.of());
    }

    /** Leaves a fault for each key that was never asked for. */
    public void done() {
        object.members().forEach((key, member) -> {
            if (!asked.contains(key)) {
                faults.add(member.location()
                        .fault(
                                "the unknown key " + Preview.text(key),
                                "one of " + String.join(", ", asked),
                                meant(key)));
            }
        });
    }

    private String meant(String key) {
        String other = OTHER_WORD.get(key);
        return other != null && asked.contains(other) && !has(other)
                ? "Did you mean '" + other + "'?"
                : Nearest.advice(key, asked, "");
    }
}
