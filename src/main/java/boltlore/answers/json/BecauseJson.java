package boltlore.answers.json;

import boltlore.answers.Because;
import boltlore.json.JsonOut;
import java.util.List;

/** Reasons as nested JSON. */
public final class BecauseJson {

    private BecauseJson() {}

    /** Reasons of one part, beside what an object already says of it. */
    public static JsonOut into(JsonOut.Members said, boolean inKit, List<Because> reasons) {
        return said.put("inKit", inKit)
                .put(inKit ? "because" : "wouldBeAddedBy", JsonOut.list(reasons, BecauseJson::encode));
    }

    private static JsonOut encode(Because because) {
        JsonOut.Members members = JsonOut.object().put("sentence", because.sentence());
        return because.further().isEmpty()
                ? members
                : members.put("because", JsonOut.list(because.further(), BecauseJson::encode));
    }
}
