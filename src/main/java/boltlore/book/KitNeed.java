package boltlore.book;

import boltlore.faults.Outcome;
import boltlore.json.Faults;
import boltlore.json.JsonFile;
import boltlore.json.JsonOut;
import boltlore.json.ObjectReader;
import boltlore.json.Range;
import boltlore.json.TextShape;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.List;

/**
 * So much of a part a kit asks of the stores, as they hand it out.
 *
 * @param finish that it has there, or empty
 * @param daysBefore calendar days before the kit is due; below 0 after it
 * @param quantity in the part's unit, with at most 6 decimals
 */
public record KitNeed(String part, String finish, int daysBefore, BigDecimal quantity) {

    private static final int MOST_DAYS = 100_000;

    /** All of a kit as the content that the book keeps. */
    public static byte[] write(List<KitNeed> needs) {
        return JsonOut.object()
                .put(
                        "needs",
                        JsonOut.list(
                                needs,
                                need -> JsonOut.object()
                                        .put("part", need.part())
                                        .putIfAny("finish", need.finish())
                                        .put("daysBefore", need.daysBefore())
                                        .put("quantity", need.quantity())))
                .written()
                .getBytes(StandardCharsets.UTF_8);
    }

    /**
     * They again.
     *
     * @throws IllegalStateException where the content is not what {@link #write} made: only that is kept as one
     */
    public static List<KitNeed> read(String hash, byte[] content) {
        Faults faults = new Faults();
        Outcome<List<KitNeed>> needs = JsonFile.parse(hash, content)
                .then(json -> faults.orElse(ObjectReader.of(json, faults).list("needs", KitNeed::one)));
        if (needs instanceof Outcome.Sound<List<KitNeed>> sound) {
            return sound.value();
        }
        throw new IllegalStateException("No needs of a kit: " + needs.faults().get(0));
    }

    private static KitNeed one(ObjectReader reader) {
        return new KitNeed(
                reader.text("part", TextShape.PART_NUMBER),
                reader.findText("finish", TextShape.LINE).orElse(""),
                reader.whole("daysBefore", -MOST_DAYS, MOST_DAYS),
                reader.decimal("quantity", Range.POSITIVE));
    }
}
