package boltlore.trades.cutting.sheets;

import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** Sheet names hold at most 31 characters, so a page is found by how its name begins. */
final class SheetName {

    private SheetName() {}

    static String of(XSSFWorkbook book, String page) {
        for (int i = 0; i < book.getNumberOfSheets(); i++) {
            String title = book.getSheetAt(i).getRow(0).getCell(0).getStringCellValue();
            if (title.equals(page)) {
                return book.getSheetName(i);
            }
        }
        throw new AssertionError("No page " + page);
    }
}
