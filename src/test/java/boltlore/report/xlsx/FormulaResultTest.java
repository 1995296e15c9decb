package boltlore.report.xlsx;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.grid.GridCell;
import java.io.IOException;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTCell;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.STCellType;

/** ISO/IEC 29500-1, 18.3.1.4 and 18.3.1.96: 'v' holds the result that was last worked out, and programs may leave it out. */
@DisplayName("Of a formula")
class FormulaResultTest {

    private interface Saved {
        void as(CTCell cell);
    }

    private static GridCell read(Saved saved) throws IOException {
        try (XSSFWorkbook workbook = new XSSFWorkbook()) {
            XSSFCell cell = workbook.createSheet().createRow(0).createCell(0);
            cell.setCellFormula("2*2");
            saved.as(cell.getCTCell());
            return new SheetReader(workbook, 0)
                    .read()
                    .rows()
                    .firstEntry()
                    .getValue()
                    .cells()
                    .get(0);
        }
    }

    @Test
    @DisplayName("the saved result counts")
    void saved() throws IOException {
        assertThat(read(cell -> cell.setV("4"))).isEqualTo(read(cell -> cell.setV("4.0")));
        assertThat(read(cell -> cell.setV("4")).toString()).contains("4").doesNotContain("not saved");
    }

    @Test
    @DisplayName("none is read where its place is empty: it is not 0")
    void empty() throws IOException {
        assertThat(read(cell -> cell.setV(""))).isEqualTo(GridCell.unread("a formula whose result was not saved"));
    }

    @Test
    @DisplayName("none is read where it has no place")
    void left_out() throws IOException {
        assertThat(read(cell -> {
                    if (cell.isSetV()) {
                        cell.unsetV();
                    }
                }))
                .isEqualTo(GridCell.unread("a formula whose result was not saved"));
    }

    @Test
    @DisplayName("an empty text is a result")
    void empty_text() throws IOException {
        try (XSSFWorkbook workbook = new XSSFWorkbook()) {
            XSSFCell cell = workbook.createSheet().createRow(0).createCell(0);
            cell.setCellFormula("\"\"");
            cell.getCTCell().setT(STCellType.STR);
            cell.getCTCell().setV("");

            assertThat(new SheetReader(workbook, 0).read().rows()).isEmpty();
        }
    }
}
