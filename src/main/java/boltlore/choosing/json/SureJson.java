package boltlore.choosing.json;

import boltlore.choosing.SureParts;
import boltlore.json.JsonOut;
import boltlore.order.Order;

/** The parts that an unsettled order is sure to need, as JSON. */
public final class SureJson {

    private SureJson() {}

    public static JsonOut encode(Order order, SureParts sure) {
        return JsonOut.object()
                .put("order", order.name())
                .put("completions", ConflictJson.count(sure.completions()))
                .put("parts", FamilyJson.parts(sure));
    }
}
