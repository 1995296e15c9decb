package boltlore.proof.json;

import boltlore.catalogue.Change;
import boltlore.json.JsonOut;
import boltlore.measure.PartNumber;
import boltlore.proof.revision.Case;
import boltlore.proof.revision.ExampleKit;
import boltlore.proof.revision.PartChange;
import boltlore.proof.revision.PartEdit;
import boltlore.proof.revision.Revision;
import boltlore.proof.revision.RevisionNote;
import java.math.BigDecimal;
import java.util.List;

/** What an edit changes, as one JSON object. */
public final class RevisionJson {

    private RevisionJson() {}

    public static JsonOut encode(String family, Revision revision) {
        JsonOut.Members out = JsonOut.object()
                .put("family", family)
                .put("validInBoth", CountJson.encode(revision.both()))
                .put("validOnlyBefore", CountJson.encode(revision.onlyBefore()))
                .put("validOnlyAfter", CountJson.encode(revision.onlyAfter()))
                .put("changed", CountJson.encode(revision.changed()))
                .put(
                        "when",
                        revision.cases()
                                .<JsonOut>map(cases -> JsonOut.list(cases, RevisionJson::encode))
                                .orElseGet(JsonOut::nothing))
                .put("parts", JsonOut.list(revision.parts(), RevisionJson::encode))
                .put("edits", JsonOut.list(revision.edits(), RevisionJson::encode))
                .put("notes", notes(revision))
                .putIfAny("optionsOfOneOnly", revision.newOptions())
                .put("undecided", JsonOut.list(List.copyOf(revision.undecided().keySet()), RevisionJson::text))
                .put("unproved", JsonOut.list(revision.unproved(), RevisionJson::text));
        revision.example().ifPresent(example -> out.put("example", encode(example)));
        return out;
    }

    /** Of each part that changes, what somebody has written down since; an empty list where nobody has. */
    private static JsonOut notes(Revision revision) {
        JsonOut.Members out = JsonOut.object();
        revision.notes().forEach((part, notes) -> out.put(part.text(), JsonOut.list(notes, RevisionJson::encode)));
        return out;
    }

    private static JsonOut encode(RevisionNote note) {
        Change change = note.change();
        return JsonOut.object()
                .put("of", note.of())
                .putIfAny("revision", change.revision())
                .put("date", change.date().toString())
                .put("says", change.says())
                .put("because", change.because())
                .put("approvedBy", change.approvedBy());
    }

    private static JsonOut text(PartNumber part) {
        return JsonOut.text(part.text());
    }

    private static JsonOut encode(Case found) {
        JsonOut.Members out = JsonOut.object();
        found.values().forEach((option, values) -> out.put(option.text(), JsonOut.texts(values)));
        return out;
    }

    private static JsonOut encode(PartChange change) {
        return JsonOut.object()
                .put("part", change.part().text())
                .put("orders", CountJson.encode(change.orders()))
                .put("differences", JsonOut.list(change.differences(), JsonOut::decimal));
    }

    private static JsonOut encode(PartEdit edit) {
        return JsonOut.object()
                .put("part", edit.part().text())
                .put("orders", CountJson.encode(edit.orders()))
                .put("different", JsonOut.list(edit.what(), RevisionJson::encode));
    }

    private static JsonOut encode(PartEdit.Edit edit) {
        JsonOut.Members out = JsonOut.object().put("what", edit.what());
        return edit.before().isEmpty() && edit.after().isEmpty()
                ? out
                : out.put("before", edit.before()).put("after", edit.after());
    }

    private static JsonOut encode(ExampleKit example) {
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
