package boltlore.answers.json;

import boltlore.answers.OrderKit;
import boltlore.json.JsonOut;
import boltlore.measure.PartNumber;
import boltlore.resolution.Kit;
import boltlore.resolution.Reason;
import boltlore.resolution.Requirer;
import boltlore.resolution.Resolution;
import boltlore.trades.FoundBy;
import java.util.List;
import java.util.Objects;

/** An order with its kit as JSON: everything that the rules concluded. */
public final class KitJson {

    private KitJson() {}

    public static JsonOut.Members encode(OrderKit kit, List<FoundBy> found) {
        JsonOut.Members members = JsonOut.object()
                .put("order", kit.order().name())
                .put("family", kit.order().family())
                .put("status", status(kit.resolution()))
                .put("stops", found.stream().anyMatch(by -> by.findings().stops()))
                .put("findings", FindingJson.encode(found));
        return kit.resolution() instanceof Resolution.Resolved resolved
                ? members.put("kit", kit(resolved.kit()))
                : members;
    }

    private static String status(Resolution resolution) {
        if (resolution instanceof Resolution.Resolved) {
            return "resolved";
        }
        return resolution instanceof Resolution.Contradicted ? "conflict" : "incomplete";
    }

    private static JsonOut kit(Kit kit) {
        return JsonOut.object()
                .put("lines", JsonOut.texts(kit.lines()))
                .put("leftOut", JsonOut.texts(kit.leftOut()))
                .put("parts", JsonOut.list(kit.quantities().keySet(), part -> part(kit, part)))
                .put("reasons", JsonOut.list(kit.reasons(), KitJson::reason));
    }

    private static JsonOut part(Kit kit, PartNumber part) {
        return JsonOut.object()
                .put("part", part.text())
                .put("quantity", Objects.requireNonNull(kit.quantities().get(part)))
                .putIfAny("finish", kit.finishes().get(part));
    }

    private static JsonOut reason(Reason reason) {
        return JsonOut.object()
                .put("part", reason.part().text())
                .put("way", reason.way())
                .put(
                        reason.asker() instanceof Requirer.OfLine ? "line" : "asker",
                        reason.asker().name());
    }
}
