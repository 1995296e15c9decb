package boltlore.json;

import java.util.function.IntPredicate;
import java.util.function.Predicate;

/**
 * How a text must look.
 *
 * @param fits whether a text looks so
 * @param says how it must look, in words
 */
public record TextShape(Predicate<String> fits, String says) {

    /** Names of options, values, positions, lines and the like. */
    public static final TextShape NAME = new TextShape(
            text -> runOf(text, 60, c -> isSmallOrDigit(c), c -> isSmallOrDigit(c) || c == '-'),
            "a name of small letters, digits and '-', beginning with a letter or digit, at most 60 long");

    /** Numbers of parts. */
    public static final TextShape PART_NUMBER = new TextShape(
            text -> runOf(
                    text, 40, c -> isCapitalOrDigit(c), c -> isCapitalOrDigit(c) || c == '.' || c == '/' || c == '-'),
            "a part number of capital letters, digits, '.', '/' and '-', beginning with a letter or digit, at most 40 long");

    /** Names of sub-systems: words. */
    public static final TextShape WORDS = new TextShape(
            text -> runOf(text, 60, c -> isSmallOrDigit(c), c -> isSmallOrDigit(c) || c == '-' || c == ' ')
                    && !text.endsWith(" ")
                    && !text.contains("  "),
            "words of small letters, at most 60 long");

    /** Names of orders, which also name folders. */
    public static final TextShape ORDER_NAME = new TextShape(
            text -> runOf(
                            text,
                            60,
                            c -> isAlphanumeric(c) || c == '-' || c == '_',
                            c -> isAlphanumeric(c) || "-_.".indexOf(c) >= 0)
                    && !text.endsWith("."),
            "letters, digits, '-', '_' and '.', neither beginning nor ending with '.', at most 60 long:"
                    + " it names a folder");

    /** Names in ordinary writing, such as a customer's. */
    public static final TextShape LINE = new TextShape(
            text -> text.length() <= 100
                    && text.strip().equals(text)
                    && text.indexOf('\n') < 0
                    && text.indexOf('\t') < 0,
            "one line of at most 100 characters, without blanks at its ends");

    /** Language codes (ISO 639). */
    public static final TextShape LANGUAGE = new TextShape(
            text -> text.length() >= 2 && runOf(text, 3, TextShape::isSmall, TextShape::isSmall),
            "a language code of two or three small letters (ISO 639)");

    /** Currency codes (ISO 4217). */
    public static final TextShape CURRENCY = new TextShape(
            text -> text.length() == 3 && runOf(text, 3, TextShape::isCapital, TextShape::isCapital),
            "a currency code of three capital letters (ISO 4217)");

    private static boolean runOf(String text, int longest, IntPredicate first, IntPredicate rest) {
        return !text.isEmpty()
                && text.length() <= longest
                && first.test(text.charAt(0))
                && text.chars().skip(1).allMatch(rest);
    }

    private static boolean isSmall(int c) {
        return c >= 'a' && c <= 'z';
    }

    private static boolean isCapital(int c) {
        return c >= 'A' && c <= 'Z';
    }

    private static boolean isSmallOrDigit(int c) {
        return isSmall(c) || (c >= '0' && c <= '9');
    }

    private static boolean isCapitalOrDigit(int c) {
        return isCapital(c) || (c >= '0' && c <= '9');
    }

    private static boolean isAlphanumeric(int c) {
        return isSmall(c) || isCapitalOrDigit(c);
    }
}
