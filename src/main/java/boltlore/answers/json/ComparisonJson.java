package boltlore.answers.json;

import boltlore.answers.Comparison;
import boltlore.choices.Choices;
import boltlore.explanation.FindingWords;
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

    public static JsonOut.Members encode(Comparison comparison, Choices first, Choices second) {
        return JsonOut.object()
                .put("changes", JsonOut.list(comparison.changes().entrySet(), ComparisonJson::change))
                .put(
                        "findingsGone",
                        FindingJson.encode(new FindingWords(first.family()).of(comparison.findingsGone(), first)))
                .put(
                        "findingsNew",
                        FindingJson.encode(new FindingWords(second.family()).of(comparison.findingsNew(), second)))
                .put("massKgDifference", comparison.massKgDifference());
    }
}
