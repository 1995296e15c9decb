package boltlore.answers.json;

import boltlore.answers.SureParts;
import boltlore.json.JsonOut;
import boltlore.order.Order;

/** The parts that an unsettled order is sure to need, as JSON. */
public final class SureJson {

    private SureJson() {}

    public static JsonOut of(Order order, SureParts sure) {
        return JsonOut.object()
                .put("order", order.name())
                .put("completions", sure.completions())
                .put(
                        "parts",
                        JsonOut.list(
                                sure.least().entrySet(),
                                part -> JsonOut.object()
                                        .put("part", part.getKey().text())
                                        .put("atLeast", part.getValue())));
    }
}
