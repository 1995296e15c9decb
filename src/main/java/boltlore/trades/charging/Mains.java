package boltlore.trades.charging;

import boltlore.catalogue.Facts;
import boltlore.catalogue.Role;
import boltlore.choices.Choices;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Mains that a vehicle is charged at.
 *
 * @param says where it is, as people call it
 * @param phases 1 or 3
 * @param volts that one phase sees, in V
 * @param amps in each phase
 */
public record Mains(String says, int phases, BigDecimal volts, BigDecimal amps) {

    private static final int THREE = 3;

    /** Rated currents of posts in A: IEC 61851-1 on three phases, SAE J1772 on one. */
    private static final List<Integer> ON_THREE = List.of(16, 32, 63);

    private static final List<Integer> ON_ONE = List.of(16, 32, 48, 80);

    /** The customer's own supply; empty where its facts are not known. */
    public static Optional<Mains> atHome(Choices choices) {
        Facts facts = choices.facts(Role.SUPPLY);
        return of("At home", facts, facts.amps());
    }

    /** The usual public AC points of the order's market, with the current of each. */
    static List<Mains> atPosts(Choices choices) {
        Facts market = choices.facts(Role.MARKET);
        boolean three = market.phases() != null && market.phases() == THREE;
        return Stream.of(three ? ON_THREE : ON_ONE)
                .flatMap(List::stream)
                .flatMap(amps -> of("Public AC point", market, BigDecimal.valueOf(amps)).stream())
                .toList();
    }

    private static Optional<Mains> of(String says, Facts facts, @Nullable BigDecimal amps) {
        Integer phases = facts.phases();
        BigDecimal volts = facts.volts();
        return phases == null || volts == null || amps == null
                ? Optional.empty()
                : Optional.of(new Mains(says, phases, volts, amps));
    }

    /** '3 phases, 230 V, 16 A'. */
    public String figures() {
        return phases + (phases == 1 ? " phase, " : " phases, ") + NumberFormats.volts(volts) + ", "
                + NumberFormats.amps(amps);
    }
}
