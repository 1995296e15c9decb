package boltlore.choosing.json;

import boltlore.catalogue.OptionValue;
import boltlore.choosing.BestKit;
import boltlore.choosing.Chooser;
import boltlore.json.JsonOut;
import boltlore.measure.OptionName;
import boltlore.resolution.Finding;
import java.util.List;
import java.util.Map;

/** A best kit as JSON. */
public final class BestKitJson {

    private BestKitJson() {}

    public static JsonOut.Members encode(BestKit kit) {
        return JsonOut.object()
                .put("aim", kit.aim().written())
                .put("choices", ConflictJson.choices(Chooser.list(kit.choices())))
                .putIfAny(
                        "currency",
                        kit.pricing()
                                .quotation()
                                .map(quotation -> quotation.currency().getCurrencyCode())
                                .orElse(""))
                .putIfAny("price", kit.price().orElse(null))
                .put("massKg", kit.massKg())
                .put("leadDays", kit.leadDays())
                .put("asGood", byOption(kit.ties()))
                .put("passedOver", JsonOut.list(kit.passedOver(), BestKitJson::finding));
    }

    private static JsonOut finding(Finding finding) {
        return JsonOut.object().put("finding", finding.kind().written()).put("subject", finding.subject());
    }

    static JsonOut byOption(Map<OptionName, List<OptionValue>> values) {
        JsonOut.Members all = JsonOut.object();
        values.forEach((option, some) -> all.put(option.text(), values(some)));
        return all;
    }

    private static JsonOut values(List<OptionValue> values) {
        return JsonOut.list(values, value -> JsonOut.text(value.value()));
    }
}
