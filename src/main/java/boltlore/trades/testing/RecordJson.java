package boltlore.trades.testing;

import boltlore.faults.Outcome;
import boltlore.json.Faults;
import boltlore.json.Json;
import boltlore.json.JsonFile;
import boltlore.json.JsonOut;
import boltlore.json.ObjectReader;
import boltlore.json.Shape;
import boltlore.json.SourceLocation;
import boltlore.json.TextShape;
import java.util.List;

/**
 * <code>{"order": "BL-1001", "limits": "L0123456789ab", "readings": [{"box": "bonding.charger", "unit": "ohm", "value":
 * "0.012", "instrument": "M-7", "by": "R. Oakes", "on": "2026-03-31"}]}</code>.
 */
public final class RecordJson {

    private static final int MOST_DIGITS = 30;

    private final Faults faults = new Faults();

    private RecordJson() {}

    /** A record to be filled in: every box of the plan, in order, with its unit. */
    public static String empty(TestPlan plan) {
        return JsonOut.object()
                .put("order", plan.order())
                .put("limits", plan.limits())
                .put("readings", JsonOut.list(plan.boxes().toList(), RecordJson::box))
                .written();
    }

    private static JsonOut box(Box box) {
        return JsonOut.object()
                .put("box", box.key())
                .put("unit", box.unit())
                .put("value", "")
                .put("instrument", "")
                .put("by", "")
                .put("on", "");
    }

    static Outcome<List<TestRecord>> read(String file, byte[] bytes) {
        return JsonFile.parse(file, bytes).then(json -> new RecordJson().record(file, json));
    }

    private Outcome<List<TestRecord>> record(String file, Json json) {
        ObjectReader reader = ObjectReader.of(json, faults);
        TestRecord record = new TestRecord(
                file,
                reader.text("order", TextShape.ORDER_NAME),
                reader.text("limits", TextShape.LINE),
                reader.objects("readings", this::reading));
        reader.done();
        return faults.orElse(List.of(record));
    }

    private Reading reading(ObjectReader reader) {
        SourceLocation location = reader.spot();
        return new Reading(
                reader.text("box", TextShape.LINE),
                word(reader, "value"),
                word(reader, "unit"),
                word(reader, "instrument"),
                word(reader, "by"),
                word(reader, "on"),
                location.file(),
                location.line(),
                location.pointer());
    }

    /** A text or number as it was written; what is not filled in is an empty text, or nothing at all. */
    private String word(ObjectReader reader, String key) {
        Json json = reader.find(key, Shape.Plain.ANY).orElse(null);
        if (json instanceof Json.Text text) {
            return text.text().strip();
        }
        if (json instanceof Json.Num number) {
            // Plain digits of an absurd exponent would fill the memory; no reading has one.
            boolean sane = Math.abs(number.number().scale()) < MOST_DIGITS;
            return sane ? number.number().toPlainString() : number.number().toString();
        }
        if (json != null && !(json instanceof Json.Nothing)) {
            reader.faultAt(key, json.shown(), "a text or a number", "");
        }
        return "";
    }
}
