package boltlore.report.xlsx;

import boltlore.report.Formula;
import boltlore.report.Place;
import boltlore.report.xlsx.LaidPage.LaidTable;
import boltlore.report.xlsx.LaidPage.Spot;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.apache.poi.ss.util.CellReference;

/** Formulas as ECMA-376 part 1, 18.17 writes them: addresses, numbers, and five functions. */
final class FormulaText {

    /** Those of nearly all sheets: formulas name them ten thousand times in a kit, and POI makes a text of each anew. */
    private static final List<String> FIRST_COLUMNS = IntStream.range(0, 64)
            .mapToObj(CellReference::convertNumToColString)
            .toList();

    private final List<LaidPage> pages;
    private final List<String> sheetNames;
    private final Map<String, Integer> numbers = new HashMap<>();
    private final RowSums rowSums = new RowSums(this);

    FormulaText(List<LaidPage> pages, List<String> sheetNames) {
        this.pages = pages;
        this.sheetNames = sheetNames;
        pages.forEach(page -> numbers.put(page.page().name(), numbers.size()));
    }

    /**
     * Where a formula stands.
     *
     * @param block name of its table or particulars
     * @param row of the grid
     */
    record Here(int page, String block, int row) {}

    StringBuilder append(StringBuilder text, Formula formula, Here here) {
        if (formula instanceof Formula.At at) {
            return append(text, at.place(), here);
        } else if (formula instanceof Formula.Fixed fixed) {
            return text.append(fixed.number().toPlainString());
        } else if (formula instanceof Formula.Product) {
            return joined(text, formula, '*', here);
        } else if (formula instanceof Formula.Difference) {
            return joined(text, formula, '-', here);
        } else if (formula instanceof Formula.Quotient) {
            return joined(text, formula, '/', here);
        } else if (formula instanceof Formula.Sum) {
            return joined(text.append("SUM("), formula, ',', here).append(')');
        } else if (formula instanceof Formula.Rounded rounded) {
            append(text.append("ROUND("), rounded.formula(), here);
            return text.append(',').append(rounded.scale()).append(')');
        } else if (formula instanceof Formula.RoundedUp up) {
            return append(text.append("ROUNDUP("), up.formula(), here).append(",0)");
        }
        return rowSums.append(text, formula, here);
    }

    private StringBuilder joined(StringBuilder text, Formula formula, char sign, Here here) {
        String before = "";
        for (Formula part : formula.parts()) {
            text.append(before);
            if (isBare(part)) {
                append(text, part, here);
            } else {
                append(text.append('('), part, here).append(')');
            }
            before = String.valueOf(sign);
        }
        return text;
    }

    private static boolean isBare(Formula formula) {
        return !(formula instanceof Formula.Product
                || formula instanceof Formula.Difference
                || formula instanceof Formula.Quotient
                || (formula instanceof Formula.Fixed fixed && fixed.number().signum() < 0));
    }

    /** Appends the address of a place, with the sheet's name in front where it is another sheet's. */
    StringBuilder append(StringBuilder text, Place place, Here here) {
        appendSheet(text, place.page(), here);
        LaidPage page = pages.get(page(place.page(), here));
        String block = place.block().isEmpty() ? here.block() : place.block();
        LaidTable table = page.tables().get(block);
        if (table == null) {
            Spot spot = page.spot(block, place.row());
            return text.append(column(spot.column())).append(spot.row() + 1);
        }
        int row = place.row().isEmpty()
                ? here.row()
                : table.firstRow() + table.table().row(place.row());
        return text.append(column(table.column(place.column()))).append(row + 1);
    }

    void appendSheet(StringBuilder text, String page, Here here) {
        int at = page(page, here);
        text.append(at == here.page() ? "" : onSheet(sheetNames.get(at)));
    }

    /** The name of a sheet in front of an address; always in quotes, which is always allowed. */
    static String onSheet(String name) {
        return "'" + name.replace("'", "''") + "'!";
    }

    static String column(int column) {
        return column < FIRST_COLUMNS.size() ? FIRST_COLUMNS.get(column) : CellReference.convertNumToColString(column);
    }

    LaidTable table(String page, String name, Here here) {
        return pages.get(page(page, here)).table(name.isEmpty() ? here.block() : name);
    }

    private int page(String name, Here here) {
        return name.isEmpty() ? here.page() : numbers.getOrDefault(name, here.page());
    }
}
