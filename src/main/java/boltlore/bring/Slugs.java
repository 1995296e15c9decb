package boltlore.bring;

import java.util.Locale;

/** Names as the catalogue writes them, made of what people write. */
final class Slugs {

    private static final int LONGEST = 60;
    private static final int LONGEST_NUMBER = 40;

    private Slugs() {}

    /** Small letters, digits and hyphens; empty where nothing is left. */
    static String name(String text) {
        String plain = Words.plain(text).replaceAll("[^a-z0-9 ]", "").strip().replaceAll(" +", "-");
        return plain.substring(0, Math.min(plain.length(), LONGEST)).replaceAll("-$", "");
    }

    /** The same with blanks between the words. */
    static String words(String text) {
        return name(text).replace('-', ' ').replaceAll(" +", " ").strip();
    }

    /** A number of a part as the list has it, in capital letters; empty where it will not do as one. */
    static String partNumber(String text) {
        String number = text.strip().toUpperCase(Locale.ROOT).replaceAll("[\\s_]+", "-");
        return number.matches("[A-Z0-9][A-Z0-9./-]*") && number.length() <= LONGEST_NUMBER ? number : "";
    }
}
