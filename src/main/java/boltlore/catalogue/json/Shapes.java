package boltlore.catalogue.json;

import boltlore.json.CharSet;
import boltlore.json.TextShape;
import java.util.Arrays;

/** How the texts of a catalogue must look beyond the common names. */
final class Shapes {

    private static final CharSet CAPITAL_OR_DIGIT = CharSet.CAPITAL.and(CharSet.DIGIT);

    /** An aisle of the stores. */
    static final TextShape AISLE = new TextShape(
            text -> text.length() <= 4 && CAPITAL_OR_DIGIT.make(text),
            "an aisle of up to four capital letters or digits",
            "^[A-Z0-9]+$",
            4);

    /** Aisle, bay, rack, level and position. */
    static final TextShape BIN = new TextShape(
            Shapes::isBin,
            "a bin as aisle-bay-rack-level-position, such as C-01-02-A-03",
            "^[A-Z0-9]{1,4}-[0-9]+-[0-9]+-[A-Z0-9]+-[0-9]+$",
            40);

    /** A UN number of the transport of dangerous goods. */
    static final TextShape UN_NUMBER = new TextShape(
            text -> text.length() == 7 && text.startsWith("UN ") && CharSet.DIGIT.make(text.substring(3)),
            "'UN', a blank and four digits",
            "^UN [0-9]{4}$",
            7);

    /** A Harmonised System code: six to ten digits, with or without points. */
    static final TextShape HS_CODE = new TextShape(
            Shapes::isHsCode,
            "a Harmonised System code of 6 to 10 digits, such as 8708.99",
            "^[0-9](\\.?[0-9]){5,9}$",
            20);

    /** The first digits of a Harmonised System code, two at least: chapter, heading or more. */
    static final TextShape HS_BEGINNING = new TextShape(
            Shapes::isHsBeginning,
            "2 to 10 digits of a Harmonised System code, such as 8544 or 8708.99",
            "^[0-9](\\.?[0-9]){1,9}$",
            20);

    /** A country (ISO 3166 alpha-2). */
    static final TextShape COUNTRY = new TextShape(
            text -> text.length() == 2 && CharSet.CAPITAL.make(text),
            "a country code of two capital letters (ISO 3166)",
            "^[A-Z]{2}$",
            2);

    private static final CharSet BEGIN_OF_STEP =
            CAPITAL_OR_DIGIT.and(CharSet.SMALL).and("_");

    /** A file within the catalogue folder: never absolute, and no step that leads out of it or to a hidden file. */
    static final TextShape FILE = new TextShape(
            Shapes::isFile,
            "a file within the catalogue folder, such as documents/box.svg: steps of letters, digits, '-', '_' and '.'"
                    + " with '/' between them, none beginning with '.', at most 200 long",
            "^[A-Za-z0-9_][A-Za-z0-9._-]*(/[A-Za-z0-9_][A-Za-z0-9._-]*)*$",
            200);

    private Shapes() {}

    private static boolean isFile(String text) {
        return text.length() <= 200
                && Arrays.stream(text.split("/", -1))
                        .allMatch(step -> BEGIN_OF_STEP.begin(step, BEGIN_OF_STEP.and(".-"), 200));
    }

    private static boolean isBin(String text) {
        String[] steps = text.split("-", -1);
        return text.length() <= 40
                && steps.length == 5
                && AISLE.fits().test(steps[0])
                && CharSet.DIGIT.make(steps[1])
                && CharSet.DIGIT.make(steps[2])
                && CAPITAL_OR_DIGIT.make(steps[3])
                && CharSet.DIGIT.make(steps[4]);
    }

    private static boolean isHsCode(String text) {
        return isHsBeginning(text) && text.replace(".", "").length() >= 6;
    }

    private static boolean isHsBeginning(String text) {
        String digits = text.replace(".", "");
        return digits.length() >= 2
                && digits.length() <= 10
                && CharSet.DIGIT.make(digits)
                && !text.contains("..")
                && !text.startsWith(".")
                && !text.endsWith(".");
    }
}
