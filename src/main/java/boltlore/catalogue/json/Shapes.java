package boltlore.catalogue.json;

import boltlore.json.TextShape;

/** How the texts of a catalogue must look beyond the common names. */
final class Shapes {

    /** An aisle of the stores. */
    static final TextShape AISLE = new TextShape(
            text -> text.length() <= 4 && allCapitalsOrDigits(text),
            "an aisle of up to four capital letters or digits");

    /** Aisle, bay, rack, shelf and place. */
    static final TextShape BIN =
            new TextShape(Shapes::isBin, "a bin as aisle-bay-rack-shelf-place, such as C-01-02-A-03");

    /** A UN number of the transport of dangerous goods. */
    static final TextShape UN_NUMBER = new TextShape(
            text -> text.length() == 7 && text.startsWith("UN ") && allDigits(text.substring(3)),
            "'UN', a blank and four digits");

    /** A Harmonised System code: six to ten digits, with or without points. */
    static final TextShape HS_CODE =
            new TextShape(Shapes::isHsCode, "a Harmonised System code of 6 to 10 digits, such as 8708.99");

    /** A country (ISO 3166 alpha-2). */
    static final TextShape COUNTRY = new TextShape(
            text -> text.length() == 2 && text.chars().allMatch(c -> c >= 'A' && c <= 'Z'),
            "a country code of two capital letters (ISO 3166)");

    private Shapes() {}

    private static boolean isBin(String text) {
        String[] steps = text.split("-", -1);
        return steps.length == 5
                && AISLE.fits().test(steps[0])
                && allDigits(steps[1])
                && allDigits(steps[2])
                && allCapitalsOrDigits(steps[3])
                && allDigits(steps[4]);
    }

    private static boolean isHsCode(String text) {
        String digits = text.replace(".", "");
        return digits.length() >= 6 && digits.length() <= 10 && allDigits(digits) && !text.contains("..");
    }

    private static boolean allDigits(String text) {
        return !text.isEmpty() && text.chars().allMatch(c -> c >= '0' && c <= '9');
    }

    private static boolean allCapitalsOrDigits(String text) {
        return !text.isEmpty() && text.chars().allMatch(c -> (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9'));
    }
}
