package boltlore.proof.json;

import boltlore.json.JsonOut;
import boltlore.measure.PartNumber;
import boltlore.proof.revision.Case;
import boltlore.proof.revision.ExampleKit;
import boltlore.proof.revision.PartChange;
import boltlore.proof.revision.PartEdit;
import boltlore.proof.revision.Revision;
import java.math.BigDecimal;
import java.util.List;

/** What an edit changes, as one JSON object. */
public final class RevisionJson {

    private RevisionJson() {}

    public static JsonOut of(String family, Revision revision) {
        JsonOut.Members out = JsonOut.object()
                .put("family", family)
                .put("validInBoth", CountJson.of(revision.both()))
                .put("validOnlyBefore", CountJson.of(revision.onlyBefore()))
                .put("validOnlyAfter", CountJson.of(revision.onlyAfter()))
                .put("changed", CountJson.of(revision.changed()))
                .put(
                        "when",
                        revision.cases()
                                .<JsonOut>map(cases -> JsonOut.list(cases, RevisionJson::of))
                                .orElseGet(JsonOut::nothing))
                .put("parts", JsonOut.list(revision.parts(), RevisionJson::of))
                .put("edits", JsonOut.list(revision.edits(), RevisionJson::of))
                .putIfAny("optionsOfOneOnly", revision.newOptions())
                .put("undecided", JsonOut.list(List.copyOf(revision.undecided().keySet()), RevisionJson::text))
                .put("unproved", JsonOut.list(revision.unproved(), RevisionJson::text));
        revision.example().ifPresent(example -> out.put("example", of(example)));
        return out;
    }

    private static JsonOut text(PartNumber part) {
        return JsonOut.text(part.text());
    }

    private static JsonOut of(Case found) {
        JsonOut.Members out = JsonOut.object();
        found.values().forEach((option, values) -> out.put(option.text(), JsonOut.texts(values)));
        return out;
    }

    private static JsonOut of(PartChange change) {
        return JsonOut.object()
                .put("part", change.part().text())
                .put("orders", CountJson.of(change.orders()))
                .put("differences", JsonOut.list(change.differences(), JsonOut::decimal));
    }

    private static JsonOut of(PartEdit edit) {
        return JsonOut.object()
                .put("part", edit.part().text())
                .put("orders", CountJson.of(edit.orders()))
                .put("different", JsonOut.list(edit.what(), RevisionJson::of));
    }

    private static JsonOut of(PartEdit.Edit edit) {
        JsonOut.Members out = JsonOut.object().put("what", edit.what());
        return edit.before().isEmpty() && edit.after().isEmpty()
                ? out
                : out.put("before", edit.before()).put("after", edit.after());
    }

    private static JsonOut of(ExampleKit example) {
        JsonOut.Members choices = JsonOut.object();
        example.order().values().forEach((option, value) -> choices.put(option.text(), value));
        JsonOut.Members parts = JsonOut.object();
        example.before()
                .forEach((part, before) -> parts.put(
                        part.text(),
                        JsonOut.object()
                                .put("before", before)
                                .put("after", example.after().getOrDefault(part, BigDecimal.ZERO))));
        return JsonOut.object().put("choices", choices).put("parts", parts);
    }
}
