package boltlore.json;

import boltlore.faults.Nearest;
import boltlore.measure.Wording;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
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

    private ObjectReader(Json.Obj object, Faults faults, boolean readable) {
        this.object = object;
        this.faults = faults;
        this.readable = readable;
    }

    /** A reader of that object; anything but an object leaves a fault and reads as an empty one. */
    public static ObjectReader of(Json json, Faults faults) {
        if (json instanceof Json.Obj object) {
            return new ObjectReader(object, faults, true);
        }
        Values.refuse(json, "an object in { }", "", faults);
        return new ObjectReader(new Json.Obj(json.spot(), java.util.Map.of()), faults, false);
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
        return get(key).map(this::wording).orElse(Wording.english(""));
    }

    private Wording wording(Json json) {
        if (!(json instanceof Json.Obj byLanguage)) {
            return Wording.english(Values.text(json, faults).orElse(""));
        }
        TreeMap<String, String> texts = new TreeMap<>();
        byLanguage.members().forEach((language, text) -> {
            if (!TextShape.LANGUAGE.fits().test(language)) {
                faults.add(text.spot().fault("'" + language + "'", TextShape.LANGUAGE.says(), ""));
            }
            texts.put(language, Values.text(text, faults).orElse(""));
        });
        if (!texts.containsKey(Wording.ENGLISH)) {
            Values.refuse(json, "an English text under 'en' among the languages", "Add \"en\".", faults);
            texts.put(Wording.ENGLISH, "");
        }
        return new Wording(texts);
    }

    /** The object under a required key, read whole; a stand-in comes from reading an empty object. */
    public <T> T object(String key, Function<ObjectReader, T> reading) {
        return reading(get(key).orElse(null), reading);
    }

    public <T> Optional<T> findObject(String key, Function<ObjectReader, T> reading) {
        return find(key).map(json -> reading(json, reading));
    }

    private <T> T reading(@Nullable Json json, Function<ObjectReader, T> reading) {
        ObjectReader reader = json == null
                ? new ObjectReader(new Json.Obj(spot(), java.util.Map.of()), faults, false)
                : of(json, faults);
        T value = reading.apply(reader);
        reader.done();
        return value;
    }

    /** The items of an optional list; none where it is missing. */
    public List<Json> findItems(String key) {
        return find(key).map(this::items).orElse(List.of());
    }

    /** The items of a required list with at least one item. */
    public List<Json> items(String key) {
        Optional<Json> json = get(key);
        List<Json> items = json.map(this::items).orElse(List.of());
        if (items.isEmpty() && json.isPresent() && json.get() instanceof Json.Arr) {
            Values.refuse(json.get(), "at least one item", "", faults);
        }
        return items;
    }

    private List<Json> items(Json json) {
        if (json instanceof Json.Arr array) {
            return array.items();
        }
        Values.refuse(json, "a list in [ ]", "", faults);
        return List.of();
    }

    /** The objects of a required list with at least one item. */
    public <T> List<T> objects(String key, Function<ObjectReader, T> reading) {
        return items(key).stream().map(json -> reading(json, reading)).toList();
    }

    /** The objects of an optional list. */
    public <T> List<T> findObjects(String key, Function<ObjectReader, T> reading) {
        return findItems(key).stream().map(json -> reading(json, reading)).toList();
    }

    /** The texts of an optional list, each of that look and at most once; each is handed over with its place. */
    public <T> List<T> findTexts(String key, TextShape shape, BiFunction<String, Spot, T> each) {
        return texts(findItems(key), shape, each);
    }

    /** The texts of a required list with at least one item. */
    public <T> List<T> texts(String key, TextShape shape, BiFunction<String, Spot, T> each) {
        return texts(items(key), shape, each);
    }

    private <T> List<T> texts(List<Json> items, TextShape shape, BiFunction<String, Spot, T> each) {
        List<T> read = new ArrayList<>();
        Set<String> seen = new LinkedHashSet<>();
        for (Json item : items) {
            Optional<String> text = Values.text(item, shape, faults);
            if (text.isPresent() && !seen.add(text.get())) {
                Values.refuse(item, "each item once", "Remove one of the two.", faults);
            } else {
                text.ifPresent(value -> read.add(each.apply(value, item.spot())));
            }
        }
        return List.copyOf(read);
    }

    /** Leaves a fault for each key that was never asked for. */
    public void done() {
        object.members().forEach((key, member) -> {
            if (!asked.contains(key)) {
                faults.add(member.spot()
                        .fault(
                                "the unknown key '" + key + "'",
                                "one of " + String.join(", ", asked),
                                Nearest.advice(key, asked, "")));
            }
        });
    }
}
