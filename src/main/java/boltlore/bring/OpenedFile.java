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
import org.jspecify.annotations.Nullable;

/**
 * A file of sheets, whatever program wrote it: known by its first bytes, not by its name.
 *
 * @param commaLikely whether it comes from where numbers have a decimal comma
 * @param encoding of a CSV file the encoding, else empty
 * @param encodingSure whether that is beyond doubt
 */
record OpenedFile(String name, List<Sheet> sheets, boolean commaLikely, String encoding, boolean encodingSure) {

    /** Reads it from its bytes. */
    static Outcome<OpenedFile> read(String file, byte[] bytes, @Nullable String encoding) {
        String name = file.substring(Math.max(file.lastIndexOf('/'), file.lastIndexOf('\\')) + 1);
        boolean zip = bytes.length > 3 && bytes[0] == 'P' && bytes[1] == 'K';
        boolean old = bytes.length > 3 && (bytes[0] & 0xFF) == 0xD0 && (bytes[1] & 0xFF) == 0xCF;
        if (zip && isOpenDocument(bytes)) {
            return OdsReader.read(file, bytes).then(sheets -> Outcome.sound(workbook(name, sheets)));
        }
        if (zip || old) {
            return WorkbookReader.read(file, bytes).then(sheets -> Outcome.sound(workbook(name, sheets)));
        }
        if (bytes.length == 0) {
            return Outcome.faulty(Fault.of(file, "an empty file", "a list of parts as XLSX, XLS, ODS or CSV", ""));
        }
        return CsvSheet.read(file, bytes, encoding).then(csv -> Outcome.sound(csv(name, csv)));
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
