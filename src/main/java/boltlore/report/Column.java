package boltlore.report;

import java.util.Currency;

/**
 * A column of a table.
 *
 * @param key stable name for formulas, JSON and rows; never shown
 * @param heading what people read, in the sheet's language
 * @param unit of all its numbers, shown in the heading; empty where there is none
 * @param widest characters after which text goes on in the next line
 * @param onPaper whether it is printed; else it stands beside the printed page, on the screen only
 */
public record Column(String key, String heading, String unit, Kind kind, int widest, boolean onPaper) {

    /** Text that needs more than this many characters is wrapped unless the column says otherwise. */
    public static final int USUAL_WIDEST = 36;

    public Column {
        if (key.isBlank()) {
            throw new IllegalArgumentException("A column has a key");
        }
        if (unit.isEmpty()) {
            unit = kind.unit();
        }
    }

    public Column(String key, String heading, Kind kind) {
        this(key, heading, "", kind, USUAL_WIDEST, true);
    }

    public static Column text(String key, String heading) {
        return new Column(key, heading, Kind.text());
    }

    public static Column whole(String key, String heading) {
        return new Column(key, heading, Kind.whole());
    }

    public static Column decimal(String key, String heading, int scale) {
        return new Column(key, heading, Kind.decimal(scale));
    }

    public static Column quantity(String key, String heading) {
        return new Column(key, heading, Kind.quantity());
    }

    public static Column money(String key, String heading, Currency currency) {
        return new Column(key, heading, Kind.money(currency));
    }

    public static Column percent(String key, String heading, int scale) {
        return new Column(key, heading, "%", Kind.percent(scale), USUAL_WIDEST, true);
    }

    public static Column date(String key, String heading) {
        return new Column(key, heading, Kind.date());
    }

    public static Column code(String key, String heading) {
        return new Column(key, heading, Kind.code());
    }

    public static Column tick(String key, String heading) {
        return new Column(key, heading, Kind.tick());
    }

    public static Column blank(String key, String heading) {
        return new Column(key, heading, Kind.blank());
    }

    public static Column signature(String key, String heading) {
        return new Column(key, heading, Kind.signature());
    }

    public Column in(String unitOfAll) {
        return new Column(key, heading, unitOfAll, kind, widest, onPaper);
    }

    public Column atMost(int characters) {
        return new Column(key, heading, unit, kind, characters, onPaper);
    }

    /** Seen on the screen, and by programs, but not printed. */
    public Column besideThePaper() {
        return new Column(key, heading, unit, kind, widest, false);
    }

    /** Heading and unit: 'Mass (kg)'. */
    public String headingWithUnit() {
        return unit.isEmpty() ? heading : heading + " (" + unit + ")";
    }
}
