package boltlore.report.text;

/** Keeps text from a catalogue from steering the terminal that shows it. */
final class Legible {

    private static final char REPLACEMENT = '\uFFFD';

    private Legible() {}

    /** The line with every control character and every mark that turns the direction of writing made visible. */
    static String of(String line) {
        StringBuilder legible = new StringBuilder(line.length());
        line.codePoints().map(Legible::shown).forEach(legible::appendCodePoint);
        return legible.toString();
    }

    private static int shown(int character) {
        return switch (Character.getType(character)) {
            case Character.CONTROL,
                    Character.FORMAT,
                    Character.SURROGATE,
                    Character.LINE_SEPARATOR,
                    Character.PARAGRAPH_SEPARATOR -> REPLACEMENT;
            default -> character;
        };
    }
}
