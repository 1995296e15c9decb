package boltlore.answers.json;

import boltlore.answers.Because;
import boltlore.json.JsonOut;
import boltlore.measure.PartNumber;
import java.util.List;

/** Reasons as nested JSON. */
public final class BecauseJson {

    private BecauseJson() {}

    public static JsonOut of(PartNumber part, boolean inKit, List<Because> reasons) {
        return JsonOut.object()
                .put("part", part.text())
                .put("inKit", inKit)
                .put(inKit ? "because" : "wouldBeBroughtBy", JsonOut.list(reasons, BecauseJson::of));
    }

    private static JsonOut of(Because because) {
        JsonOut.Members members = JsonOut.object().put("sentence", because.sentence());
        return because.further().isEmpty()
                ? members
                : members.put("because", JsonOut.list(because.further(), BecauseJson::of));
    }
}
