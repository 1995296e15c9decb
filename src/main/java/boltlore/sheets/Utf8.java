package boltlore.sheets;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;

/** A long text that is written down in UTF-8 at once: most of it is plain ASCII, where a letter is a byte. */
public final class Utf8 {

    /** A UTF-16 unit takes three bytes at most: half of a surrogate pair takes two of the pair's four. */
    private static final int MOST_BYTES = 3;

    private byte[] bytes;
    private int length;

    /** @param usual bytes that the text takes, near enough */
    public Utf8(int usual) {
        bytes = new byte[usual];
    }

    /** Appends a text; what is no character, half of a surrogate pair alone, becomes a question mark. */
    public Utf8 append(String text) {
        makeRoom(text.length() * MOST_BYTES);
        int at = length;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c >= 0x80) {
                return appendFar(text);
            }
            bytes[at++] = (byte) c;
        }
        length = at;
        return this;
    }

    /** Appends an ASCII letter. */
    public Utf8 append(char ascii) {
        makeRoom(1);
        bytes[length++] = (byte) ascii;
        return this;
    }

    public Utf8 append(byte[] encoded) {
        makeRoom(encoded.length);
        System.arraycopy(encoded, 0, bytes, length, encoded.length);
        length += encoded.length;
        return this;
    }

    private Utf8 appendFar(String text) {
        return append(text.getBytes(StandardCharsets.UTF_8));
    }

    private void makeRoom(int more) {
        if (bytes.length - length < more) {
            bytes = Arrays.copyOf(bytes, Math.max(bytes.length * 2, length + more));
        }
    }

    public int length() {
        return length;
    }

    /** Takes the last letter back, which must be ASCII. */
    public void dropLast() {
        length--;
    }

    public byte[] toBytes() {
        return Arrays.copyOf(bytes, length);
    }
}
