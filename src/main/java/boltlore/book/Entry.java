package boltlore.book;

import boltlore.faults.Outcome;
import boltlore.json.Json;
import boltlore.json.JsonFile;
import boltlore.json.JsonOut;
import boltlore.json.ObjectReader;
import boltlore.json.Range;
import boltlore.json.Shape;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Instant;
import java.time.format.DateTimeParseException;
import java.util.HexFormat;
import org.jspecify.annotations.Nullable;

/**
 * One entry of the journal.
 *
 * @param number from 1, without a gap
 * @param data of the happening, as JSON in one line
 * @param reason why, in the words of who did it; may be empty
 * @param chain SHA-256 (FIPS 180-4) over the chain of the entry before and this entry's line: books with the same last
 *     chain hold the same journal, and an entry that was changed afterwards shows
 */
public record Entry(long number, Stamp stamp, Subject subject, String kind, String data, String reason, String chain) {

    /** Stands before the first entry. */
    public static final String NO_CHAIN = "0".repeat(64);

    /** What follows an entry with that chain. */
    public static Entry following(long lastNumber, String lastChain, Stamp stamp, Happening happening, String reason) {
        Entry open = new Entry(
                lastNumber + 1,
                stamp,
                happening.subject(),
                happening.kind(),
                happening.data().writtenInLine(),
                reason,
                "");
        return open.chained(lastChain);
    }

    private Entry chained(String lastChain) {
        return new Entry(number, stamp, subject, kind, data, reason, sha256(lastChain + "\n" + line()));
    }

    /** Whether this entry is as it was written, and follows one with that number and chain. */
    public boolean follows(long lastNumber, String lastChain) {
        return number == lastNumber + 1 && chained(lastChain).chain.equals(chain);
    }

    /** What has happened, read from the data; faulty where a newer program wrote it, or nobody's program. */
    public Outcome<Happening> happening() {
        return JsonFile.parse("entry " + number, data.getBytes(StandardCharsets.UTF_8))
                .then(json -> Happenings.read(this, json));
    }

    /** The entry without its chain as one line of JSON; always the same text for the same entry. */
    private String line() {
        return members("").writtenInLine();
    }

    /** The line of the journal's export. */
    public String exported() {
        return members(chain).writtenInLine();
    }

    private JsonOut.Members members(String withChain) {
        return JsonOut.object()
                .put("entry", number)
                .put("at", written(stamp.at()))
                .put("desk", stamp.desk())
                .put("person", stamp.person())
                .put("what", subject.what())
                .put("name", subject.name())
                .put("kind", kind)
                .put("data", new JsonOut.Plain(data))
                .putIfAny("reason", reason)
                .putIfAny("chain", withChain);
    }

    /** An entry out of an export. */
    public static Entry read(ObjectReader reader) {
        Entry entry = new Entry(
                number(reader),
                new Stamp(at(reader), reader.text("desk"), reader.text("person")),
                new Subject(reader.text("what"), reader.text("name")),
                reader.text("kind"),
                data(reader),
                reader.findText("reason").orElse(""),
                reader.text("chain"));
        reader.done();
        return entry;
    }

    private static long number(ObjectReader reader) {
        return reader.get("entry", Range.above(0, Long.MAX_VALUE))
                .filter(Json.Num.class::isInstance)
                .map(json -> ((Json.Num) json).number().longValue())
                .orElse(0L);
    }

    private static String data(ObjectReader reader) {
        return reader.get("data", new Shape.Named("data"))
                .map(json -> JsonOut.of(json).writtenInLine())
                .orElse("{}");
    }

    private static Instant at(ObjectReader reader) {
        Instant at = instant(reader.text("at"));
        if (at == null && reader.has("at")) {
            reader.faultAt("at", reader.text("at"), "an instant as 2026-11-30T08:15:00.000Z (ISO 8601)", "");
        }
        return at == null ? Instant.EPOCH : at;
    }

    private static @Nullable Instant instant(String text) {
        try {
            return Instant.parse(text);
        } catch (DateTimeParseException none) {
            return null;
        }
    }

    /** An instant as it stands in the book: always of one length, so that its text sorts as it does. */
    public static String written(Instant at) {
        String text = at.toString();
        String seconds = text.substring(0, text.length() - 1);
        int point = seconds.indexOf('.');
        return point < 0 ? seconds + ".000Z" : (seconds + "00").substring(0, point + 4) + "Z";
    }

    /** SHA-256 (FIPS 180-4) in hexadecimal digits. */
    public static String sha256(byte[] bytes) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("Every Java has SHA-256", e);
        }
    }

    private static String sha256(String text) {
        return sha256(text.getBytes(StandardCharsets.UTF_8));
    }
}
