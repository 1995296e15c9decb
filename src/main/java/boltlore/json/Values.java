package boltlore.json;

import boltlore.faults.Nearest;
import boltlore.measure.Wording;
import java.math.BigDecimal;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.BiFunction;

/** Single JSON values as Java values; each returns nothing, and leaves a fault, where the value will not do. */
public final class Values {

    /** Longest text; a cell of a spreadsheet holds 32,767 characters, a message or a page far fewer. */
    static final int LONGEST_TEXT = 4000;

    static final int LONGEST_NUMBER = 40;

    /** Years in which vehicles are built and orders placed. */
    public static final int FIRST_YEAR = 1900;

    public static final int LAST_YEAR = 2199;

    private Values() {}

    /** A text that is not blank. */
    public static Optional<String> text(Json json, Faults faults) {
        if (!(json instanceof Json.Text text)) {
            return refuse(json, "a text in double quotes", "", faults);
        }
        if (text.text().isBlank()) {
            return refuse(
                    json, "a text that is not empty", "Write it, or leave the key out where it is not needed.", faults);
        }
        return text.text().length() > LONGEST_TEXT
                ? refuse(json, "at most " + LONGEST_TEXT + " characters", "Shorten it.", faults)
                : Optional.of(text.text());
    }

    /** A text of a given look. */
    public static Optional<String> text(Json json, TextShape shape, Faults faults) {
        if (json instanceof Json.Text text && !text.text().isBlank()) {
            return shape.fits().test(text.text()) ? Optional.of(text.text()) : refuse(json, shape.says(), "", faults);
        }
        return text(json, faults);
    }

    /** A decimal in plain digits within a text ("12.50"), or a JSON number. */
    public static Optional<BigDecimal> decimal(Json json, Range range, Faults faults) {
        BigDecimal number = null;
        if (json instanceof Json.Num written) {
            number = written.number();
        } else if (json instanceof Json.Text text && isPlainNumber(text.text())) {
            number = new BigDecimal(text.text());
        }
        if (number == null) {
            String advice =
                    json instanceof Json.Text text && text.text().contains(",") ? "Write a point, not a comma." : "";
            return refuse(json, range.expected(), advice, faults);
        }
        if (!range.holds(number)) {
            return refuse(json, range.expected() + ", with at most " + Range.MOST_DECIMALS + " decimals", "", faults);
        }
        return Optional.of(number);
    }

    /** A whole number, written as a JSON number or within a text. */
    public static Optional<Integer> whole(Json json, long least, long most, Faults faults) {
        Optional<BigDecimal> number = decimal(json, Range.between(least, most), new Faults());
        return number.isPresent() && isWhole(number.get())
                ? Optional.of(number.get().intValueExact())
                : refuse(json, "a whole number from " + least + " to " + most, "", faults);
    }

    /** Whether it has no fraction, however many zeros follow its point. */
    public static boolean isWhole(BigDecimal number) {
        return number.scale() <= 0 || number.stripTrailingZeros().scale() <= 0;
    }

    public static Optional<Boolean> truth(Json json, Faults faults) {
        return json instanceof Json.Truth truth
                ? Optional.of(truth.truth())
                : refuse(json, "true or false, without quotes", "", faults);
    }

    /** A calendar date as 2024-03-31 (ISO 8601). */
    public static Optional<LocalDate> date(Json json, Faults faults) {
        String expected = "a date as \"2024-03-31\" (year, month, day)";
        try {
            if (json instanceof Json.Text text && isDate(text.text())) {
                LocalDate day = day(text.text());
                return isSensible(day)
                        ? Optional.of(day)
                        : refuse(json, "a year from " + FIRST_YEAR + " to " + LAST_YEAR, "", faults);
            }
        } catch (DateTimeException notADate) {
            return refuse(json, expected, "There is no such day in the calendar.", faults);
        }
        return refuse(json, expected, "", faults);
    }

