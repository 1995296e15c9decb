package boltlore.report;

/**
 * How a page prints: on A4, fitted to the sheet's width, the main table's heading row repeated on every sheet and frozen
 * on the screen.
 *
 * @param header text above each sheet, mostly empty
 * @param footer text at the left below each sheet, may be empty
 * @param count words of the page count at the right below each sheet
 * @param frozenColumns leading columns of the main table that stay in view, 0 for none
 */
public record PrintSetup(boolean landscape, String header, String footer, PageCount count, int frozenColumns) {

    /** How many characters of a header or footer are printed; a spreadsheet holds 255 there, its codes included. */
    public static final int LONGEST_LINE = 120;

    public static final PrintSetup PORTRAIT = new PrintSetup(false, "", "", PageCount.ENGLISH, 0);
    public static final PrintSetup LANDSCAPE = PORTRAIT.turned(true);

    /** 'Page x of y' in the sheet's language: what stands before the x and between x and y, blanks included. */
    public record PageCount(String before, String between) {
        public static final PageCount ENGLISH = new PageCount("Page ", " of ");
    }

    public PrintSetup turned(boolean toLandscape) {
        return new PrintSetup(toLandscape, header, footer, count, frozenColumns);
    }

    public PrintSetup withHeader(String text) {
        return new PrintSetup(landscape, text, footer, count, frozenColumns);
    }

    public PrintSetup withFooter(String text) {
        return new PrintSetup(landscape, header, text, count, frozenColumns);
    }

    public PrintSetup withCount(PageCount words) {
        return new PrintSetup(landscape, header, footer, words, frozenColumns);
    }

    public PrintSetup withFrozenColumns(int columns) {
        return new PrintSetup(landscape, header, footer, count, columns);
    }
}
