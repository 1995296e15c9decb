package boltlore.book;

import boltlore.json.JsonOut;
import boltlore.json.ObjectReader;
import boltlore.json.Range;
import boltlore.json.TextShape;
import java.math.BigDecimal;

/**
 * One item of a kit as it was resolved, at its place in the bill.
 *
 * @param level 1 for what a line or a need brings, one more inside each assembly
 * @param finish that it takes, or empty
 * @param source 'make' or 'buy'
 * @param picked whether stores hand it out at this level
 * @param tracked 'serial', 'lot' or empty
 * @param drawing number of the drawing it is made to, or empty
 * @param issue of that drawing, or empty
 */
public record KitLine(
        int level,
        String position,
        String part,
        String revision,
        String finish,
        BigDecimal quantity,
        String unit,
        String source,
        boolean picked,
        String tracked,
        String drawing,
        String issue) {

    private static final int DEEPEST = 100;

    public JsonOut.Members json() {
        return JsonOut.object()
                .put("level", level)
                .put("position", position)
                .put("part", part)
                .put("revision", revision)
                .putIfAny("finish", finish)
                .put("quantity", quantity)
                .put("unit", unit)
                .put("source", source)
                .put("picked", picked)
                .putIfAny("tracked", tracked)
                .putIfAny("drawing", drawing)
                .putIfAny("issue", issue);
    }

    public static KitLine read(ObjectReader reader) {
        return new KitLine(
                reader.whole("level", 1, DEEPEST),
                reader.text("position"),
                reader.text("part", TextShape.PART_NUMBER),
                reader.text("revision"),
                reader.findText("finish").orElse(""),
                reader.decimal("quantity", Range.NOT_NEGATIVE),
                reader.text("unit"),
                reader.text("source"),
                reader.truth("picked", false),
                reader.findText("tracked").orElse(""),
                reader.findText("drawing").orElse(""),
                reader.findText("issue").orElse(""));
    }
}
