package boltlore.bring;

import boltlore.grid.GridCell;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/** The currency that costs are in, by headings, formats and signs. */
final class Currencies {

    /** A dollar and a yen are of several countries: such a sign alone says nothing. */
    private static final Map<String, String> SIGNS =
            Map.of("€", "EUR", "£", "GBP", "₹", "INR", "₩", "KRW", "zł", "PLN");

    private static final List<String> CODES = List.of(
            "EUR", "USD", "GBP", "CHF", "SEK", "NOK", "DKK", "PLN", "CZK", "CAD", "AUD", "NZD", "CNY", "JPY", "INR");

    private Currencies() {}

    /** The one that is found, or empty where none or several are. */
    static String of(List<TableRead> tables) {
        Set<String> found = new TreeSet<>();
        for (TableRead read : tables) {
            read.columns().stream()
                    .filter(column -> column.role() == Role.COST || column.role() == Role.TOTAL)
                    .forEach(column -> {
                        find(column.heading(), found);
                        read.table().lines().forEach(line -> {
                            GridCell cell = line.cell(column.at());
                            find(cell.format(), found);
                            find(cell.isText() ? cell.text() : "", found);
                        });
                    });
        }
        return found.size() == 1 ? found.iterator().next() : "";
    }

    private static void find(String text, Set<String> found) {
        SIGNS.forEach((sign, code) -> {
            if (text.contains(sign)) {
                found.add(code);
            }
        });
        CODES.stream()
                .filter(code -> text.matches("(?s).*\\b" + code + "\\b.*"))
                .forEach(found::add);
    }
}
