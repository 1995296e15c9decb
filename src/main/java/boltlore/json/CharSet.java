package boltlore.json;

/** A set of ASCII letters, looked up without searching: names are checked by the ten thousand when a catalogue is read. */
public final class CharSet {

    public static final CharSet SMALL = new CharSet("abcdefghijklmnopqrstuvwxyz");
    public static final CharSet CAPITAL = new CharSet("ABCDEFGHIJKLMNOPQRSTUVWXYZ");
    public static final CharSet DIGIT = new CharSet("0123456789");

    private final boolean[] held = new boolean[128];

    private CharSet(String letters) {
        for (int i = 0; i < letters.length(); i++) {
            held[letters.charAt(i)] = true;
        }
    }

    /** These and those. */
    public CharSet and(CharSet more) {
        CharSet both = new CharSet("");
        for (int i = 0; i < held.length; i++) {
            both.held[i] = held[i] || more.held[i];
        }
        return both;
    }

    /** These and those. */
    public CharSet and(String more) {
        return and(new CharSet(more));
    }

    /** Whether the text begins with one of these and goes on with the others, up to a length. */
    public boolean begin(String text, CharSet rest, int longest) {
        int length = text.length();
        if (length == 0 || length > longest || !holds(text.charAt(0))) {
            return false;
        }
        for (int i = 1; i < length; i++) {
            if (!rest.holds(text.charAt(i))) {
                return false;
            }
        }
        return true;
    }

    /** Whether the text is made of these alone, and not empty. */
    public boolean make(String text) {
        return begin(text, this, text.length());
    }

    private boolean holds(char letter) {
        return letter < held.length && held[letter];
    }
}
