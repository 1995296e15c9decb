package boltlore.book.orders;

import boltlore.book.OrderStanding;
import boltlore.book.db.Reading;
import boltlore.faults.Outcome;
import boltlore.findings.Finding;
import boltlore.findings.Severity;
import boltlore.json.Faults;
import boltlore.json.JsonFile;
import boltlore.json.JsonOut;
import boltlore.json.ObjectReader;
import boltlore.trades.orders.KitTrades;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;

/**
 * Something that the rules or a trade found of a kit when it was quoted or a change of it was proposed.
 *
 * @param by the trade's name, or 'kit'
 * @param severity 'stop', 'check' or 'note', after waivers
 * @param kind of finding, by which it is waived
 * @param says in English
 */
public record KeptFinding(String by, String severity, String kind, String subject, String says) {

    static List<KeptFinding> of(KitTrades trades) {
        return trades.found().stream()
                .flatMap(by -> by.findings().all().stream().map(finding -> of(by.by(), finding)))
                .toList();
    }

    private static KeptFinding of(String by, Finding finding) {
        return new KeptFinding(
                by,
                finding.severity().name().toLowerCase(Locale.ROOT),
                finding.kind().code(),
                finding.subject(),
                finding.says());
    }

    public boolean stops() {
        return is(Severity.STOP);
    }

    public boolean isToCheck() {
        return is(Severity.CHECK);
    }

    private boolean is(Severity wanted) {
        return severity.equals(wanted.name().toLowerCase(Locale.ROOT));
    }

    /** All of the kit that the order stands on now. */
    public static List<KeptFinding> of(Reading reading, OrderStanding order) {
        return in(reading, HoldPoints.standing(reading, order).findings());
    }

    /** All of a kit, by the hash under which the book keeps them; none where that is empty. */
    public static List<KeptFinding> in(Reading reading, String hash) {
        if (hash.isEmpty()) {
            return List.of();
        }
        Faults faults = new Faults();
        Outcome<List<KeptFinding>> read = JsonFile.parse(
                        hash, reading.contents().of(hash))
                .then(json -> faults.orElse(ObjectReader.of(json, faults).list("findings", KeptFinding::read)));
        if (read instanceof Outcome.Sound<List<KeptFinding>> sound) {
            return sound.value();
        }
        throw new IllegalStateException("No findings: " + read.faults().get(0));
    }

    static byte[] write(List<KeptFinding> findings) {
        return JsonOut.object()
                .put("findings", JsonOut.list(findings, KeptFinding::json))
                .written()
                .getBytes(StandardCharsets.UTF_8);
    }

    public JsonOut.Members json() {
        return JsonOut.object()
                .put("by", by)
                .put("severity", severity)
                .put("kind", kind)
                .put("subject", subject)
                .put("says", says);
    }

    private static KeptFinding read(ObjectReader reader) {
        return new KeptFinding(
                reader.text("by"),
                reader.text("severity"),
                reader.text("kind"),
                reader.text("subject"),
                reader.text("says"));
    }
}
