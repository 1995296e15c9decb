package boltlore.choosing.json;

import boltlore.choosing.Chooser;
import boltlore.choosing.FamilyQuestions.Bringing;
import boltlore.choosing.FamilyQuestions.Together;
import boltlore.choosing.SureParts;
import boltlore.explanation.ConditionWords;
import boltlore.json.JsonOut;
import boltlore.logic.Count;
import boltlore.measure.PartNumber;
import java.math.BigDecimal;

/** Answers on all orders of a family, as JSON. Numbers of orders are texts, exact, or null where counting was given up. */
public final class FamilyJson {

    private FamilyJson() {}

    public static JsonOut count(Count count) {
        return JsonOut.object().put("orders", ConflictJson.count(count));
    }

    public static JsonOut bringing(PartNumber part, Bringing bringing, ConditionWords words) {
        return JsonOut.object()
                .put("part", part.text())
                .put(
                        "when",
                        bringing.when()
                                .map(words::of)
                                .<JsonOut>map(JsonOut::text)
                                .orElseGet(JsonOut::nothing))
                .put("containing", ConflictJson.count(bringing.bringing()))
                .put("orders", ConflictJson.count(bringing.all()));
    }

    public static JsonOut together(Together together) {
        if (together instanceof Together.Possible possible) {
            return JsonOut.object()
                    .put("together", true)
                    .put("order", ConflictJson.choices(Chooser.list(possible.order())));
        }
        return JsonOut.object()
                .put("together", false)
                .put("because", ConflictJson.encode(((Together.Never) together).conflict()));
    }

    public static JsonOut sure(SureParts sure) {
        return JsonOut.object()
                .put("completions", ConflictJson.count(sure.completions()))
                .put("parts", parts(sure));
    }

    static JsonOut parts(SureParts sure) {
        return JsonOut.list(
                sure.least().entrySet(),
                part -> JsonOut.object()
                        .put("part", part.getKey().text())
                        .put("atLeast", new BigDecimal(part.getValue().toPlainString())));
    }
}
