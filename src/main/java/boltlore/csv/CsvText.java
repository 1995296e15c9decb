package boltlore.csv;

import boltlore.faults.Fault;
import boltlore.faults.Outcome;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.StandardCharsets;
import java.util.List;

/**
 * The cells of a CSV text (RFC 4180), parted by commas, or by semicolons where the first line has more of those, as
 * spreadsheet programs write it in countries with a decimal comma. A byte order mark is passed over.
 */
public record CsvText(List<Line> lines, boolean decimalComma) {

    /** Cells of one row, without blanks around them, and the line that it begins in. */
    public record Line(int number, List<String> cells) {}

    public static Outcome<CsvText> of(String file, byte[] bytes) {
        try {
            CharsetDecoder decoder = StandardCharsets.UTF_8.newDecoder();
            return of(file, decoder.decode(ByteBuffer.wrap(bytes)).toString());
        } catch (CharacterCodingException e) {
            return Outcome.faulty(
                    Fault.of(file, "letters that are not UTF-8", "a CSV file in UTF-8", "Save it again as UTF-8."));
        }
    }

    private static Outcome<CsvText> of(String file, String text) {
        String plain = text.startsWith("\uFEFF") ? text.substring(1) : text;
        String first = plain.lines().findFirst().orElse("");
        boolean semicolons = count(first, ';') > count(first, ',');
        CsvScanner scanner = new CsvScanner(plain, semicolons ? ';' : ',');
        List<Line> lines = scanner.lines();
        return scanner.endedInQuotes()
                ? Outcome.faulty(Fault.of(
                        file, "a quotation mark that is never closed", "a whole CSV file", "It may be cut off."))
                : Outcome.sound(new CsvText(lines, semicolons));
    }

    private static long count(String text, char letter) {
        return text.chars().filter(each -> each == letter).count();
    }
}
