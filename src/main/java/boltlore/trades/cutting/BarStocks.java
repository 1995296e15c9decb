package boltlore.trades.cutting;

import boltlore.catalogue.BarLength;
import boltlore.catalogue.BarStock;
import boltlore.trades.cutting.packing.Stock;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What can be cut from: remnants by their names, then bars that are bought, longest first. */
final class BarStocks {

    /** Digits of a cost after the point that still tell two costs apart. */
    private static final int COST_DIGITS = 4;

    /** @param bought null for a remnant */
    record Source(@Nullable Remnant remnant, @Nullable BarLength bought, BigDecimal lengthMm) {

        BigDecimal cost() {
            return bought == null ? BigDecimal.ZERO : bought.cost();
        }
    }

    private final List<Source> sources = new ArrayList<>();
    private final List<Stock> stocks = new ArrayList<>();

    BarStocks(BarStock stock, List<Remnant> remnants, Sawing sawing) {
        remnants.stream()
                .sorted(Comparator.comparing(Remnant::name))
                .filter(remnant -> sawing.room(remnant.lengthMm()) > 0)
                .forEach(remnant -> {
                    sources.add(new Source(remnant, null, remnant.lengthMm()));
                    stocks.add(Stock.atHand(sawing.room(remnant.lengthMm())));
                });
        stock.lengths().stream()
                .sorted(Comparator.comparingInt(BarLength::lengthMm).reversed())
                .forEach(bar -> {
                    BigDecimal lengthMm = BigDecimal.valueOf(bar.lengthMm());
                    sources.add(new Source(null, bar, lengthMm));
                    stocks.add(Stock.toBuy(sawing.room(lengthMm), units(bar.cost())));
                });
    }

    List<Stock> stocks() {
        return stocks;
    }

    Source source(int stock) {
        return sources.get(stock);
    }

    private static long units(BigDecimal cost) {
        return Math.max(
                1,
                cost.movePointRight(COST_DIGITS)
                        .setScale(0, RoundingMode.HALF_UP)
                        .longValueExact());
    }

    static BigDecimal cost(long units) {
        BigDecimal cost = BigDecimal.valueOf(units, COST_DIGITS).stripTrailingZeros();
        return cost.setScale(Math.max(2, cost.scale()));
    }
}
