package boltlore.answers.json;

import boltlore.answers.OrderKit;
import boltlore.json.JsonOut;
import boltlore.resolution.Asker;
import boltlore.resolution.Kit;
import boltlore.resolution.Reason;
import boltlore.resolution.Resolution;
import java.util.Locale;

/** An order with its kit as JSON: everything that the rules concluded. */
public final class KitJson {

    private KitJson() {}

    public static JsonOut.Members of(OrderKit kit) {
        JsonOut.Members members = JsonOut.object()
                .put("order", kit.order().name())
                .put("family", kit.order().family())
                .put("status", status(kit.resolution()))
                .put("stops", kit.resolution().stops())
                .put("findings", JsonOut.list(kit.resolution().findings(), FindingJson::of));
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
                .put(
                        "parts",
                        JsonOut.list(
                                kit.quantities().entrySet(),
                                part -> JsonOut.object()
                                        .put("part", part.getKey().text())
                                        .put("quantity", part.getValue())
                                        .putIfAny("finish", kit.finishes().get(part.getKey()))))
                .put("reasons", JsonOut.list(kit.reasons(), KitJson::reason));
    }

    private static JsonOut reason(Reason reason) {
        return JsonOut.object()
                .put("part", reason.part().text())
                .put("way", reason.way().name().toLowerCase(Locale.ROOT))
                .put(
                        reason.asker() instanceof Asker.OfLine ? "line" : "asker",
                        reason.asker().name());
    }
}
