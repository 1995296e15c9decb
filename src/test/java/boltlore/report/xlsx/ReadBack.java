package boltlore.report.xlsx;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.dhatim.fastexcel.reader.Cell;
import org.dhatim.fastexcel.reader.CellType;
import org.dhatim.fastexcel.reader.ReadableWorkbook;
import org.dhatim.fastexcel.reader.Row;
import org.dhatim.fastexcel.reader.Sheet;

/** The workbook as another library than the one it was written with reads it. */
final class ReadBack {

    /**
     * One cell.
     *
     * @param value text, or a number without idle zeros
     * @param formula or empty
     */
    record ReadCell(String address, String value, String formula) {}

    private ReadBack() {}

    /** Filled cells of each sheet, row by row from left to right. */
    static List<List<ReadCell>> sheets(byte[] xlsx) throws IOException {
        List<List<ReadCell>> sheets = new ArrayList<>();
        try (ReadableWorkbook workbook = new ReadableWorkbook(new ByteArrayInputStream(xlsx))) {
            for (Sheet sheet : workbook.getSheets().toList()) {
                try (Stream<Row> rows = sheet.openStream()) {
                    sheets.add(rows.flatMap(Row::stream)
                            .filter(cell -> cell != null && cell.getType() != CellType.EMPTY)
                            .map(ReadBack::read)
                            .toList());
                }
            }
        }
        return sheets;
    }

    private static ReadCell read(Cell cell) {
        boolean text = cell.getType() == CellType.STRING;
        String value = text ? cell.asString() : CellsInOrder.number(new BigDecimal(cell.getRawValue()));
        return new ReadCell(cell.getAddress().toString(), value, cell.getFormula() == null ? "" : cell.getFormula());
    }
}
