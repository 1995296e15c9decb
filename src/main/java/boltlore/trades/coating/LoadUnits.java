package boltlore.trades.coating;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Area, mass with hanging, hooks and volume in whole millionths of m², kg, one and litres: exact sums, quickly. */
record LoadUnits(long area, long mass, long hooks, long volume) {

    static final int KINDS = 4;

    private static final int DECIMALS = 6;

    /** Of one piece, rounded up. */
    static LoadUnits up(LoadSize size) {
        return new LoadUnits(up(size.areaM2()), up(size.kg()), up(BigDecimal.valueOf(size.hooks())), up(size.litres()));
    }

    /** Of a limit, rounded down. */
    static LoadUnits down(LoadSize limits) {
        return new LoadUnits(
                down(limits.areaM2()),
                down(limits.kg()),
                down(BigDecimal.valueOf(limits.hooks())),
                down(limits.litres()));
    }

    static long up(BigDecimal amount) {
        return units(amount, RoundingMode.CEILING);
    }

    static long down(BigDecimal amount) {
        return units(amount, RoundingMode.FLOOR);
    }

    private static long units(BigDecimal amount, RoundingMode rounding) {
        return amount.movePointRight(DECIMALS).setScale(0, rounding).longValueExact();
    }

    /** One of the four, by its place. */
    long at(int kind) {
        return switch (kind) {
            case 0 -> area;
            case 1 -> mass;
            case 2 -> hooks;
            default -> volume;
        };
    }
}
