package boltlore.power;

import boltlore.catalogue.Facts;
import boltlore.catalogue.PublicLead;
import boltlore.catalogue.Role;
import boltlore.choices.Choices;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Reads the chain that an order has chosen. */
public final class ChosenPower {

    private ChosenPower() {}

    /** What the vehicle charges with at its own supply through its own inlet; empty where facts are missing. */
    public static Optional<Power> charging(Choices choices) {
        List<Link> chain = chain(choices, Role.SUPPLY, Role.INLET, Role.CHARGER);
        return choices.inRole(Role.CHARGER).isEmpty() ? Optional.empty() : through(chain, chargingVolts(choices));
    }

    /** What the vehicle charges with at a public point through that lead; empty where facts are missing. */
    public static Optional<Power> through(PublicLead lead, Choices choices) {
        List<Link> chain = new ArrayList<>(chain(choices, Role.INLET, Role.CHARGER));
        chain.add(new Link("lead", lead.phases(), lead.amps()));
        BigDecimal volts =
                choices.facts(Role.MARKET).or(choices.facts(Role.INLET)).volts();
        return choices.inRole(Role.CHARGER).isEmpty() ? Optional.empty() : through(chain, volts);
    }

    /**
     * What the outlet gives to a load: its own voltage and current on one phase, empty where no outlet is chosen. The
     * charger's own limit stands beside it, see {@link #exportKw}.
     */
    public static Optional<Power> outlet(Choices choices) {
        Facts outlet = choices.facts(Role.EXPORT);
        Link one = new Link("outlet", outlet.phases() == null ? Integer.valueOf(1) : outlet.phases(), outlet.amps());
        return outlet.socket() == null ? Optional.empty() : through(List.of(one), outlet.volts());
    }

    /** What a load really gets in kW: the lesser of outlet and charger; empty where either is not known. */
    public static Optional<BigDecimal> exportKw(Choices choices) {
        BigDecimal chargerKw = choices.facts(Role.CHARGER).exportKw();
        return chargerKw == null
                ? Optional.empty()
                : outlet(choices).map(Power::kilowatts).map(chargerKw::min);
    }

    private static List<Link> chain(Choices choices, Role... roles) {
        return Stream.of(roles)
                .map(role -> Link.of(role.written(), choices.facts(role)))
                .toList();
    }

    private static Optional<Power> through(List<Link> chain, @Nullable BigDecimal volts) {
        return volts == null ? Optional.empty() : Power.through(chain, new Voltage.OfOnePhase(volts));
    }

    /** The customer's own supply knows best, then the market, then the inlet; each as one phase sees it. */
    private static @Nullable BigDecimal chargingVolts(Choices choices) {
        return choices.facts(Role.SUPPLY)
                .or(choices.facts(Role.MARKET))
                .or(choices.facts(Role.INLET))
                .volts();
    }
}
