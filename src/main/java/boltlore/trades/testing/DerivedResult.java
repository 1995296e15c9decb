package boltlore.trades.testing;

import boltlore.measure.Digits;
import boltlore.trades.charging.IsolationReading;
import boltlore.trades.testing.Box.Quantity;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** Results that take several readings; the formulas stand in {@code charging}, each with its source. */
final class DerivedResult {

    private static final int KILO = 3;
    private static final int MEGA = 6;
    private static final BigDecimal TENTH = new BigDecimal("0.1");

    /** Of these 0 may be read: nothing flowed yet, or a pole lies on the chassis. */
    private static final Set<Quantity> FROM_ZERO = Set.of(Quantity.LINK_VOLTS, Quantity.OTHER_POLE_VOLTS);

    private DerivedResult() {}

    /** In the row's unit; null where a flaw makes the readings good for nothing. */
    static @Nullable BigDecimal result(TestRow row, Function<Quantity, BigDecimal> read, List<Flaw> flaws) {
        boolean isolation = row.boxes().stream().anyMatch(box -> box.quantity() == Quantity.RESISTOR);
        for (Box box : row.boxes()) {
            int sign = read.apply(box.quantity()).signum();
            if (sign < 0 || (sign == 0 && !FROM_ZERO.contains(box.quantity()))) {
                flaws.add(new Flaw(Flaw.Kind.NOT_ABOVE_ZERO, box.quantity().sign(), ""));
            }
        }
        notThePack(row, read.apply(Quantity.PACK_VOLTS)).ifPresent(flaws::add);
        if (!flaws.isEmpty()) {
            return null;
        }
        return isolation ? isolation(row, read, flaws) : share(read);
    }

    /**
     * Contactors that stayed open, a clip on one module or a slip of the point give a fine ratio of voltages that no pack of
     * this kit has (UN Regulation 100 measures with the pack at its nominal voltage or above; from memory).
     */
    private static Optional<Flaw> notThePack(TestRow row, BigDecimal read) {
        Limit.Between pack = row.packVolts();
        if (pack == null) {
            return Optional.empty();
        }
        boolean within = read.multiply(IsolationReading.METER_ERROR).compareTo(pack.least()) >= 0
                && read.compareTo(pack.most().multiply(IsolationReading.METER_ERROR)) <= 0;
        return within
                ? Optional.empty()
                : Optional.of(new Flaw(
                        Flaw.Kind.NOT_THE_PACK,
                        Digits.plain(read),
                        Digits.plain(pack.least()) + "–" + Digits.plain(pack.most())));
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
        if (flaws.isEmpty()) {
            implausible(row, reading, read.apply(Quantity.OTHER_POLE_VOLTS), meterOhm, flaws);
        }
        return flaws.isEmpty() ? reading.isolationOhm().movePointLeft(KILO).setScale(1, RoundingMode.FLOOR) : null;
    }

    /** A wire that was not where it belongs gives a fine result of voltages that cannot be. */
    private static void implausible(
            TestRow row, IsolationReading reading, BigDecimal otherVolts, BigDecimal meterOhm, List<Flaw> flaws) {
        BigDecimal step = row.boxes().stream()
                .filter(box -> box.quantity() == Quantity.CHASSIS_VOLTS && box.scale() != null)
                .map(box -> Objects.requireNonNull(box.scale()).resolution())
                .findFirst()
                .orElse(TENTH);
        Set<IsolationReading.Flaw> found = reading.implausible(otherVolts, meterOhm, step);
        if (found.contains(IsolationReading.Flaw.OTHER_POLE_GREATER)) {
            flaws.add(new Flaw(Flaw.Kind.OTHER_POLE_GREATER, Digits.plain(otherVolts), ""));
        } else if (found.contains(IsolationReading.Flaw.CHASSIS_VOLTS_TOO_SMALL)) {
            flaws.add(new Flaw(
                    Flaw.Kind.CHASSIS_VOLTS_TOO_SMALL,
                    Digits.plain(reading.chassisVolts()),
                    tenths(reading.leastChassisVolts(meterOhm))));
        } else if (found.contains(IsolationReading.Flaw.POLES_DO_NOT_ADD_UP)) {
            flaws.add(new Flaw(
                    Flaw.Kind.POLES_DO_NOT_ADD_UP,
                    Digits.plain(reading.chassisVolts().add(otherVolts)),
                    tenths(reading.bothPolesVolts(otherVolts, meterOhm))));
        }
    }

    private static String tenths(BigDecimal volts) {
        return Digits.plain(volts.setScale(1, RoundingMode.HALF_UP));
    }

    private static Flaw flaw(IsolationReading.Flaw flaw, BigDecimal suitedOhm) {
        String suited = Digits.plain(suitedOhm.movePointLeft(KILO));
        return switch (flaw) {
            case METER_LOADS_THE_BUS -> Flaw.of(Flaw.Kind.METER_LOADS_THE_BUS);
            case RESISTOR_UNSUITED -> new Flaw(Flaw.Kind.RESISTOR_UNSUITED, "", suited);
            case VOLTAGE_DID_NOT_FALL -> Flaw.of(Flaw.Kind.VOLTAGE_DID_NOT_FALL);
            case MORE_THAN_THE_PACK -> Flaw.of(Flaw.Kind.MORE_THAN_THE_PACK);
            case OTHER_POLE_GREATER -> Flaw.of(Flaw.Kind.OTHER_POLE_GREATER);
            case POLES_DO_NOT_ADD_UP -> Flaw.of(Flaw.Kind.POLES_DO_NOT_ADD_UP);
            case CHASSIS_VOLTS_TOO_SMALL -> Flaw.of(Flaw.Kind.CHASSIS_VOLTS_TOO_SMALL);
        };
    }

    private static BigDecimal share(Function<Quantity, BigDecimal> read) {
        return read.apply(Quantity.LINK_VOLTS)
                .movePointRight(2)
                .divide(read.apply(Quantity.PACK_VOLTS), MathContext.DECIMAL64)
                .setScale(1, RoundingMode.FLOOR);
    }
}
