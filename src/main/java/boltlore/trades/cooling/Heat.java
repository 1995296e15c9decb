package boltlore.trades.cooling;

import boltlore.bill.Bill;
import boltlore.catalogue.Branch;
import boltlore.catalogue.Branch.FedBy;
import boltlore.catalogue.Cooling.CoolantCircuit;
import boltlore.catalogue.Feeds;
import boltlore.catalogue.Pack;
import boltlore.trades.KitInWork;
import boltlore.trades.charging.BranchCheck;
import boltlore.trades.charging.Charging;
import boltlore.trades.charging.ChargingTrade;
import boltlore.trades.charging.DcCharging;
import java.math.BigDecimal;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Heat that a circuit carries off.
 *
 * @param share of the coolant's warming that is reached until it ends, from above 0 to 1: 1 where it lasts
 * @param pack what of the battery makes it, or null
 */
record Heat(double watts, double share, @Nullable OfPack pack) {

    private static final double KILO = 1000;
    private static final double SECONDS_IN_HOUR = 3600;
    private static final double SECONDS_IN_MINUTE = 60;

    /**
     * Current through a pack's own resistance, from air's temperature on until it is full or empty.
     *
     * @param charging whether it is charged with direct current; else it drives
     */
    record OfPack(boolean charging, double amps, double milliohm, double seconds) {

        double minutes() {
            return seconds / SECONDS_IN_MINUTE;
        }
    }

    static Heat lasting(double watts) {
        return new Heat(watts, 1, null);
    }

    /** What of the whole warming is reached, in W. */
    double effective() {
        return watts * share;
    }

    /**
     * What the battery that the circuit cools makes at the largest current for hours, charging or driving: P = I² R (Joule).
     * It ends when the battery is full or empty, t = E / (U I), and meanwhile the modules take up heat: of the warming P / K
     * over the radiator's W/K, 1 − exp(−K t / (m c)) is reached (lumped capacity, Incropera, Fundamentals of Heat and Mass
     * Transfer, chapter 5; from memory). Empty where the circuit cools no battery, or nothing is known of its pack.
     */
    static Stream<Heat> ofPack(CoolantCircuit circuit, KitInWork kit) {
        Charging charging = ChargingTrade.atHome(kit);
        Pack pack = charging.fitted().pack();
        BigDecimal specific = circuit.moduleSpecificHeat();
        if (pack == null || specific == null) {
            return Stream.empty();
        }
        double stored = modulesKg(pack, kit.bill()) * specific.doubleValue();
        Stream<Heat> charged = Stream.ofNullable(charging.dc())
                .map(DcCharging::amps)
                .map(amps -> at(true, amps.doubleValue(), pack, circuit, stored));
        return Stream.concat(
                charged, drivingAmps(charging, pack).map(amps -> at(false, amps, pack, circuit, stored)).stream());
    }

    /** Of those in the kit; 0 where nobody has weighed them, so that nothing is taken up. */
    private static double modulesKg(Pack pack, Bill bill) {
        return bill.all()
                .filter(item -> item.part().number().equals(pack.module()))
                .mapToDouble(item -> item.quantity().doubleValue()
                        * (item.part().massKg() == null
                                ? 0
                                : item.part().massKg().doubleValue()))
                .sum();
    }

    /** At the nominal voltage, which a discharge has on average; branches are worked out for the empty battery. */
    private static Optional<Double> drivingAmps(Charging charging, Pack pack) {
        return charging.branches().stream()
                .filter(check -> drives(check.branch()))
                .map(BranchCheck::load)
                .flatMap(Stream::ofNullable)
                .map(load -> load.hoursAmps().doubleValue()
                        * pack.lowestVolts().doubleValue()
                        / pack.nominalVolts().doubleValue())
                .max(Double::compare);
    }

    private static boolean drives(Branch branch) {
        return branch.fedBy() instanceof FedBy.Pack && !(branch.feeds() instanceof Feeds.Chosen);
    }

    private static Heat at(boolean charging, double amps, Pack pack, CoolantCircuit circuit, double stored) {
        double milliohm = pack.resistanceMilliohm().doubleValue();
        double seconds = pack.usableKwh().doubleValue()
                * KILO
                * SECONDS_IN_HOUR
                / (pack.nominalVolts().doubleValue() * amps);
        double kelvinWatts = circuit.radiatorWattsPerKelvin().doubleValue();
        double share = stored == 0 ? 1 : -StrictMath.expm1(-kelvinWatts * seconds / stored);
        return new Heat(amps * amps * milliohm / KILO, share, new OfPack(charging, amps, milliohm, seconds));
    }
}
