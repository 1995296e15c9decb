package boltlore.report.xlsx;

import boltlore.report.Page;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;

/** Finds the columns of a page: the main table's, widened to fill the sheet or narrowed to stay legible on it. */
final class GridMaker {

    /** Characters of the body type between the margins of A4, at full size. */
    static final double PORTRAIT = 98;

    static final double LANDSCAPE = 144;

    /** A page that is wider than this many times the sheet prints too small: 9 points become 6.5. */
    static final double WIDEST = 1.38;

    /** A table that fills less of the sheet than this is left narrow. */
    private static final double NARROW = 0.7;

    private static final double FILLER = 10;

    private GridMaker() {}

    static double sheet(boolean landscape) {
        return landscape ? LANDSCAPE : PORTRAIT;
    }

    static Grid of(Page page, Needs needs) {
        double sheet = sheet(page.print().landscape());
        List<Need> main = needs.ofMain();
        double usual = main.stream().mapToDouble(Need::usual).sum();
        return new Grid(usual > sheet ? narrowed(main, sheet * WIDEST) : widened(main, sheet));
    }

    /** Takes character after character from the column whose texts grow by the fewest lines for it. */
    private static List<Double> narrowed(List<Need> needs, double limit) {
        double[] widths = needs.stream().mapToDouble(Need::usual).toArray();
        double[] prices = new double[widths.length];
        for (int i = 0; i < widths.length; i++) {
            prices[i] = price(needs.get(i), widths[i]);
        }
        for (double over = sum(widths) - limit; over > 0; over--) {
            int cheapest = 0;
            for (int i = 1; i < widths.length; i++) {
                boolean cheaper = prices[i] < prices[cheapest];
                cheapest = cheaper || (prices[i] == prices[cheapest] && widths[i] > widths[cheapest]) ? i : cheapest;
            }
            if (prices[cheapest] == Double.POSITIVE_INFINITY) {
                break;
            }
            widths[cheapest]--;
            prices[cheapest] = price(needs.get(cheapest), widths[cheapest]);
        }
        return list(widths);
    }

    /** Lines that one character less costs; more than anything where the column has none to give. */
    private static double price(Need need, double width) {
        return width - 1 < need.least() ? Double.POSITIVE_INFINITY : need.lines(width - 1) - need.lines(width);
    }

    private static List<Double> widened(List<Need> needs, double sheet) {
        double[] widths = needs.stream().mapToDouble(Need::usual).toArray();
        double wrapped =
                needs.stream().mapToDouble(need -> need.full() - need.usual()).sum();
        double room = sheet - sum(widths);
        for (int i = 0; i < widths.length && wrapped > 0; i++) {
            widths[i] += (needs.get(i).full() - needs.get(i).usual()) * Math.min(1, room / wrapped);
        }
        if (sum(widths) >= NARROW * sheet) {
            stretch(widths, needs, sheet - sum(widths));
            return list(widths);
        }
        List<Double> filled = new ArrayList<>(list(widths));
        int fillers = (int) Math.max(1, Math.floor((sheet - sum(widths)) / FILLER));
        filled.addAll(Collections.nCopies(fillers, (sheet - sum(widths)) / fillers));
        return filled;
    }

    private static void stretch(double[] widths, List<Need> needs, double room) {
        boolean some = needs.stream().anyMatch(Need::gives);
        double stretchable = 0;
        for (int i = 0; i < widths.length; i++) {
            stretchable += some && !needs.get(i).gives() ? 0 : widths[i];
        }
        for (int i = 0; i < widths.length; i++) {
            widths[i] += some && !needs.get(i).gives() ? 0 : room * widths[i] / stretchable;
        }
    }

    private static double sum(double[] widths) {
        return Arrays.stream(widths).sum();
    }

    private static List<Double> list(double[] widths) {
        return Arrays.stream(widths).boxed().toList();
    }
}