    /** Whether a day is in a year that vehicles are built or orders placed in. */
    public static boolean isSensible(LocalDate day) {
        return day.getYear() >= FIRST_YEAR && day.getYear() <= LAST_YEAR;
    }

    /** One of a closed set of names. */
    public static <E> Optional<E> oneOf(Json json, Allowed<E> allowed, Faults faults) {
        if (json instanceof Json.Text text) {
            E value = allowed.byName().get(text.text());
            return value != null
                    ? Optional.of(value)
                    : refuse(
                            json,
                            "one of " + allowed.says(),
                            Nearest.advice(text.text(), allowed.byName().keySet(), ""),
                            faults);
        }
        return refuse(json, "one of " + allowed.says(), "", faults);
    }

    /** A text in English, or an object of texts by language code with English among them. */
    static Wording wording(Json json, Faults faults) {
        if (!(json instanceof Json.Obj byLanguage)) {
            return Wording.english(text(json, faults).orElse(""));
        }
        Map<String, String> texts = new TreeMap<>();
        byLanguage.members().forEach((language, member) -> {
            if (!TextShape.LANGUAGE.fits().test(language)) {
                faults.add(member.location().fault("'" + language + "'", TextShape.LANGUAGE.says(), ""));
            }
            texts.put(language, text(member, faults).orElse(""));
        });
        if (!texts.containsKey(Wording.ENGLISH)) {
            refuse(json, "an English text under 'en' among the languages", "Add \"en\".", faults);
            texts.put(Wording.ENGLISH, "");
        }
        return new Wording(texts);
    }

    /** The items of a list. */
    public static List<Json> items(Json json, Faults faults) {
        if (json instanceof Json.Arr array) {
            return array.items();
        }
        refuse(json, "a list in [ ]", "", faults);
        return List.of();
    }

    /** The items of a list that has some. */
    public static List<Json> someItems(Json json, Faults faults) {
        List<Json> items = items(json, faults);
        if (items.isEmpty() && json instanceof Json.Arr) {
            refuse(json, "at least one item", "Add one, or remove the key where it may be missing.", faults);
        }
        return items;
    }

    /** Texts of one look, each at most once; each is handed over with its place. */
    public static <T> List<T> texts(
            List<Json> items, TextShape shape, Faults faults, BiFunction<String, SourceLocation, T> each) {
        List<T> read = new ArrayList<>();
        Set<String> seen = new HashSet<>();
        for (Json item : items) {
            Optional<String> text = text(item, shape, faults);
            if (text.isPresent() && !seen.add(text.get())) {
                refuse(item, "each item once", "Remove one of the two.", faults);
            } else {
                text.ifPresent(value -> read.add(each.apply(value, item.location())));
            }
        }
        return List.copyOf(read);
    }

    static <T> Optional<T> refuse(Json json, String expected, String advice, Faults faults) {
        faults.add(json.location().fault(json.shown(), expected, advice));
        return Optional.empty();
    }

    /** By hand, because the formatters of java.time cost a short command more than all else that it reads. */
    private static LocalDate day(String text) {
        return LocalDate.of(
                Integer.parseInt(text, 0, 4, 10), Integer.parseInt(text, 5, 7, 10), Integer.parseInt(text, 8, 10, 10));
    }

    private static boolean isDate(String text) {
        return text.length() == 10
                && text.charAt(4) == '-'
                && text.charAt(7) == '-'
                && CharSet.DIGIT.begin(text.replace("-", ""), CharSet.DIGIT, 8)
                && text.indexOf('-', 8) < 0;
    }

    private static boolean isPlainNumber(String text) {
        int digits = 0;
        int points = 0;
        for (int i = text.startsWith("-") ? 1 : 0; i < text.length(); i++) {
            char letter = text.charAt(i);
            if (letter == '.') {
                points++;
            } else if (letter >= '0' && letter <= '9') {
                digits++;
            } else {
                return false;
            }
        }
        return digits > 0
                && points <= 1
                && text.length() <= LONGEST_NUMBER
                && !text.endsWith(".")
                && !text.startsWith(".");
    }
}
