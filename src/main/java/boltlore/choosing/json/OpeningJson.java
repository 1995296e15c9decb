package boltlore.choosing.json;

import boltlore.choosing.Opening;
import boltlore.choosing.Repair;
import boltlore.json.JsonOut;

/** What would make a value available, as JSON. */
public final class OpeningJson {

    private OpeningJson() {}

    public static JsonOut.Members encode(Opening opening) {
        if (opening instanceof Opening.Repairs repairs) {
            return JsonOut.object()
                    .put("state", "repairs")
                    .put("complete", repairs.complete())
                    .put("repairs", JsonOut.list(repairs.repairs(), OpeningJson::repair));
        }
        if (opening instanceof Opening.Impossible impossible) {
            return JsonOut.object()
                    .put("state", "impossible")
                    .put("because", ConflictJson.encode(impossible.conflict()));
        }
        return JsonOut.object().put("state", opening instanceof Opening.AlreadyOpen ? "available already" : "stopped");
    }

    private static JsonOut repair(Repair repair) {
        JsonOut.Members members = JsonOut.object()
                .put("givenUp", ConflictJson.choices(repair.givenUp()))
                .put("taken", ConflictJson.choices(repair.taken()))
                .put("alternatives", BestKitJson.byOption(repair.alternatives()))
                .put("fullCost", repair.kit().sum())
                .putIfAny("price", repair.kit().price().orElse(null))
                .put("leadDays", repair.kit().leadDays());
        return repair.before() == null ? members : withDifference(members, repair);
    }

    private static JsonOut withDifference(JsonOut.Members members, Repair repair) {
        return members.putIfAny("morePrice", repair.morePrice().orElse(null))
                .put("moreLeadDays", repair.moreLeadDays());
    }
}
