package boltlore.sheets.xlsx;

/** Cell addresses as spreadsheet programs write them, from columns and rows counted from 0. */
final class Ref {

    private Ref() {}

    /** 0 → A, 26 → AA. */
    static String column(int column) {
        return column < 26 ? String.valueOf((char) ('A' + column)) : column(column / 26 - 1) + column(column % 26);
    }

    static void append(StringBuilder text, int column, int row) {
        if (column < 26) {
            text.append((char) ('A' + column));
        } else {
            text.append(column(column));
        }
        text.append(row + 1);
    }

    static String cell(int column, int row) {
        StringBuilder text = new StringBuilder(6);
        append(text, column, row);
        return text.toString();
    }

    static String fixed(int column, int row) {
        return "$" + column(column) + "$" + (row + 1);
    }

    /** Rows of one column, or the one cell where the first is the last. */
    static String down(int column, int first, int last) {
        return first == last ? cell(column, first) : cell(column, first) + ":" + cell(column, last);
    }

    /** The name of a sheet in front of an address; always in quotes, which is always allowed. */
    static String on(String sheet, String address) {
        return "'" + sheet.replace("'", "''") + "'!" + address;
    }
}
