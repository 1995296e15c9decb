package boltlore.answers.json;

import boltlore.answers.Comparison;
import boltlore.json.JsonOut;
import java.util.Map;

/** A comparison of two kits as JSON. */
public final class ComparisonJson {

    private ComparisonJson() {}

    private static JsonOut change(Map.Entry<Comparison.Piece, Comparison.Change> change) {
        return JsonOut.object()
                .put("part", change.getKey().part().text())
                .put("revision", change.getKey().revision())
                .putIfAny("finish", change.getKey().finish())
                .put("before", change.getValue().before())
                .put("after", change.getValue().after());
    }

    public static JsonOut.Members of(Comparison comparison) {
        return JsonOut.object()
                .put("changes", JsonOut.list(comparison.changes().entrySet(), ComparisonJson::change))
                .put("findingsGone", JsonOut.list(comparison.findingsGone(), FindingJson::of))
                .put("findingsNew", JsonOut.list(comparison.findingsNew(), FindingJson::of))
                .put("massKgDifference", comparison.massKgDifference());
    }
}
