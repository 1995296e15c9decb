package boltlore.report.xlsx;

import boltlore.report.Utf8;

/** Cell addresses as spreadsheet programs write them, from columns and rows counted from 0. */
final class Ref {

    private Ref() {}

    /** 0 → A, 26 → AA. */
    static String column(int column) {
        return column < 26 ? String.valueOf((char) ('A' + column)) : column(column / 26 - 1) + column(column % 26);
    }

    static Utf8 append(Utf8 xml, int column, int row) {
        if (column < 26) {
            xml.append((char) ('A' + column));
        } else {
            xml.append(column(column));
        }
        return xml.append(row + 1);
    }

    /** Rows of one column, or the one cell where the first is the last. */
    static Utf8 appendDown(Utf8 xml, int column, int first, int last) {
        append(xml, column, first);
        return first == last ? xml : append(xml.append(':'), column, last);
    }

    static String cell(int column, int row) {
        return column(column) + (row + 1);
    }

    static String fixed(int column, int row) {
        return "$" + column(column) + "$" + (row + 1);
    }

    /** The name of a sheet in front of an address; always in quotes, which is always allowed. */
    static String on(String sheet, String address) {
        return "'" + sheet.replace("'", "''") + "'!" + address;
    }
}
