package boltlore.cli;

import boltlore.trades.weighing.OnAxles;
import boltlore.trades.weighing.Standing;
import boltlore.trades.weighing.sheets.WeighWords;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Path;
import java.util.Locale;

/** A weighing for the terminal. */
final class WeighText {

    private static final String ROW = "  %-38s %9s %9s %9s %7s%n";

    private WeighText() {}

    static void print(Screen screen, WeighedOrder order) {
        screen.heading(order.name() + ", " + order.family().says().english());
        OnAxles onAxles = order.weighing().onAxles();
        if (onAxles != null) {
            table(screen, onAxles);
        }
        WeighWords.of(order.weighing()).forEach(found -> screen.wrapped(2, found.about() + ": " + found.says()));
    }

    static String written(int orders, Path out) {
        return (orders == 1 ? "Weight statement" : orders + " weight statements") + " written to " + out;
    }

    private static void table(Screen screen, OnAxles onAxles) {
        screen.text(String.format(Locale.ROOT, ROW, "kg", "front", "rear", "whole", "front %"));
        onAxles.standings().forEach(standing -> screen.text(row(standing)));
        BigDecimal gross = onAxles.chassis().grossKg();
        screen.text(String.format(
                Locale.ROOT,
                ROW,
                "Limits",
                shown(onAxles.chassis().frontLimitKg()),
                shown(onAxles.chassis().rearLimitKg()),
                shown(gross),
                ""));
    }

    private static String row(Standing standing) {
        return String.format(
                Locale.ROOT,
                ROW,
                standing.stand().says(),
                shown(standing.loads().frontKg()),
                shown(standing.loads().rearKg()),
                shown(standing.loads().totalKg()),
                shown(standing.loads().frontPercent()));
    }

    private static String shown(BigDecimal number) {
        return number.setScale(1, RoundingMode.HALF_UP).toPlainString();
    }
}
