package boltlore.answers.json;

import boltlore.json.JsonOut;
import boltlore.resolution.Finding;

/** A finding as JSON. */
public final class FindingJson {

    private FindingJson() {}

    public static JsonOut of(Finding finding) {
        return JsonOut.object()
                .put("finding", finding.kind().written())
                .put("subject", finding.subject())
                .putIfAny("detail", finding.detail())
                .put("severity", finding.severity().says());
    }
}
