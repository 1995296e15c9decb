package boltlore.json;

import java.util.Locale;
import java.util.Set;
import java.util.function.Predicate;

/**
 * How a text must look.
 *
 * @param fits whether a text looks so
 * @param says how it must look, in words
 * @param pattern how it must look, as a regular expression that programs in any language read alike (ECMA-262)
 * @param longest most characters
 */
public record TextShape(Predicate<String> fits, String says, String pattern, int longest) implements Shape {

    private static final CharSet SMALL_OR_DIGIT = CharSet.SMALL.and(CharSet.DIGIT);
    private static final CharSet CAPITAL_OR_DIGIT = CharSet.CAPITAL.and(CharSet.DIGIT);
    private static final CharSet ANY = SMALL_OR_DIGIT.and(CharSet.CAPITAL);
    private static final CharSet IN_NAME = SMALL_OR_DIGIT.and("-");
    private static final CharSet IN_WORDS = IN_NAME.and(" ");
    private static final CharSet IN_PART_NUMBER = CAPITAL_OR_DIGIT.and("./-");
    private static final CharSet BEGIN_OF_ORDER = ANY.and("-_");
    private static final CharSet IN_ORDER = BEGIN_OF_ORDER.and(".");

    /** Names of options, values, positions, lines and the like. */
    public static final TextShape NAME = new TextShape(
            text -> SMALL_OR_DIGIT.begin(text, IN_NAME, 60),
            "a name of small letters, digits and '-', beginning with a letter or digit, at most 60 long",
            "^[a-z0-9][a-z0-9-]*$",
            60);

    /** Numbers of parts. */
    public static final TextShape PART_NUMBER = new TextShape(
            text -> CAPITAL_OR_DIGIT.begin(text, IN_PART_NUMBER, 40),
            "a part number of capital letters, digits, '.', '/' and '-', beginning with a letter or digit, at most 40 long",
            "^[A-Z0-9][A-Z0-9./-]*$",
            40);

    /** Names of sub-systems: words. */
    public static final TextShape WORDS = new TextShape(
            text -> SMALL_OR_DIGIT.begin(text, IN_WORDS, 60) && !text.endsWith(" ") && !text.contains("  "),
            "words of small letters, at most 60 long",
            "^[a-z0-9][a-z0-9-]*( [a-z0-9-]+)*$",
            60);

    /** Names of orders, which also name folders. */
    public static final TextShape ORDER_NAME = new TextShape(
            text -> BEGIN_OF_ORDER.begin(text, IN_ORDER, 60) && !text.endsWith(".") && !isDevice(text),
            "letters, digits, '-', '_' and '.', neither beginning nor ending with '.', at most 60 long, and no name"
                    + " that Windows keeps for a device (CON, NUL, COM1 …): it names a folder",
            "^(?!([Cc][Oo][Nn]|[Pp][Rr][Nn]|[Aa][Uu][Xx]|[Nn][Uu][Ll]|([Cc][Oo][Mm]|[Ll][Pp][Tt])[0-9])(\\.|$))[A-Za-z0-9_-]([A-Za-z0-9._-]*[A-Za-z0-9_-])?$",
            60);

    /** Names that no file of Windows may have, whatever follows a point. */
    private static boolean isDevice(String text) {
        int point = text.indexOf('.');
        String name = (point < 0 ? text : text.substring(0, point)).toUpperCase(Locale.ROOT);
        boolean numbered = name.length() == 4
                && (name.startsWith("COM") || name.startsWith("LPT"))
                && CharSet.DIGIT.make(name.substring(3));
        return numbered || Set.of("CON", "PRN", "AUX", "NUL").contains(name);
    }

    /** Names in ordinary writing, such as a customer's. */
    public static final TextShape LINE = new TextShape(
            text -> !text.isEmpty()
                    && text.length() <= 100
                    && text.strip().equals(text)
                    && text.indexOf('\n') < 0
                    && text.indexOf('\t') < 0,
            "one line of at most 100 characters, without blanks at its ends",
            "^\\S([^\\n\\t]*\\S)?$",
            100);

    /** Language codes (ISO 639). */
    public static final TextShape LANGUAGE = new TextShape(
            text -> text.length() >= 2 && CharSet.SMALL.begin(text, CharSet.SMALL, 3),
            "a language code of two or three small letters (ISO 639)",
            "^[a-z]{2,3}$",
            3);

    /** Currency codes (ISO 4217). */
    public static final TextShape CURRENCY = new TextShape(
            text -> text.length() == 3 && CharSet.CAPITAL.begin(text, CharSet.CAPITAL, 3),
            "a currency code of three capital letters (ISO 4217)",
            "^[A-Z]{3}$",
            3);

    /** UN numbers of dangerous goods. */
    public static final TextShape UN_NUMBER = new TextShape(
            text -> text.length() == 7 && text.startsWith("UN ") && CharSet.DIGIT.make(text.substring(3)),
            "'UN', a blank and four digits",
            "^UN [0-9]{4}$",
            7);
}
