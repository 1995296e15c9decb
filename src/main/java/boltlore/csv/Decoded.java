package boltlore.csv;

import boltlore.faults.Fault;
import boltlore.faults.Outcome;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** A text with the encoding that its bytes were read in. */
record Decoded(String charset, boolean certain, String text) {

    /** Encodings of single bytes, those of Western spreadsheet programs first; then the commonest of Chinese ones. */
    private static final List<String> OLDER =
            List.of("windows-1252", "IBM850", "x-MacRoman", "windows-1250", "windows-1251", "GB18030", "windows-31j");

    /** Letters and signs that stand in lists of parts beside ASCII. */
    private static final String USUAL =
            "äöüÄÖÜßéèêëàâçîïôùûœÉÈÀÇáíóúñÁÍÓÚÑ¿åÅæøÆØãõìò€£µ°²³½¼¾±×Ø÷–—‘’‚“”„…«»™®© ≈≤≥Ωø§·•";

    /** Most Latin letters of an encoding that was guessed wrong are none that people use beside plain ones. */
    private static final double LIKELY = 0.9;

    static Outcome<Decoded> of(String file, byte[] bytes, @Nullable String said) {
        Optional<Decoded> decoded =
                said != null ? decode(bytes, 0, said, true) : marked(bytes).or(() -> guessed(bytes));
        return decoded.<Outcome<Decoded>>map(Outcome::sound)
                .orElseGet(() -> Outcome.faulty(Fault.of(
                        file,
                        "bytes that are no text" + (said == null ? "" : " in " + said),
                        "a table as CSV in UTF-8",
                        "Save it again as UTF-8.")));
    }

    /** By its byte order mark (Unicode 23.8), or by the zero bytes of every second place. */
    private static Optional<Decoded> marked(byte[] bytes) {
        int first = bytes.length > 1 ? ((bytes[0] & 0xFF) << 8) | (bytes[1] & 0xFF) : 0;
        if (first == 0xEFBB && bytes.length > 2 && (bytes[2] & 0xFF) == 0xBF) {
            return decode(bytes, 3, "UTF-8", true);
        }
        if (first == 0xFFFE || first == 0xFEFF) {
            return decode(bytes, 2, first == 0xFFFE ? "UTF-16LE" : "UTF-16BE", true);
        }
        int even = 0;
        int odd = 0;
        for (int i = 0; i < bytes.length; i++) {
            if (bytes[i] == 0) {
                even += 1 - i % 2;
                odd += i % 2;
            }
        }
        int many = bytes.length / 6;
        if (bytes.length > 1 && Math.max(even, odd) > many) {
            return decode(bytes, 0, odd > even ? "UTF-16LE" : "UTF-16BE", true);
        }
        return decode(bytes, 0, "UTF-8", true);
    }

    private static Optional<Decoded> guessed(byte[] bytes) {
        Decoded best = null;
        double most = -1;
        for (String name : OLDER) {
            if (Charset.isSupported(name)) {
                Decoded read = decode(bytes, 0, name, false).orElse(null);
                double likely = read == null ? -1 : likelihood(read.text());
                if (read != null && likely > most + 1e-9) {
                    most = likely;
                    best = new Decoded(name, likely > LIKELY, read.text());
                }
            }
        }
        return Optional.ofNullable(best);
    }

    /** Which share of the letters beyond ASCII are of the usual ones, or of one writing throughout. */
    private static double likelihood(String text) {
        long beyond = text.chars().filter(letter -> letter > '~').count();
        long usual = text.chars()
                .filter(letter -> letter > '~' && USUAL.indexOf(letter) >= 0)
                .count();
        long chinese = text.chars()
                .filter(letter -> Character.UnicodeScript.of(letter) == Character.UnicodeScript.HAN
                        && isCommonChinese((char) letter))
                .count();
        long cyrillic =
                text.chars().filter(letter -> letter >= 'а' && letter <= 'я').count();
        long most = Math.max(usual, Math.max(chinese, cyrillic));
        return beyond == 0 ? 1 : (double) most / beyond;
    }

    /** Level 1 of GB 2312: the characters of everyday texts. */
    private static boolean isCommonChinese(char letter) {
        byte[] bytes = Character.toString(letter).getBytes(Charset.forName("GB2312"));
        int lead = bytes.length == 2 ? bytes[0] & 0xFF : 0;
        return lead >= 0xB0 && lead <= 0xD7;
    }

    private static Optional<Decoded> decode(byte[] bytes, int from, String charset, boolean certain) {
        try {
            Charset known = charset.equals("UTF-8") ? StandardCharsets.UTF_8 : Charset.forName(charset);
            String text = known.newDecoder()
                    .onMalformedInput(CodingErrorAction.REPORT)
                    .onUnmappableCharacter(CodingErrorAction.REPORT)
                    .decode(ByteBuffer.wrap(bytes, from, bytes.length - from))
                    .toString();
            return text.indexOf('\0') >= 0 ? Optional.empty() : Optional.of(new Decoded(charset, certain, text));
        } catch (CharacterCodingException | IllegalArgumentException other) {
            return Optional.empty();
        }
    }
}
