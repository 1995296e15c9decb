package boltlore.trades.charging;

import boltlore.catalogue.Facts;
import boltlore.catalogue.Outlet;
import boltlore.catalogue.Role;
import boltlore.choices.Choices;
import boltlore.power.ChosenPower;
import boltlore.power.Power;
import java.math.BigDecimal;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Feeding a load through the vehicle's outlet.
 *
 * @param watts that the outlet's own rating allows
 * @param chargerWatts that the charger feeds out at most
 * @param guard null where the family does not say what guards it
 */
public record Export(
        String socket,
        BigDecimal volts,
        BigDecimal amps,
        BigDecimal watts,
        BigDecimal chargerWatts,
        @Nullable Outlet guard) {

    private static final int KILO = 3;

    static Optional<Export> of(Choices choices, @Nullable Outlet guard) {
        Facts outlet = choices.facts(Role.EXPORT);
        BigDecimal chargerKw = choices.facts(Role.CHARGER).exportKw();
        String socket = outlet.socket();
        return socket == null || chargerKw == null
                ? Optional.empty()
                : ChosenPower.outlet(choices).map(power -> of(socket, power, chargerKw.movePointRight(KILO), guard));
    }

    private static Export of(String socket, Power power, BigDecimal chargerWatts, @Nullable Outlet guard) {
        return new Export(socket, power.volts(), power.amps(), power.watts(), chargerWatts, guard);
    }

    /** For minutes, in W: the lesser of outlet and charger. */
    public BigDecimal shortWatts() {
        return watts.min(chargerWatts);
    }

    /** For hours, in W: outlets are rated lower for that in some markets. */
    public BigDecimal continuousWatts() {
        BigDecimal share = guard == null ? BigDecimal.ONE : guard.continuousShare();
        return watts.multiply(share).min(chargerWatts);
    }
}
