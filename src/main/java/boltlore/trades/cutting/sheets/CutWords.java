package boltlore.trades.cutting.sheets;

import boltlore.catalogue.BarLength;
import boltlore.catalogue.BarStock;
import boltlore.catalogue.Cut;
import boltlore.measure.Digits;
import boltlore.order.Order;
import boltlore.trades.cutting.CutPlan;
import boltlore.trades.cutting.MaterialCuts;
import boltlore.trades.cutting.Remnant;
import boltlore.trades.cutting.SawnBar;
import java.math.BigDecimal;
import java.util.Comparator;
import java.util.List;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** How lengths, bars and orders are said on the cutting list. */
final class CutWords {

    private static final int NAMED_IN_FOOTER = 4;

    private CutWords() {}

    /** '45/0', or nothing where both ends are square. */
    static String ends(Cut cut) {
        boolean square = cut.endAngles().stream().allMatch(angle -> angle.signum() == 0);
        return square ? "" : cut.endAngles().stream().map(Digits::plain).collect(Collectors.joining("/"));
    }

    /** 'New bar', 'Remnant BL-0990-2'. */
    static String source(SawnBar bar) {
        Remnant remnant = bar.remnant();
        return remnant == null ? "New bar" : "Remnant " + remnant.name();
    }

    /** '2 × 6000, 1 × 3000': the bars to buy. */
    static String bought(MaterialCuts cuts) {
        TreeMap<BigDecimal, Long> counts = cuts.bars().stream()
                .filter(SawnBar::isBought)
                .collect(Collectors.groupingBy(
                        SawnBar::lengthMm, () -> new TreeMap<>(Comparator.reverseOrder()), Collectors.counting()));
        return counts.entrySet().stream()
                .map(entry -> entry.getValue() + " × " + Digits.plain(entry.getKey()))
                .collect(Collectors.joining(", "));
    }

    /** '6000 mm at 36.39, 3000 mm at 19.83'. */
    static String lengths(BarStock stock) {
        return stock.lengths().stream()
                .sorted(Comparator.comparingInt(BarLength::lengthMm).reversed())
                .map(bar -> bar.lengthMm() + " mm at " + bar.cost().toPlainString())
                .collect(Collectors.joining(", "));
    }

    /** What becomes of the rest of a bar. */
    static String rest(SawnBar bar) {
        if (bar.isKept()) {
            return "keep, mark it " + bar.keptAs();
        }
        return bar.restMm().signum() == 0 ? "" : "scrap";
    }

    /** 'Order BL-1001', 'Orders BL-1001, BL-1002', or how many where there are more than fit a footer. */
    static String orders(CutPlan plan) {
        List<Order> orders = plan.orders();
        if (orders.size() > NAMED_IN_FOOTER) {
            return orders.size() + " orders, " + orders.get(0).name() + " first";
        }
        String names = orders.stream().map(Order::name).collect(Collectors.joining(", "));
        return (orders.size() == 1 ? "Order " : "Orders ") + names;
    }
}
