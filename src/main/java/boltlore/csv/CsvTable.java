package boltlore.csv;

import boltlore.faults.Fault;
import boltlore.faults.Outcome;
import boltlore.measure.Legible;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * A CSV text (RFC 4180) with a line of headings, parted by commas, or by semicolons where the first line has more of
 * those, as spreadsheet programs write it in countries with a decimal comma. A byte order mark is passed over, a
 * workbook (a zip archive, whose first letters are PK) refused; of a
 * heading, capital letters, a unit in brackets and a leading 'which' make no other heading. Headings of groups and
 * sub-totals say so in the column 'row' and are no rows.
 */
public final class CsvTable {

    /** Cells of one row, without blanks around them, and the line that it begins in, from 1. */
    public record Row(int line, List<String> cells) {}

    private static final Pattern HEADING = Pattern.compile("(?:which )?(.*?)\\s*(?:\\(.*\\))?");
    private static final Pattern AROUND = Pattern.compile("^[\\p{IsWhite_Space}]+|[\\p{IsWhite_Space}]+$");
    private static final String PLAIN = "row";

    private final String file;
    private final boolean decimalComma;
    private final List<String> headings;
    private final List<Row> rows;

    private CsvTable(String file, boolean decimalComma, List<Row> lines) {
        this.file = file;
        this.decimalComma = decimalComma;
        this.headings = lines.get(0).cells().stream().map(CsvTable::heading).toList();
        boolean kinds = headings.get(0).equals(PLAIN);
        this.rows = lines.stream()
                .skip(1)
                .filter(line -> !kinds || line.cells().get(0).equals(PLAIN))
                .toList();
    }

    /**
     * Reads it.
     *
     * @param expected what the table is, in words, for a fault
     */
    public static Outcome<CsvTable> read(String file, byte[] bytes, String expected) {
        if (bytes.length > 1 && bytes[0] == 'P' && bytes[1] == 'K') {
            return Outcome.faulty(Fault.of(
                    file, "a workbook or zip archive", "a CSV or JSON file", "Save the table as CSV in UTF-8."));
        }
        try {
            String text = StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
            String plain = text.startsWith("\uFEFF") ? text.substring(1) : text;
            int unseen = unseen(plain);
            if (unseen >= 0) {
                return Outcome.faulty(unseen(file, plain, unseen));
            }
            String first = plain.lines().findFirst().orElse("");
            boolean semicolons = count(first, ';') > count(first, ',');
            List<Row> lines = lines(plain, semicolons ? ';' : ',');
            return lines.isEmpty()
                    ? Outcome.faulty(Fault.of(file, "an empty file", expected, ""))
                    : Outcome.sound(new CsvTable(file, semicolons, lines));
        } catch (CharacterCodingException e) {
            return Outcome.faulty(
                    Fault.of(file, "letters that are not UTF-8", "a CSV file in UTF-8", "Save it again as UTF-8."));
        } catch (IOException | UncheckedIOException e) {
            return Outcome.faulty(Fault.of(
                    file,
                    "a quotation mark that is never closed, or that something stands behind",
                    "a whole CSV file",
                    "It may be cut off."));
        }
    }

    /** Where the first character stands that steers a terminal or cannot be seen; below 0 where none does. */
    private static int unseen(String text) {
        for (int at = 0; at < text.length(); at += Character.charCount(text.codePointAt(at))) {
            int letter = text.codePointAt(at);
            if (!Legible.is(letter) && letter != '\n' && letter != '\r' && letter != '\t') {
                return at;
            }
        }
        return -1;
    }

    private static Fault unseen(String file, String text, int at) {
        int line = (int) text.substring(0, at).lines().count();
        return new Fault(
                file,
                Math.max(1, at > 0 && text.charAt(at - 1) == '\n' ? line + 1 : line),
                "",
                String.format(Locale.ROOT, "the character U+%04X, which cannot be seen", text.codePointAt(at)),
                "text that can be read",
                "Type the line anew.");
    }

    private static long count(String text, char letter) {
        return text.chars().filter(each -> each == letter).count();
    }

    private static List<Row> lines(String text, char separator) throws IOException {
        List<Row> lines = new ArrayList<>();
        CSVFormat format = CSVFormat.RFC4180
                .builder()
                .setDelimiter(separator)
                .setIgnoreEmptyLines(false)
                .get();
        try (CSVParser parser = CSVParser.parse(text, format)) {
            Iterator<CSVRecord> records = parser.iterator();
            for (long before = 0; records.hasNext(); before = parser.getCurrentLineNumber()) {
                List<String> cells =
                        Stream.of(records.next().values()).map(CsvTable::bare).toList();
                if (cells.stream().anyMatch(cell -> !cell.isEmpty())) {
                    lines.add(new Row((int) before + 1, cells));
                }
            }
        }
        return lines;
    }

    /** Without blanks around it, those that do not break included: keyboards of some countries type them. */
    private static String bare(String cell) {
        return AROUND.matcher(cell).replaceAll("");
    }

    private static String heading(String cell) {
        Matcher matcher = HEADING.matcher(cell.toLowerCase(Locale.ROOT));
        return matcher.matches() ? matcher.group(1) : "";
    }

    public List<Row> rows() {
        return rows;
    }

    public boolean has(List<String> all) {
        return headings.containsAll(all);
    }

    /** Whether a comma in a number stands for the point. */
    public boolean decimalComma() {
        return decimalComma;
    }

    /** The cell under that heading; empty where there is none or the row is shorter. */
    public String cell(Row row, String heading) {
        int at = headings.indexOf(heading);
        return at < 0 || at >= row.cells().size() ? "" : row.cells().get(at);
    }

    /** Whether something stands beyond the last heading. */
    public boolean overflows(Row row) {
        return row.cells().stream().skip(headings.size()).anyMatch(cell -> !cell.isEmpty());
    }

    /** A fault for each row that does so: a number with a comma that nothing keeps together has moved all behind it. */
    public List<Fault> overflows() {
        return rows.stream()
                .filter(this::overflows)
                .map(row -> new Fault(
                        file,
                        row.line(),
                        "",
                        "more cells than headings",
                        "a cell under each heading",
                        "Where a number has a decimal comma, put it in quotation marks, write a point, or part the cells"
                                + " of the whole file with semicolons."))
                .toList();
    }

    public Fault fault(Row row, String heading, String found, String expected) {
        return new Fault(file, row.line(), heading, found, expected, "");
    }

    /** The headings are other than those that are needed. */
    public Fault otherHeadings(String expected) {
        return new Fault(file, 1, "", "the headings " + String.join(", ", headings), expected, "");
    }
}
