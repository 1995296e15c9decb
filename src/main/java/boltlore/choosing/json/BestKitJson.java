package boltlore.choosing.json;

import boltlore.catalogue.OptionValue;
import boltlore.choosing.BestKit;
import boltlore.json.JsonOut;
import java.util.List;

/** A best kit as JSON. */
public final class BestKitJson {

    private BestKitJson() {}

    public static JsonOut.Members of(BestKit kit) {
        JsonOut.Members choices = JsonOut.object();
        kit.choices().values().forEach((option, value) -> choices.put(option.text(), value));
        JsonOut.Members ties = JsonOut.object();
        kit.ties().forEach((option, values) -> ties.put(option.text(), values(values)));
        return JsonOut.object()
                .put("aim", kit.aim().written())
                .put("choices", choices)
                .put("currency", kit.bill().currency().getCurrencyCode())
                .put("cost", kit.cost())
                .put("price", kit.price())
                .put("massKg", kit.massKg())
                .put("leadDays", kit.leadDays())
                .put("provedSum", kit.sum())
                .put("grain", kit.grain())
                .put("asGood", ties)
                .put(
                        "passedOver",
                        JsonOut.list(
                                kit.passedOver(),
                                finding -> JsonOut.object()
                                        .put("finding", finding.kind().written())
                                        .put("subject", finding.subject())));
    }

    static JsonOut values(List<OptionValue> values) {
        return JsonOut.list(values, value -> JsonOut.text(value.value()));
    }
}
