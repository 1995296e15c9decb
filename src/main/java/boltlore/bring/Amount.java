package boltlore.bring;

import boltlore.grid.GridCell;
import java.math.BigDecimal;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A number as people write it, with its unit if it has one.
 *
 * @param number in that unit
 * @param unit each, set, m, l or kg, as the catalogue counts; empty where none is written
 */
public record Amount(BigDecimal number, String unit) {

    private static final Pattern WRITTEN = Pattern.compile(
            "(?:(?:[x×*]\\s?)?([+-]?[\\d.,'’\\u00a0\\u202f ]*\\d)\\s*(?:[x×*](?=\\s|$))?)\\s*(\\p{L}[\\p{L}².]*)?",
            Pattern.CASE_INSENSITIVE);
    private static final Pattern MONEY =
            Pattern.compile("\\p{Sc}|\\b(EUR|USD|GBP|CHF|SEK|NOK|DKK|CNY|RMB)\\b|(?<=\\d)[,.]?[–-]$");

    /** Written units, as a multiple of the catalogue's. */
    private static final Map<String, Amount> UNITS = units();

    private static Map<String, Amount> units() {
        Map<String, Amount> units = new HashMap<>();
        put(
                units,
                "each",
                "1",
                "each ea pc pcs piece pieces st stk stck stueck stück off no nos pce pz pza ud u x 个 只 件 pièce pièces pièce(s)");
        put(units, "set", "1", "set sets satz sätze kit kits jeu jeux pair pairs paar paire 套");
        put(units, "m", "1", "m mtr meter metre meters metres mètre mètres 米");
        put(units, "m", "0.001", "mm");
        put(units, "m", "0.01", "cm");
        put(units, "m", "0.3048", "ft feet foot");
        put(units, "m", "0.0254", "inch inches zoll");
        put(units, "kg", "1", "kg kilo kilos");
        put(units, "kg", "0.001", "g gr gramm gram grams gramme grammes");
        put(units, "l", "1", "l ltr liter litre liters litres");
        put(units, "l", "0.001", "ml");
        put(units, "l", "0.01", "cl");
        return Map.copyOf(units);
    }

    private static void put(Map<String, Amount> units, String unit, String times, String written) {
        for (String word : written.split(" ", -1)) {
            units.put(word, new Amount(new BigDecimal(times), unit));
        }
    }

    /** The unit that this word stands for, and how much of it. */
    static Optional<Amount> unit(String word) {
        String bare = word.toLowerCase(Locale.ROOT).replaceAll("[.\\s]+$", "");
        return Optional.ofNullable(UNITS.get(bare));
    }

    /**
     * What a cell counts; empty where it is no plain number with a known unit. A range, an estimate and a sum written out
     * are none: which number of it counts is not for a program to say.
     */
    static Optional<Amount> of(GridCell cell, boolean decimalComma) {
        BigDecimal number = cell.number();
        return number != null
                ? Optional.of(new Amount(number, formatUnit(cell.format())))
                : cell.isText() ? of(cell.text(), decimalComma) : Optional.empty();
    }

    /** The unit that a number format writes behind the number: {@code 0.0" m"}. */
    private static String formatUnit(String format) {
        Matcher quoted = Pattern.compile("[0#]\\s*\"\\s*(\\p{L}+)\\s*\"").matcher(format);
        return quoted.find()
                ? unit(quoted.group(1))
                        .filter(unit -> unit.number().intValue() == 1)
                        .map(Amount::unit)
                        .orElse("")
                : "";
    }

    static Optional<Amount> of(String text, boolean decimalComma) {
        Matcher matcher = WRITTEN.matcher(text.strip());
        if (!matcher.matches()) {
            return Optional.empty();
        }
        Optional<BigDecimal> number = number(matcher.group(1), decimalComma);
        String word = matcher.group(2);
        if (word == null) {
            return number.map(plain -> new Amount(plain, ""));
        }
        return number.flatMap(plain ->
                unit(word).map(unit -> new Amount(plain.multiply(unit.number()).stripTrailingZeros(), unit.unit())));
    }

    /** A sum of money, its sign or code passed over. */
    static Optional<BigDecimal> money(GridCell cell, boolean decimalComma) {
        BigDecimal number = cell.number();
        if (number != null) {
            return Optional.of(number);
        }
        return cell.isText()
                ? number(MONEY.matcher(cell.text()).replaceAll("").strip(), decimalComma)
                : Optional.empty();
    }

    /** Plain digits with one decimal sign; what parts thousands stands before three digits each time. */
    static Optional<BigDecimal> number(String written, boolean decimalComma) {
        char decimal = decimalComma ? ',' : '.';
        String thousands = decimalComma ? "[.'’\\u00a0\\u202f ]" : "[,'’\\u00a0\\u202f ]";
        String plain =
                "[+-]?(\\d+|\\d{1,3}(" + thousands + "\\d{3})+)(\\" + decimal + "\\d+)?|[+-]?\\" + decimal + "\\d+";
        return written.matches(plain)
                ? Optional.of(new BigDecimal(written.replaceAll(thousands, "").replace(decimal, '.')))
                : Optional.empty();
    }

    /** Whether the text is written with a decimal comma, with a point, or tells neither. */
    static int commaOrPoint(String text) {
        boolean comma =
                text.matches("[^\\d]*\\d{1,3}([.'’ \\u00a0\\u202f]\\d{3})*,\\d{1,2}(\\D.*)?|[^\\d]*0,\\d+(\\D.*)?");
        boolean point =
                text.matches("[^\\d]*\\d{1,3}([,'’ \\u00a0\\u202f]\\d{3})*\\.\\d{1,2}(\\D.*)?|[^\\d]*0\\.\\d+(\\D.*)?");
        return comma == point ? 0 : comma ? 1 : -1;
    }
}
