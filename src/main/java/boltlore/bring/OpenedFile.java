package boltlore.bring;

import boltlore.csv.CsvSheet;
import boltlore.faults.Fault;
import boltlore.faults.Outcome;
import boltlore.grid.GridCell;
import boltlore.grid.Sheet;
import boltlore.grid.ods.OdsReader;
import boltlore.report.xlsx.WorkbookReader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A file of sheets, whatever program wrote it: known by its first bytes, not by its name.
 *
 * @param commaLikely whether it comes from where numbers have a decimal comma
 * @param encoding of a CSV file the encoding, else empty
 * @param encodingSure whether that is beyond doubt
 */
record OpenedFile(String name, List<Sheet> sheets, boolean commaLikely, String encoding, boolean encodingSure) {

    /** As many items as a list of the catalogue's files may have. */
    private static final int MOST_ROWS = 20_000;

    private static final int MOST_COLUMNS = 2_000;

    /** What a file is by its first letters, as programs call themselves there: ISO 32000 and the W3C's HTML among them. */
    private static final Map<String, String> BEGINNINGS = Map.of(
            "%pdf-", "a PDF",
            "<html", "a page of HTML",
            "<!doctype html", "a page of HTML",
            "<table", "a page of HTML",
            "<?xml", "an XML text",
            "{\\rtf", "an RTF text");

    /** Reads it from its bytes. */
    static Outcome<OpenedFile> read(String file, byte[] bytes, @Nullable String encoding) {
        String name = file.substring(Math.max(file.lastIndexOf('/'), file.lastIndexOf('\\')) + 1);
        boolean zip = bytes.length > 3 && bytes[0] == 'P' && bytes[1] == 'K';
        boolean old = bytes.length > 3 && (bytes[0] & 0xFF) == 0xD0 && (bytes[1] & 0xFF) == 0xCF;
        if (zip && isOpenDocument(bytes)) {
            return OdsReader.read(file, bytes).then(sheets -> bounded(file, workbook(name, sheets)));
        }
        if (zip || old) {
            return WorkbookReader.read(file, bytes).then(sheets -> bounded(file, workbook(name, sheets)));
        }
        if (bytes.length == 0) {
            return Outcome.faulty(Fault.of(file, "an empty file", "a list of parts as XLSX, XLS, ODS or CSV", ""));
        }
        return otherwise(file, name, bytes)
                .<Outcome<OpenedFile>>map(Outcome::faulty)
                .orElseGet(() -> text(file, name, bytes, encoding));
    }

    private static Outcome<OpenedFile> text(String file, String name, byte[] bytes, @Nullable String encoding) {
        Outcome<OpenedFile> read =
                CsvSheet.read(file, bytes, encoding, MOST_ROWS).then(csv -> bounded(file, csv(name, csv)));
        return read.faults().isEmpty() || !isNamedWorkbook(name)
                ? read
                : Outcome.faulty(Fault.of(
                        file,
                        "neither a workbook, which its name says it is, nor a table of text",
                        "a list of parts as XLSX, XLS, ODS or CSV",
                        "Open it in a spreadsheet program and save it anew."));
    }

    /** Whether the file's name says that it is a workbook. */
    private static boolean isNamedWorkbook(String name) {
        return name.toLowerCase(Locale.ROOT).matches(".*\\.(xlsx|xlsm|xls|ods)");
    }

    /** Whether its name says otherwise than its content, which counts. */
    boolean isMisnamed() {
        return !encoding.isEmpty() && isNamedWorkbook(name);
    }

    /** What another program would read, as some that call it a workbook write. */
    private static Optional<Fault> otherwise(String file, String name, byte[] bytes) {
        String first = new String(bytes, 0, Math.min(bytes.length, 100), StandardCharsets.ISO_8859_1)
                .strip()
                .toLowerCase(Locale.ROOT);
        return BEGINNINGS.entrySet().stream()
                .filter(beginning -> first.startsWith(beginning.getKey()))
                .findFirst()
                .map(beginning -> Fault.of(
                        file,
                        beginning.getValue() + (isNamedWorkbook(name) ? ", though its name says a workbook" : ""),
                        "a list of parts as XLSX, XLS, ODS or CSV",
                        "Open it in the program that it is for, and save or copy the list as one of these."));
    }

    private static Outcome<OpenedFile> bounded(String file, OpenedFile opened) {
        List<Fault> faults = new ArrayList<>();
        for (Sheet sheet : opened.sheets()) {
            if (sheet.rows().size() > MOST_ROWS) {
                faults.add(
                        beyond(file, sheet, sheet.rows().size() + " rows", MOST_ROWS + " rows with something in them"));
            }
            int width = width(sheet);
            if (width > MOST_COLUMNS) {
                faults.add(beyond(file, sheet, width + " columns", MOST_COLUMNS + " columns"));
            }
        }
        return faults.isEmpty() ? Outcome.sound(opened) : Outcome.faulty(faults);
    }

    /** Up to the last column with something in it. */
    private static int width(Sheet sheet) {
        return sheet.rows().values().stream()
                .mapToInt(line -> {
                    int last = line.cells().size();
                    while (last > 0 && line.cell(last - 1).isEmpty()) {
                        last--;
                    }
                    return last;
                })
                .max()
                .orElse(0);
    }

    private static Fault beyond(String file, Sheet sheet, String found, String most) {
        String advice = "Part the list, by sub-system say, or delete what is not needed.";
        return new Fault(file, 0, sheet.name(), "a sheet of " + found, "at most " + most, advice);
    }

    /** Names of entries stand in an archive as they are; only one of the two formats has a list of types (ECMA-376 part 2). */
    private static boolean isOpenDocument(byte[] bytes) {
        String names = new String(bytes, StandardCharsets.ISO_8859_1);
        return names.contains("content.xml") && !names.contains("[Content_Types].xml");
    }

    private static OpenedFile workbook(String name, List<Sheet> sheets) {
        return new OpenedFile(name, sheets, false, "", true);
    }

    private static OpenedFile csv(String name, CsvSheet csv) {
        List<Sheet.Line> lines = new ArrayList<>();
        for (List<String> row : csv.rows()) {
            lines.add(new Sheet.Line(
                    lines.size() + 1,
                    false,
                    row.stream()
                            .map(cell -> GridCell.text(cell, GridCell.Face.PLAIN))
                            .toList()));
        }
        int dot = name.toLowerCase(Locale.ROOT).lastIndexOf('.');
        Sheet sheet = Sheet.of(dot > 0 ? name.substring(0, dot) : name, false, false, lines, List.of());
        return new OpenedFile(name, List.of(sheet), csv.separator() == ';', csv.charset(), csv.certain());
    }
}
