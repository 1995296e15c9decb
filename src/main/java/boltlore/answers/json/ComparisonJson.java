package boltlore.answers.json;

import boltlore.answers.Comparison;
import boltlore.json.JsonOut;

/** A comparison of two kits as JSON. */
public final class ComparisonJson {

    private ComparisonJson() {}

    public static JsonOut of(Comparison comparison) {
        return JsonOut.object()
                .put(
                        "changes",
                        JsonOut.list(
                                comparison.changes().entrySet(),
                                change -> JsonOut.object()
                                        .put("part", change.getKey().text())
                                        .put("before", change.getValue().before())
                                        .put("after", change.getValue().after())))
                .put("findingsGone", JsonOut.list(comparison.findingsGone(), FindingJson::of))
                .put("findingsNew", JsonOut.list(comparison.findingsNew(), FindingJson::of))
                .put("costDifference", comparison.costDifference())
                .put("massKgDifference", comparison.massKgDifference());
    }
}
