package boltlore.json;

import boltlore.faults.Fault;
import boltlore.faults.Outcome;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.Locale;

/** Bytes to characters: UTF-8 without a byte order mark, and nothing else. */
final class StrictText {

    private static final String UTF_8 = "UTF-8 without a byte order mark";
    private static final String SAVE_AGAIN = "Save the file again as UTF-8 without a byte order mark.";

    private StrictText() {}

    static Outcome<String> decode(String file, byte[] bytes) {
        String otherEncoding = otherEncoding(bytes);
        if (!otherEncoding.isEmpty()) {
            return Outcome.faulty(new Fault(file, 1, "", otherEncoding, UTF_8, SAVE_AGAIN));
        }
        String text = new String(bytes, StandardCharsets.UTF_8);
        // What is not UTF-8 has become this one letter; only then is it worth looking where.
        int wrong = text.indexOf('\uFFFD') < 0 ? -1 : firstWrongByte(bytes);
        if (wrong >= 0) {
            return Outcome.faulty(notUtf8(file, bytes, wrong));
        }
        return text.isBlank() ? Outcome.faulty(empty(file)) : Outcome.sound(text);
    }

    private static int firstWrongByte(byte[] bytes) {
        CharsetDecoder decoder = StandardCharsets.UTF_8
                .newDecoder()
                .onMalformedInput(CodingErrorAction.REPORT)
                .onUnmappableCharacter(CodingErrorAction.REPORT);
        ByteBuffer in = ByteBuffer.wrap(bytes);
        CoderResult result = decoder.decode(in, CharBuffer.allocate(bytes.length), true);
        return result.isError() ? in.position() : -1;
    }

    private static String otherEncoding(byte[] bytes) {
        if (startsWith(bytes, 0xEF, 0xBB, 0xBF)) {
            return "a byte order mark before the text";
        }
        if (startsWith(bytes, 0xFF, 0xFE, 0, 0) || startsWith(bytes, 0, 0, 0xFE, 0xFF)) {
            return "text in UTF-32";
        }
        // A JSON text begins with an ASCII character, so a zero among the first two bytes is UTF-16 (RFC 4627, 3).
        boolean zeros = bytes.length >= 2 && ((bytes[0] == 0) != (bytes[1] == 0));
        if (startsWith(bytes, 0xFF, 0xFE) || startsWith(bytes, 0xFE, 0xFF) || zeros) {
            return "text in UTF-16";
        }
        return "";
    }

    private static boolean startsWith(byte[] bytes, int... head) {
        if (bytes.length < head.length) {
            return false;
        }
        for (int i = 0; i < head.length; i++) {
            if ((bytes[i] & 0xFF) != head[i]) {
                return false;
            }
        }
        return true;
    }

    private static Fault notUtf8(String file, byte[] bytes, int position) {
        int line = 1;
        for (int i = 0; i < position; i++) {
            if (bytes[i] == '\n') {
                line++;
            }
        }
        return new Fault(
                file,
                line,
                "",
                String.format(Locale.ROOT, "the byte 0x%02X, which is not UTF-8", bytes[position]),
                UTF_8,
                SAVE_AGAIN);
    }

    private static Fault empty(String file) {
        return Fault.of(file, "an empty file", "one JSON object", "Check that saving it went through.");
    }
}
