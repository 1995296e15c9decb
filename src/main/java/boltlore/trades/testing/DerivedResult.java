package boltlore.trades.testing;

import boltlore.measure.Digits;
import boltlore.trades.charging.IsolationReading;
import boltlore.trades.testing.Box.Quantity;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** Results that take several readings; the formulas stand in {@code charging}, each with its source. */
final class DerivedResult {

    private static final int KILO = 3;
    private static final int MEGA = 6;

    private DerivedResult() {}

    /** In the row's unit; null where a flaw makes the readings good for nothing. */
    static @Nullable BigDecimal result(TestRow row, Function<Quantity, BigDecimal> read, List<Flaw> flaws) {
        boolean isolation = row.boxes().stream().anyMatch(box -> box.quantity() == Quantity.RESISTOR);
        for (Box box : row.boxes()) {
            if (read.apply(box.quantity()).signum() <= 0 && box.quantity() != Quantity.LINK_VOLTS) {
                flaws.add(new Flaw(Flaw.Kind.NOT_ABOVE_ZERO, box.quantity().sign(), ""));
            }
        }
        if (!flaws.isEmpty()) {
            return null;
        }
        return isolation ? isolation(row, read, flaws) : share(read);
    }

    /** Rounded down to the last digit that is told, so that nothing passes that would not. */
    private static @Nullable BigDecimal isolation(TestRow row, Function<Quantity, BigDecimal> read, List<Flaw> flaws) {
        IsolationReading reading = new IsolationReading(
                read.apply(Quantity.PACK_VOLTS),
                read.apply(Quantity.CHASSIS_VOLTS),
                read.apply(Quantity.WITH_RESISTOR_VOLTS),
                read.apply(Quantity.RESISTOR).movePointRight(KILO));
        BigDecimal meterOhm = read.apply(Quantity.METER).movePointRight(MEGA);
        BigDecimal suited = row.suitedOhm() == null ? reading.resistorOhm() : row.suitedOhm();
        reading.flaws(meterOhm, suited).forEach(flaw -> flaws.add(flaw(flaw, suited)));
        return flaws.isEmpty() ? reading.isolationOhm().movePointLeft(KILO).setScale(1, RoundingMode.FLOOR) : null;
    }

    private static Flaw flaw(IsolationReading.Flaw flaw, BigDecimal suitedOhm) {
        String suited = Digits.plain(suitedOhm.movePointLeft(KILO));
        return switch (flaw) {
            case METER_LOADS_THE_BUS -> Flaw.of(Flaw.Kind.METER_LOADS_THE_BUS);
            case RESISTOR_UNSUITED -> new Flaw(Flaw.Kind.RESISTOR_UNSUITED, "", suited);
            case VOLTAGE_DID_NOT_FALL -> Flaw.of(Flaw.Kind.VOLTAGE_DID_NOT_FALL);
            case MORE_THAN_THE_PACK -> Flaw.of(Flaw.Kind.MORE_THAN_THE_PACK);
        };
    }

    private static BigDecimal share(Function<Quantity, BigDecimal> read) {
        return read.apply(Quantity.LINK_VOLTS)
                .movePointRight(2)
                .divide(read.apply(Quantity.PACK_VOLTS), MathContext.DECIMAL64)
                .setScale(1, RoundingMode.FLOOR);
    }
}
