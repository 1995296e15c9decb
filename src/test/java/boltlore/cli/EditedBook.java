package boltlore.cli;

import static boltlore.cli.Ran.boltlore;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.function.Consumer;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.DataFormatter;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** A workbook that is edited by a program that knows no Boltlore, as a person would in a spreadsheet. */
record EditedBook(Path file) {

    /** What may be done with it while it is open. */
    record Edits(XSSFWorkbook workbook) {

        /** Writes below the heading {@code other}, in the row that has the text below the heading. */
        void set(String sheet, String heading, String text, String other, String value) {
            Sheet where = workbook.getSheet(sheet);
            // A cell of its own: POI leaves the text that stands in a cell beside the one that is set.
            row(where, heading, text)
                    .createCell(heading(where, other).getColumnIndex())
                    .setCellValue(value);
        }

        void remove(String sheet, String heading, String text) {
            Sheet where = workbook.getSheet(sheet);
            where.removeRow(row(where, heading, text));
        }

        /** A row with these texts under their headings, below all others. */
        void add(String sheet, String... headingsAndTexts) {
            Sheet where = workbook.getSheet(sheet);
            Row row = where.createRow(where.getLastRowNum() + 1);
            for (int i = 0; i < headingsAndTexts.length; i += 2) {
                row.createCell(heading(where, headingsAndTexts[i]).getColumnIndex())
                        .setCellValue(headingsAndTexts[i + 1]);
            }
        }

        Cell heading(String sheet, String heading) {
            return heading(workbook.getSheet(sheet), heading);
        }

        private static Cell heading(Sheet sheet, String heading) {
            for (Row row : sheet) {
                for (Cell cell : row) {
                    if (cell.getCellType() == CellType.STRING
                            && cell.getStringCellValue().equals(heading)) {
                        return cell;
                    }
                }
            }
            throw new AssertionError("no heading '" + heading + "' in " + sheet.getSheetName());
        }

        private static Row row(Sheet sheet, String heading, String text) {
            Cell head = heading(sheet, heading);
            return IntStream.rangeClosed(head.getRowIndex(), sheet.getLastRowNum())
                    .mapToObj(sheet::getRow)
                    .filter(row -> row != null
                            && new DataFormatter()
                                    .formatCellValue(row.getCell(head.getColumnIndex()))
                                    .equals(text))
                    .findFirst()
                    .orElseThrow();
        }
    }

    void edit(Consumer<Edits> edit) throws IOException {
        try (XSSFWorkbook book = new XSSFWorkbook(Files.newInputStream(file))) {
            edit.accept(new Edits(book));
            try (OutputStream out = Files.newOutputStream(file)) {
                book.write(out);
            }
        }
    }

    Ran broughtOnto(Path catalogue, Path to, Object... more) {
        return boltlore(Stream.concat(Stream.of("bring", file, "--onto", catalogue, "--to", to), Stream.of(more))
                .toArray());
    }
}
