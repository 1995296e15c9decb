package boltlore.csv;

import boltlore.faults.Fault;
import boltlore.faults.Outcome;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.jspecify.annotations.Nullable;

/**
 * A CSV text of unknown make: whatever encoding and separator it has. Where the bytes are no Unicode, the encoding is the
 * one that makes the likeliest letters of them, and {@link #certain} says whether that is beyond doubt.
 *
 * @param charset name of the encoding
 * @param certain whether the bytes can hardly be anything else
 * @param separator what parts the cells
 * @param rows cells row by row, the first row of the file first, empty rows included
 */
public record CsvSheet(String charset, boolean certain, char separator, List<List<String>> rows) {

    private static final List<Character> SEPARATORS = List.of(',', ';', '\t', '|');
    private static final int LOOKED_AT = 500;

    /**
     * Reads it.
     *
     * @param charset the encoding where somebody has said it, or null
     */
    public static Outcome<CsvSheet> read(String file, byte[] bytes, @Nullable String charset) {
        return Decoded.of(file, bytes, charset).then(decoded -> parted(file, decoded));
    }

    /**
     * The same of at most so many lines with something in them; more are refused before they are taken apart.
     *
     * @param file for faults
     * @param bytes of the text
     * @param charset the encoding where somebody has said it, or null
     * @param most lines, at least 1
     * @return the sheet, or what is wrong with it
     */
    public static Outcome<CsvSheet> read(String file, byte[] bytes, @Nullable String charset, int most) {
        return Decoded.of(file, bytes, charset).then(decoded -> {
            long lines = decoded.text()
                    .lines()
                    .filter(line -> line.chars().anyMatch(Character::isLetterOrDigit))
                    .count();
            return lines <= most
                    ? parted(file, decoded)
                    : Outcome.faulty(Fault.of(
                            file,
                            "a table of " + lines + " rows",
                            "at most " + most + " rows with something in them",
                            "Part the list, by sub-system say, or delete what is not needed."));
        });
    }

    private static Outcome<CsvSheet> parted(String file, Decoded decoded) {
        String text = decoded.text();
        char said = text.length() > 5 && text.substring(0, 4).equalsIgnoreCase("sep=") ? text.charAt(4) : 0;
        if (said != 0) {
            // A spreadsheet program's own first line; it stays an empty row, so that all others keep their numbers.
            text = text.substring(5);
        }
        CsvSheet best = null;
        double most = 0;
        for (char separator : said == 0 ? SEPARATORS : List.of(said)) {
            List<List<String>> rows = rows(text, separator);
            double evenness = rows.isEmpty() ? 0 : evenness(rows);
            if (evenness > most) {
                most = evenness;
                best = new CsvSheet(decoded.charset(), decoded.certain(), separator, rows);
            }
        }
        return best == null
                ? Outcome.faulty(Fault.of(
                        file,
                        "a text without columns, or with a quotation mark that is never closed",
                        "a table parted by commas, semicolons, tabs or bars",
                        "It may be cut off."))
                : Outcome.sound(best);
    }

    /** How many rows have the commonest number of cells above one, and how many that is: the true separator has more. */
    private static double evenness(List<List<String>> rows) {
        Map<Integer, Integer> widths = new HashMap<>();
        rows.stream()
                .limit(LOOKED_AT)
                .filter(row -> row.stream().anyMatch(cell -> !cell.isBlank()))
                .forEach(row -> widths.merge(row.size(), 1, Integer::sum));
        int all = widths.values().stream().mapToInt(Integer::intValue).sum();
        return widths.entrySet().stream()
                .filter(width -> width.getKey() > 1)
                .mapToDouble(width -> (double) width.getValue() / all * (1 + Math.min(width.getKey(), 40) / 100.0))
                .max()
                .orElse(0);
    }

    private static List<List<String>> rows(String text, char separator) {
        CSVFormat format = CSVFormat.RFC4180
                .builder()
                .setDelimiter(separator)
                .setIgnoreEmptyLines(false)
                .get();
        try {
            return rows(text, format);
        } catch (IOException | UncheckedIOException | IllegalStateException unclosed) {
            // Inches in a text without quotation: then no quotation mark means anything.
            try {
                return rows(text, format.builder().setQuote(null).get());
            } catch (IOException | UncheckedIOException | IllegalStateException broken) {
                return List.of();
            }
        }
    }

    private static List<List<String>> rows(String text, CSVFormat format) throws IOException {
        List<List<String>> rows = new ArrayList<>();
        try (CSVParser parser = CSVParser.parse(text, format)) {
            for (CSVRecord row : parser) {
                rows.add(Stream.of(row.values()).toList());
            }
        }
        return rows;
    }
}
