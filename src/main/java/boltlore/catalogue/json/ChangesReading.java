package boltlore.catalogue.json;

import boltlore.catalogue.Change;
import boltlore.json.Json;
import boltlore.json.ObjectReader;
import boltlore.json.TextShape;
import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Reads the history of a part or a line, oldest first; that of a part ends with the revision that it has. */
final class ChangesReading {

    private ChangesReading() {}

    static List<Change> ofLine(ObjectReader reader) {
        List<Change> changes = reader.findSomeObjects("changes", each -> change(each, null));
        inOrder(changes, reader);
        return changes;
    }

    /** Of a part, whose revision has been read. */
    static List<Change> ofPart(ObjectReader reader) {
        List<Change> changes =
                reader.findSomeObjects("changes", each -> change(each, each.text("revision", TextShape.LINE)));
        inOrder(changes, reader);
        Set<String> met = new HashSet<>();
        for (Change change : changes) {
            if (!met.add(String.valueOf(change.revision()))) {
                reader.faultAt("changes", "revision " + change.revision() + " a second time", "each revision once", "");
            }
        }
        String now = reader.member("revision")
                .filter(Json.Text.class::isInstance)
                .map(json -> ((Json.Text) json).text())
                .orElse("");
        String newest =
                changes.isEmpty() ? now : changes.get(changes.size() - 1).revision();
        if (!now.equals(newest)) {
            reader.faultAt(
                    "changes",
                    "a history that ends with revision " + newest + ", of a part in revision " + now,
                    "the note of revision " + now + " as the last one",
                    "Write it, or correct 'revision'.");
        }
        return changes;
    }

    private static Change change(ObjectReader reader, @Nullable String revision) {
        return new Change(
                revision,
                reader.date("date"),
                reader.text("says"),
                reader.text("because"),
                reader.text("approvedBy", TextShape.LINE));
    }

    private static void inOrder(List<Change> changes, ObjectReader reader) {
        LocalDate before = null;
        for (Change change : changes) {
            if (before != null && change.date().isBefore(before)) {
                reader.faultAt(
                        "changes", change.date() + " after " + before, "the oldest note first, the newest last", "");
            }
            before = change.date();
        }
    }
}
