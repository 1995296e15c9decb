package boltlore.report;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;

/** A long text that is written down in UTF-8 at once, rather than encoded as a whole when it is done. */
public final class Utf8 {

    private byte[] bytes;
    private int length;

    /** @param usual bytes that the text takes, near enough */
    public Utf8(int usual) {
        bytes = new byte[usual];
    }

    public static byte[] encoded(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    /** Appends a text; what is no character, half of a surrogate pair alone, becomes a question mark. */
    public Utf8 append(String text) {
        return append(encoded(text));
    }

    /** Appends an ASCII letter. */
    public Utf8 append(char ascii) {
        makeRoom(1);
        bytes[length++] = (byte) ascii;
        return this;
    }

    /** Appends a whole number in decimal digits. */
    public Utf8 append(int number) {
        if (number < 0) {
            return append(Integer.toString(number));
        }
        return (number < 10 ? this : append(number / 10)).append((char) ('0' + number % 10));
    }

    /** Appends what was {@link #encoded} once because it is written again and again. */
    public Utf8 append(byte[] encoded) {
        makeRoom(encoded.length);
        System.arraycopy(encoded, 0, bytes, length, encoded.length);
        length += encoded.length;
        return this;
    }

    private void makeRoom(int more) {
        if (bytes.length - length < more) {
            bytes = Arrays.copyOf(bytes, Math.max(bytes.length * 2, length + more));
        }
    }

    /** Takes the last letter back, which must be ASCII. */
    public void dropLast() {
        length--;
    }

    public void writeTo(OutputStream out) throws IOException {
        out.write(bytes, 0, length);
    }

    public byte[] toBytes() {
        return Arrays.copyOf(bytes, length);
    }
}
