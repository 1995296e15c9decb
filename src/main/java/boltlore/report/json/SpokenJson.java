package boltlore.report.json;

import boltlore.json.JsonOut;
import boltlore.report.Block;
import boltlore.report.Heading;
import boltlore.report.Look;
import boltlore.report.Note;
import boltlore.report.Page;
import boltlore.report.Picture;
import boltlore.report.Report;
import boltlore.report.Signatures;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What a report tells people in sentences: cautions with their codes, notes, what drawings show, lines to sign on. */
final class SpokenJson {

    /** What stands on several pages is told once. */
    private final Map<String, JsonOut> cautions = new LinkedHashMap<>();

    private final Map<String, JsonOut> notes = new LinkedHashMap<>();
    private final Map<String, JsonOut> drawings = new LinkedHashMap<>();
    private final Map<String, JsonOut> signatures = new LinkedHashMap<>();
    private String under = "";

    private SpokenJson() {}

    static JsonOut encode(Report report) {
        SpokenJson spoken = new SpokenJson();
        for (Page page : report.pages()) {
            spoken.under = page.tab();
            page.blocks().forEach(spoken::hear);
        }
        return JsonOut.object()
                .put("cautions", all(spoken.cautions))
                .put("notes", all(spoken.notes))
                .put("drawings", all(spoken.drawings))
                .put("signatures", all(spoken.signatures));
    }

    private void hear(Block block) {
        if (block instanceof Heading heading) {
            under = heading.text();
        } else if (block instanceof Note note) {
            once(note.look() == Look.CAUTION ? cautions : notes, spoken(note));
        } else if (block instanceof Picture picture) {
            once(drawings, under(picture.says()));
        } else if (block instanceof Signatures lines) {
            lines.lines().forEach(line -> once(signatures, JsonOut.text(line)));
        }
    }

    private static void once(Map<String, JsonOut> all, JsonOut value) {
        all.putIfAbsent(value.toString(), value);
    }

    private static JsonOut all(Map<String, JsonOut> some) {
        return JsonOut.list(List.copyOf(some.values()));
    }

    private JsonOut spoken(Note note) {
        return note.look() == Look.CAUTION
                ? JsonOut.object()
                        .putIfAny("code", note.key())
                        .put("lead", note.lead())
                        .put("says", note.text())
                : note.key().isEmpty()
                        ? under(note.text())
                        : JsonOut.object()
                                .put("key", note.key())
                                .put("under", under)
                                .put("says", note.text());
    }

    private JsonOut under(String says) {
        return JsonOut.object().put("under", under).put("says", says);
    }
}
