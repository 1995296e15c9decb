package boltlore.answers.json;

import boltlore.answers.OrderKit;
import boltlore.bill.Bill;
import boltlore.catalogue.Document;
import boltlore.json.JsonOut;
import boltlore.measure.PartNumber;
import boltlore.resolution.Kit;
import boltlore.resolution.Reason;
import boltlore.resolution.Requirer;
import boltlore.resolution.Resolution;
import boltlore.trades.FoundBy;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;

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
                ? members.put("kit", kit(resolved.kit()).put("documents", documents(kit.bill())))
                : members;
    }

    private static String status(Resolution resolution) {
        if (resolution instanceof Resolution.Resolved) {
            return "resolved";
        }
        return resolution instanceof Resolution.Contradicted ? "conflict" : "incomplete";
    }

    private record Owned(String owner, String name, Document document) {}

    /** Of all parts of the kit, and of the positions that they stand at. */
    private static JsonOut documents(@Nullable Bill bill) {
        Set<Owned> owned = new LinkedHashSet<>();
        if (bill != null) {
            bill.all().forEach(item -> {
                String position = item.position().name().text();
                item.position().documents().forEach(document -> owned.add(new Owned("position", position, document)));
                String part = item.part().number().text();
                item.part().upkeep().documents().forEach(document -> owned.add(new Owned("part", part, document)));
            });
        }
        return JsonOut.list(owned, KitJson::document);
    }

    private static JsonOut document(Owned owned) {
        Document document = owned.document();
        return JsonOut.object()
                .put(owned.owner(), owned.name())
                .put("kind", document.kind().written())
                .put("says", document.says().english())
                .putIfAny("number", document.number())
                .putIfAny("issue", document.issue())
                .putIfAny("file", document.file());
    }

    private static JsonOut.Members kit(Kit kit) {
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
